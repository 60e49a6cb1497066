import type { Bundle } from '../../../core/model/bundle.ts';
import type { Trial } from '../../../core/model/trial.ts';
import type { NextStep } from '../../../core/trials/index.ts';
import { Fraction, WhyLink } from '../../design/index.ts';
import { now, whenText } from '../../state/clock.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { actNow, wasChanged, type Act } from './actNow.ts';
import { beginTrial, noteDone, setTrial } from './edits.ts';
import { NotedDone } from './NotedDone.tsx';
import { OtherSteps } from './OtherSteps.tsx';
import type { PartProps } from './shared.ts';
import { StepShown } from './StepShown.tsx';
import { chooseTrial, standIn } from './store.ts';

/** The one next change, what to do when it does not do what it should, and the end of the trial. */
export function ChangePart({ trial, reading, rows, bundle }: PartProps & { bundle: Bundle }) {
  const units = useUnits();
  const bench = useBenchApi();
  const { next, ifNot, waste } = reading;
  const ended = trial.ended !== null;
  const changed = wasChanged(trial, reading);
  const put = (label: string, patch: Partial<Trial>) => setTrial(bench, trial.id, label, patch);
  const note = (step: NextStep) => void noteDone(bench, trial.id, step).then(keepFocus);
  const again = () =>
    void beginTrial(bench, bundle, trial.trial, units, trial).then((id) => id !== null && chooseTrial(trial.setupId, id));
  const first = actNow(trial, reading, rows);
  const checked = trial.changes.at(-1);
  const look = (which: Act) => (which === first ? 'btn go' : 'btn');

  return (
    <div className="change-part">
      <div>
        {!changed && checked !== undefined && (
          <p className="note">
            Noted {whenText(checked.at, now())}: <Fraction>{checked.title}</Fraction>.
          </p>
        )}
        {changed ? <NotedDone changes={trial.changes} ended={ended} /> : <StepShown step={next} />}
        <div className="acts">
          {first === 'note' && (
            <button type="button" className="btn go" onClick={() => note(next)}>
              Note it as done
            </button>
          )}
          {first === 'plan' && (
            <button type="button" className="btn go" onClick={() => standIn(trial.id, { part: 'plan', row: null })}>
              Add ends to the plan
            </button>
          )}
          {first === 'shoot' && (
            <button type="button" className="btn go" onClick={() => standIn(trial.id, { part: 'shoot', row: null })}>
              Go on shooting
            </button>
          )}
          {!changed && <OtherSteps steps={reading.others} onNote={ended ? null : note} />}
          {!changed && <WhyLink why={next.why} about={next.title} />}
        </div>
      </div>
      <div className="change-aside">
        <Aside title="If it does not do what it should" text={ifNot} />
        <Aside title="A waste of arrows now" text={waste} />
        <div className="acts">
          {reading.verdict !== 'stopped' && rows.rows.some(({ done }) => done) && (
            <button type="button" className={look('again')} onClick={again}>
              Shoot it again
            </button>
          )}
          {ended ? (
            <button
              type="button"
              className="btn"
              onClick={() => {
                standIn(trial.id, { part: null, row: null });
                void put(`${trial.name} taken up again`, { ended: null });
              }}
            >
              Take it up again
            </button>
          ) : (
            <button
              type="button"
              className={look('end')}
              onClick={() => void put(`${trial.name} ended`, { ended: now() }).then(keepFocus)}
            >
              End the trial
            </button>
          )}
          <button
            type="button"
            className="link"
            onClick={() => void put(`${trial.name} put away`, { archivedAt: now() }).then(keepFocus)}
          >
            Put it away
          </button>
        </div>
      </div>
    </div>
  );
}

function Aside({ title, text }: { title: string; text: string }) {
  if (text === '') return null;
  return (
    <>
      <h3 className="name">{title}</h3>
      <p className="note">
        <Fraction>{text}</Fraction>
      </p>
    </>
  );
}
