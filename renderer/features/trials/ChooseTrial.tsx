import { useMemo } from 'react';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Trial, TrialKind } from '../../../core/model/trial.ts';
import { brief, newTrialPlan } from '../../../core/trials/index.ts';
import { shootingStops } from '../../../core/findings/index.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { newTrial } from '../../state/births.ts';
import { now } from '../../state/clock.ts';
import { useBench, useBenchApi, useUnits } from '../../state/useBench.ts';
import { answer } from '../frame/goTo.ts';
import { trialInput } from './derive.ts';
import { beginTrial } from './edits.ts';
import { firstOf } from './firstOf.ts';
import { kindNames, kindsInOrder } from './kinds.ts';
import { chooseTrial } from './store.ts';
import { TrialsAway } from './TrialsAway.tsx';

interface Props {
  bundle: Bundle;
  trials: readonly Trial[];
}

/** Before a trial is chosen: what is most useful next, and what each of the seven answers. */
export function ChooseTrial({ bundle, trials }: Props) {
  const units = useUnits();
  const bench = useBenchApi();
  const records = useBench((state) => state.records);
  const [stop] = useMemo(() => shootingStops(bundle, units), [bundle, units]);
  const first = useMemo(() => firstOf(bundle, trials, units), [bundle, trials, units]);
  const offered = useMemo(
    () =>
      kindsInOrder.map((kind) => {
        const trial = newTrial(bundle.setup.id, kind, kindNames[kind], newTrialPlan(kind, bundle, units));
        const told = brief(trialInput(records, bundle, trial, units, now()));
        return { kind, answers: told.purpose, arrows: told.arrows, shows: told.canShow[0] ?? told.cannotShow[0] ?? '' };
      }),
    [records, bundle, units],
  );
  const begin = (kind: TrialKind) =>
    void beginTrial(bench, bundle, kind, units).then((id) => id !== null && chooseTrial(bundle.setup.id, id));

  return (
    <>
      <div className="head">
        <h1>
          <Fraction>{first.headline}</Fraction>
        </h1>
        <p>
          {stop !== undefined && <Mark level="stop" />} <Fraction>{first.subline}</Fraction>{' '}
          {first.action !== null && (
            <button type="button" className="link" onClick={() => first.action !== null && answer(bench, first.action)}>
              {first.action.label}
            </button>
          )}
        </p>
      </div>
      <div className="body">
        {first.open !== null && (
          <div className="acts trial-goes-on">
            <button
              type="button"
              className="btn go"
              onClick={() => first.open !== null && chooseTrial(bundle.setup.id, first.open.id)}
            >
              Go on with it
            </button>
          </div>
        )}
        <table className="table trial-table">
          <thead>
            <tr>
              <th scope="col">trial</th>
              <th scope="col">what it answers, and what so many arrows can show here</th>
              <th scope="col">arrows</th>
            </tr>
          </thead>
          <tbody>
            {offered.map(({ kind, answers, arrows, shows }) => (
              <tr key={kind} className={kind === first.kind ? 'answer' : undefined}>
                <th scope="row">
                  <button type="button" className={kind === first.kind ? 'btn go' : 'link'} onClick={() => begin(kind)}>
                    {kindNames[kind]}
                    <span className="heard">: plan this trial</span>
                  </button>
                </th>
                <td className="trial-answers">
                  {answers}
                  <span className="note">
                    <Fraction>{shows}</Fraction>
                  </span>
                </td>
                <td>{arrows}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <TrialsAway setupId={bundle.setup.id} />
      </div>
    </>
  );
}
