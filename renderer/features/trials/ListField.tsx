import { useId, useState } from 'react';
import { limits, type Measure } from '../../../core/model/limits.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { listText, readList } from './figureList.ts';

interface Props {
  name: string;
  measure: Measure;
  /** SI. */
  values: readonly number[];
  most: number;
  onKeep(values: number[]): unknown;
}

/** Several figures of one kind in one field: "10, 18 m". */
export function ListField({ name, measure, values, most, onKeep }: Props) {
  const units = useUnits();
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  const shown = listText(values, measure, units);
  const keep = () => {
    if (draft === null) return;
    const read = readList(draft, measure, units, most);
    setWrong(read.ok ? null : read.problem.sentence);
    if (!read.ok) return;
    const same = draft.trim() === shown || read.value.join() === values.join();
    const settled = listText(read.value, measure, units);
    setDraft(same ? null : settled);
    if (!same) void Promise.resolve(onKeep(read.value)).then(() => setDraft((now) => (now === settled ? null : now)));
  };
  return (
    <div className="row">
      <label htmlFor={id}>{name}</label>
      <div className="row-value">
        <input
          id={id}
          className="figure list"
          autoComplete="off"
          spellCheck={false}
          value={draft ?? shown}
          data-typing={draft === null ? 'no' : 'yes'}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={(event) => setDraft(event.currentTarget.value)}
          onFocus={(event) => event.currentTarget.select()}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
            else if (event.key === 'Escape' && (draft !== null || wrong !== null)) {
              setDraft(null);
              setWrong(null);
            } else return;
            event.preventDefault();
          }}
        />
        {wrong !== null && (
          <p id={`${id}-wrong`} className="wrong" role="alert">
            {wrong} <span className="still">{shown || textQuantity(0, limits[measure].use, units)} stays in force.</span>
          </p>
        )}
      </div>
    </div>
  );
}
