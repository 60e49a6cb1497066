import { useId, useState } from 'react';
import type { TrialRow } from '../../../core/trials/index.ts';
import { readMeasure, textQuantity, unitOf } from '../../../core/units/index.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { placeOf } from './derive.ts';
import { setSpeeds } from './edits.ts';
import { RowHead } from './RowHead.tsx';
import type { PartProps } from './shared.ts';

const MOST = 60;

/** Speeds over the chronograph at one height: typed one after the other, Enter after each. */
export function RowSpeeds({ trial, row }: PartProps & { row: TrialRow }) {
  const bench = useBenchApi();
  const units = useUnits();
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  const speeds = placeOf(trial, row)?.speeds ?? [];
  const keep = () => {
    if (text.trim() === '') return;
    const read = readMeasure('arrowSpeed', text, units);
    setWrong(read.ok ? null : read.problem.sentence);
    if (!read.ok || read.value === null) return;
    setText('');
    void setSpeeds(bench, trial.id, row, 'An arrow speed noted', [...speeds, read.value]);
  };
  return (
    <>
      <RowHead row={row} count={null} />
      <p className="note faint">Over a chronograph, three or more; Enter after each. Without one, go on.</p>
      <ol className="noted">
        {speeds.map((speed, i) => (
          <li key={i}>
            <b>{textQuantity(speed, 'speed', units, { digits: 1 })}</b>
            <button
              type="button"
              className="link"
              onClick={() =>
                void setSpeeds(
                  bench,
                  trial.id,
                  row,
                  'An arrow speed taken back',
                  speeds.filter((_, at) => at !== i),
                )
              }
            >
              Take back<span className="heard">: speed {i + 1}</span>
            </button>
          </li>
        ))}
      </ol>
      <div className="form">
        <div className="row">
          <label htmlFor={id}>speed {speeds.length + 1}</label>
          <div className="row-value">
            <input
              id={id}
              className="figure"
              value={text}
              placeholder={unitOf('speed', units)}
              autoComplete="off"
              disabled={speeds.length >= MOST}
              data-typing={text === '' ? 'no' : 'yes'}
              aria-invalid={wrong !== null}
              aria-describedby={wrong === null ? undefined : `${id}-wrong`}
              onChange={(event) => setText(event.currentTarget.value)}
              onBlur={keep}
              onKeyDown={(event) => {
                if (event.key === 'Enter') keep();
                if (event.key === 'Escape') setText('');
              }}
            />
            {wrong !== null && (
              <p id={`${id}-wrong`} className="wrong" role="alert">
                {wrong}
              </p>
            )}
          </div>
        </div>
      </div>
    </>
  );
}
