import { useMemo } from 'react';
import { dayText } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { Fraction } from '../../design/index.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../state/useBench.ts';
import { sheetOf, stateText } from '../trials/derive.ts';
import { foundBy } from '../trials/found.ts';
import { chooseTrial } from '../trials/store.ts';

/** What was tried with this set-up: each trial with its day, how far it came, what it found, and the changes that came of it with what the next one says of them. */
export function Tried({ bundle, trials }: { bundle: Bundle; trials: readonly Trial[] }) {
  const records = useBench((state) => state.records);
  const units = useUnits();
  const bench = useBenchApi();
  const today = now();
  const rows = useMemo(
    () => trials.map((trial) => ({ trial, ...foundBy(records, bundle, trials, trial, units, now()) })),
    [records, bundle, trials, units],
  );
  if (trials.length === 0) return null;
  return (
    <section className="tried">
      <h2 className="plate">What was tried</h2>
      <table className="table">
        <thead>
          <tr>
            <th scope="col">trial</th>
            <th scope="col">day</th>
            <th scope="col">state</th>
            <th scope="col">found</th>
            <th scope="col">changed, and what came of it</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ trial, found, since }) => (
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
              <td className="tried-changes">{found !== null && <Fraction>{found}</Fraction>}</td>
              <td className="tried-changes">
                {trial.changes.length === 0 ? (
                  <span className="faint">nothing changed</span>
                ) : (
                  <Fraction>{trial.changes.map(({ title }) => title).join('; ')}</Fraction>
                )}
                {since !== null && (
                  <span className="note">
                    <Fraction>{since}</Fraction>
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
