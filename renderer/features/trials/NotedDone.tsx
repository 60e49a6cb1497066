import type { TrialChange } from '../../../core/model/trial.ts';
import { Fraction } from '../../design/index.ts';
import { now, whenText } from '../../state/clock.ts';

/** What was changed in this trial. Nothing more is turned before it has been shot again: one change at a time. */
export function NotedDone({ changes }: { changes: readonly TrialChange[] }) {
  const last = changes.at(-1);
  if (last === undefined) return null;
  return (
    <section className="next">
      <h3 className="plate">
        Noted: <Fraction>{last.title}</Fraction>
      </h3>
      <p className="note">
        Set the bow itself to it, then shoot the same again before anything else is turned. This trial stays on record as it is.
      </p>
      <ol className="noted">
        {changes.map(({ title, at }) => (
          <li key={at.at}>
            <span>
              <Fraction>{title}</Fraction>
            </span>
            <span className="faint">{whenText(at, now())}</span>
          </li>
        ))}
      </ol>
    </section>
  );
}
