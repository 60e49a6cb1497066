import { useEffect, useId, useRef, useState, type KeyboardEvent } from 'react';
import { limits, type Measure } from '../../core/model/limits.ts';
import { readMeasure, stepOf, textQuantity } from '../../core/units/index.ts';
import { Fraction } from './Fraction.tsx';
import { useUnits } from '../state/useBench.ts';

interface Props {
  /** Which figure: it decides the unit, the step and the range that can be. */
  measure: Measure;
  name: string;
  /** What is kept now, SI; null when nobody has measured it. */
  value: number | null;
  /** Called with what was typed, once it is a figure; null when the field was emptied. */
  onKeep(value: number | null): void;
  hint?: string;
  /** What the bench assumes until it is measured: shown in pencil. */
  assumed?: number | undefined;
  /** Figures that may not be emptied. */
  required?: boolean;
  /** Where a finding's "Fix" lands. */
  field?: string;
}

/**
 * A figure on its dotted rule. Click or tab opens it, selected; any unit may follow; Enter or Tab keeps, Esc gives the old one back,
 * the up and down keys step by the trade's step.
 */
export function Figure({ measure, name, value, onKeep, hint, assumed, required = false, field }: Props) {
  const units = useUnits();
  const use = limits[measure].use;
  const shown = value === null ? '' : textQuantity(value, use, units);
  const [text, setText] = useState(shown);
  const [wrong, setWrong] = useState<string | null>(null);
  const open = useRef(false);
  const id = useId();

  useEffect(() => {
    if (!open.current) {
      setText(shown);
      setWrong(null);
    }
  }, [shown]);

  const keep = (typed: string): boolean => {
    const read = readMeasure(measure, typed, units);
    if (!read.ok) {
      setWrong(read.problem.sentence);
      return false;
    }
    if (read.value === null && required) {
      setWrong(`${limits[measure].name} is needed here.`);
      return false;
    }
    setWrong(null);
    if (typed.trim() === shown) return true;
    if (read.value !== value) onKeep(read.value);
    else setText(shown);
    return true;
  };

  const leave = () => {
    open.current = false;
    if (!keep(text)) return;
    const read = readMeasure(measure, text, units);
    if (read.ok) setText(read.value === null ? '' : textQuantity(read.value, use, units));
  };

  const step = (direction: 1 | -1) => {
    const read = readMeasure(measure, text, units);
    const from = read.ok && read.value !== null ? read.value : (value ?? assumed ?? null);
    if (from === null) return;
    const next = textQuantity(from + direction * stepOf(use, units), use, units);
    if (readMeasure(measure, next, units).ok) {
      setText(next);
      keep(next);
    }
  };

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      if (keep(text)) event.currentTarget.select();
    } else if (event.key === 'Escape') {
      setText(shown);
      setWrong(null);
      event.stopPropagation();
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1);
    }
  };

  const built = text.includes('/') && wrong === null;
  const pencil = value === null && assumed !== undefined ? textQuantity(assumed, use, units) : 'not measured';
  const described = [hint === undefined ? null : `${id}-hint`, wrong === null ? null : `${id}-wrong`]
    .filter((part) => part !== null)
    .join(' ');

  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        <div className="figure-box">
          <input
            id={id}
            className={built ? 'figure built' : 'figure'}
            data-field={field}
            value={text}
            placeholder={pencil}
            autoComplete="off"
            spellCheck={false}
            inputMode="text"
            aria-invalid={wrong !== null}
            aria-describedby={described === '' ? undefined : described}
            onChange={(event) => {
              open.current = true;
              setText(event.currentTarget.value);
            }}
            onFocus={(event) => {
              open.current = true;
              event.currentTarget.select();
            }}
            onBlur={leave}
            onKeyDown={onKeyDown}
          />
          {built && (
            <span className="figure-shown" aria-hidden="true">
              <Fraction>{text}</Fraction>
            </span>
          )}
        </div>
        {hint !== undefined && (
          <p id={`${id}-hint`} className="hint">
            {hint}
          </p>
        )}
        {wrong !== null && (
          <p id={`${id}-wrong`} className="wrong" role="alert">
            {wrong} {shown === '' ? 'Nothing is kept yet.' : <span className="still">{shown} stays in force.</span>}
          </p>
        )}
      </div>
    </div>
  );
}
