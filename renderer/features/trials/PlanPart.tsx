import { Fraction, Mark } from '../../design/index.ts';
import { now } from '../../state/clock.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { answer } from '../frame/goTo.ts';
import { wasChanged } from './changed.ts';
import { setTrial } from './edits.ts';
import { takeRow } from './goOn.ts';
import { PlanForm } from './PlanForm.tsx';
import type { PartProps } from './shared.ts';
import { standIn } from './store.ts';
import { withUnit } from './words.ts';

/** What is to be shot, beside what so many arrows can and cannot show; how it is shot, beside what must be seen to first. */
export function PlanPart({ input, trial, told, rows, reading }: PartProps) {
  const bench = useBenchApi();
  const begin = async () => {
    const done = await setTrial(bench, trial.id, `${trial.name}: cautions read`, { cautionsRead: now() });
    if (!done) return;
    const row = rows.rows.find(({ key }) => key === rows.next);
    if (row === undefined) standIn(trial.id, { part: 'shoot', row: null });
    else await takeRow(bench, input, row);
  };
  return (
    <div className="plan-part">
      <div>
        <PlanForm trial={trial} />
        <p className="plan-sum">
          <b>{told.arrows}</b> {told.arrows === 1 ? 'arrow' : 'arrows'} in all
        </p>
        {told.asks.map(({ text, action }) => (
          <p key={text} className="note">
            <Fraction>{withUnit(text)}</Fraction>{' '}
            <button type="button" className="link" onClick={() => answer(bench, action)}>
              {action.label}
            </button>
          </p>
        ))}
      </div>
      <div className="plan-shows">
        <h3 className="name">So many arrows can show</h3>
        <Lines lines={told.canShow} />
        <h3 className="name">and cannot show</h3>
        <Lines lines={told.cannotShow} />
      </div>
      <div>
        <h3 className="name">How it is shot</h3>
        <ol className="plan-steps">
          {told.steps.map((line) => (
            <li key={line}>
              <Fraction>{withUnit(line)}</Fraction>
            </li>
          ))}
        </ol>
      </div>
      <div className="plan-first">
        <h3 className="name">Before the first arrow</h3>
        <ul className="plan-cautions">
          {told.cautions.map((line) => (
            <li key={line}>
              <Mark level="caution" />
              <span>
                <Fraction>{withUnit(line)}</Fraction>
              </span>
            </li>
          ))}
        </ul>
        {told.stops.map((stop) => (
          <p key={stop.id} className="note stop-text">
            <Mark level="stop" />{' '}
            <b>
              <Fraction>{stop.title}</Fraction>.
            </b>{' '}
            <Fraction>{stop.detail}</Fraction>{' '}
            {stop.action !== null && (
              <button type="button" className="link" onClick={() => stop.action !== null && answer(bench, stop.action)}>
                {stop.action.label}
              </button>
            )}
          </p>
        ))}
        {told.stops.length === 0 && trial.cautionsRead === null && (
          <button type="button" className="btn go" onClick={() => void begin()}>
            Read, and the place is fit: begin
          </button>
        )}
        {trial.cautionsRead !== null && (
          <button type="button" className="btn" onClick={() => standIn(trial.id, { part: 'shoot', row: null })}>
            {rows.next === null || wasChanged(trial, reading)
              ? 'See what was shot'
              : told.stops.length > 0
                ? 'Note what was shot'
                : 'Go on shooting'}
          </button>
        )}
      </div>
    </div>
  );
}

function Lines({ lines }: { lines: readonly string[] }) {
  return (
    <ul className="plan-lines">
      {lines.map((line) => (
        <li key={line}>
          <Fraction>{withUnit(line)}</Fraction>
        </li>
      ))}
    </ul>
  );
}
