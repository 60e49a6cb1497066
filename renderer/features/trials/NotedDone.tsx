import type { TrialChange } from '../../../core/model/trial.ts';
import { Fraction } from '../../design/index.ts';
import { now, whenText } from '../../state/clock.ts';

interface Props {
  changes: readonly TrialChange[];
  ended: boolean;
  /** Takes the last note off again; null where nothing may be altered. */
  onTakeOff: (() => void) | null;
}

/** What was changed in this trial. Nothing more is turned before it has been shot again: one change at a time. */
export function NotedDone({ changes, ended, onTakeOff }: Props) {
  const last = changes.at(-1);
  if (last === undefined) return null;
  const today = now();
  return (
    <section className="next">
      <h3 className="plate">
        Noted: <Fraction>{last.title}</Fraction>
      </h3>
      <p className="note">
        Noted {whenText(last.at, today)}.{' '}
        {ended
          ? 'The trial is ended and stays on record as it is.'
          : 'See to it on the bow itself, then shoot the same again before anything else is changed. This trial is closed: its arrows were shot before the change, and the new ones go into a trial of their own.'}{' '}
        {onTakeOff !== null && (
          <button type="button" className="link" onClick={onTakeOff}>
            Noted by mistake: take it off
          </button>
        )}
      </p>
      {changes.length > 1 && (
        <ol className="noted">
          {changes.map(({ title, at }) => (
            <li key={at.at}>
              <span>
                <Fraction>{title}</Fraction>
              </span>
              <span className="faint">{whenText(at, today)}</span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
