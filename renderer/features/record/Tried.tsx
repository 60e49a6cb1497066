import { dayText } from '../../../core/findings/index.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { Fraction } from '../../design/index.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../state/useBench.ts';
import { sheetOf, stateText } from '../trials/derive.ts';
import { chooseTrial } from '../trials/store.ts';

/** What was tried with this set-up: each trial with its day, how far it came, and the changes that came of it. */
export function Tried({ trials }: { trials: readonly Trial[] }) {
  const records = useBench((state) => state.records);
  const units = useUnits();
  const bench = useBenchApi();
  const today = now();
  if (trials.length === 0) return null;
  return (
    <section className="tried">
      <h2 className="plate">What was tried</h2>
      <table className="table">
        <tbody>
          {trials.map((trial) => (
            <tr key={trial.id}>
              <th scope="row">
                <button
                  type="button"
                  className="link"
                  onClick={() => {
                    chooseTrial(trial.setupId, trial.id);
                    bench.getState().go('trials');
                  }}
                >
                  {trial.name}
                </button>
              </th>
              <td>{dayText(trial.born, today)}</td>
              <td>{stateText(trial, sheetOf(records, trial, units))}</td>
              <td className="tried-changes">
                {trial.changes.length === 0 ? (
                  <span className="faint">nothing changed</span>
                ) : (
                  <Fraction>{trial.changes.map(({ title }) => title).join('; ')}</Fraction>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
