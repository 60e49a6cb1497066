import { useEffect, useId, useLayoutEffect, useRef, useState, type InputHTMLAttributes, type KeyboardEvent } from 'react';
import { limits, type Measure } from '../../core/model/limits.ts';
import { readMeasure, stepOf, textQuantity, unitOf } from '../../core/units/index.ts';
import { useBench, useUnits } from '../state/useBench.ts';
import { refused } from './refused.ts';

export interface FigureProps {
  /** Which figure: it decides the unit, the step and the range that can be. */
  measure: Measure;
  name: string;
  /** What is kept now, SI; null when nobody has measured it. */
  value: number | null;
  /** Called with what was typed, once it is a figure; null when the field was emptied. What it returns is waited for. */
  onKeep(value: number | null): unknown;
  hint?: string;
  /** What the bench assumes until it is measured: shown in pencil. */
  assumed?: number | undefined;
  /** How what was typed is read, where the trade writes a figure in more ways than one. */
  read?: (typed: string) => ReturnType<typeof readMeasure>;
  /** Figures that may not be emptied. */
  required?: boolean;
  /** It is to be measured again: typed as it stands it is kept too. */
  again?: boolean;
  /** Where a finding's "Fix" lands. */
  field?: string;
}

/** A figure's field, however it is laid out. */
export interface FigureField {
  readonly id: string;
  /** What stands in the field. */
  readonly text: string;
  /** Whether a fraction is to be built over the field at rest. */
  readonly built: boolean;
  /** What the field says while nothing is kept: the assumed figure, or "not yet" and the unit. */
  readonly pencil: string;
  /** Why what was typed cannot be kept. */
  readonly wrong: string | null;
  /** The figure that stays in force; empty when there is none. */
  readonly shown: string;
  readonly input: InputHTMLAttributes<HTMLInputElement> & { readonly 'data-field': string | undefined };
}

/** Steps by the up and down keys are kept together once the hand rests this long [ms]. */
const REST = 600;

/**
 * What every figure does, in a row or on a dimension line. Click or tab opens it, selected; any unit may follow; Enter or Tab keeps, Esc gives
 * the old one back, the up and down keys step by the trade's step. Only what was typed is ever written: a field that was merely passed through
 * stays as it is.
 */
export function useFigure({
  measure,
  value,
  onKeep,
  hint,
  assumed,
  read: reader,
  required = false,
  again = false,
  field,
}: FigureProps): FigureField {
  const units = useUnits();
  const readTyped = reader ?? ((typed: string) => readMeasure(measure, typed, units));
  const use = limits[measure].use;
  const shown = value === null ? '' : textQuantity(value, use, units);
  const setupId = useBench((state) => state.setupId);
  const place = field === undefined ? null : `${setupId ?? ''} ${field}`;
  /** What is being typed; null while the kept figure stands. */
  const [draft, setDraft] = useState<string | null>(() => refused.at(place)?.draft ?? null);
  const [wrong, setWrong] = useState<string | null>(() => refused.at(place)?.wrong ?? null);
  const rest = useRef<ReturnType<typeof setTimeout> | null>(null);
  const id = useId();
  const text = draft ?? shown;
  /** Where Enter or Esc was pressed: the figure that then stands there is selected, for the next one to take its place. */
  const ended = useRef<HTMLInputElement | null>(null);
  useLayoutEffect(() => {
    if (ended.current !== null && ended.current === document.activeElement) ended.current.select();
    ended.current = null;
  }, [text]);

  const noRest = () => {
    if (rest.current !== null) clearTimeout(rest.current);
    rest.current = null;
  };
  useEffect(() => noRest, []);

  const refuse = (typed: string, sentence: string): void => {
    setWrong(sentence);
    refused.keep(place, { draft: typed, wrong: sentence });
  };
  const keep = (typed: string | null): void => {
    noRest();
    if (typed === null) return;
    // Nobody takes three eighths of a millimetre: the unit was forgotten, and guessing it would move a nocking point by an inch.
    if (/^[^a-z"'′″]*\d\/\d+\s*$/i.test(typed) && ['mm', 'cm'].includes(unitOf(use, units))) {
      refuse(typed, `A fraction needs its unit here, as in ${typed.trim()} in.`);
      return;
    }
    const read = readTyped(typed);
    if (!read.ok || (read.value === null && required)) {
      refuse(typed, read.ok ? `${limits[measure].name} is needed here.` : read.problem.sentence);
      return;
    }
    setWrong(null);
    refused.drop(place);
    const asItStands = read.value === value || typed.trim() === shown;
    const same = asItStands && !again;
    // The new figure stands in its shown form until the store has it, so that the old one does not flash up.
    const settled = read.value === null ? '' : textQuantity(read.value, use, units);
    setDraft(same ? null : settled);
    if (!same)
      void Promise.resolve(onKeep(asItStands ? value : read.value)).then(() => setDraft((now) => (now === settled ? null : now)));
  };

  const step = (direction: 1 | -1) => {
    const read = readTyped(text);
    const from = read.ok && read.value !== null ? read.value : (value ?? assumed ?? null);
    if (from === null) return;
    const next = textQuantity(from + direction * stepOf(use, units), use, units);
    if (!readMeasure(measure, next, units).ok) return;
    setDraft(next);
    noRest();
    rest.current = setTimeout(() => keep(next), REST);
  };

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') {
      ended.current = event.currentTarget;
      keep(draft);
      event.currentTarget.select();
    } else if (event.key === 'Escape' && (draft !== null || wrong !== null)) {
      // The first Esc gives the figure back; only the next one may close the page it stands on.
      event.preventDefault();
      event.stopPropagation();
      noRest();
      ended.current = event.currentTarget;
      setDraft(null);
      setWrong(null);
      refused.drop(place);
    } else if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      step(event.key === 'ArrowUp' ? 1 : -1);
    }
  };

  const described = [hint === undefined ? null : `${id}-hint`, wrong === null ? null : `${id}-wrong`]
    .filter((part) => part !== null)
    .join(' ');
  const pencil = value === null && assumed !== undefined ? textQuantity(assumed, use, units) : notYet(unitOf(use, units));

  return {
    id,
    text,
    built: text.includes('/') && wrong === null,
    pencil,
    wrong,
    shown,
    input: {
      id,
      'data-field': field,
      ...{ 'data-typing': draft === null ? 'no' : 'yes' },
      value: text,
      placeholder: pencil,
      autoComplete: 'off',
      spellCheck: false,
      inputMode: 'text',
      'aria-invalid': wrong !== null,
      'aria-describedby': described === '' ? undefined : described,
      onChange: (event) => {
        // A step that still waits must not be kept over what is typed after it.
        noRest();
        ended.current = null;
        setDraft(event.currentTarget.value);
      },
      onFocus: (event) => event.currentTarget.select(),
      onBlur: () => keep(draft),
      onKeyDown,
    },
  };
}

const notYet = (unit: string): string => (unit === '' ? 'not yet' : `not yet, ${unit}`);
