import type { Bundle } from '../../../core/model/bundle.ts';
import type { Trial } from '../../../core/model/trial.ts';
import type { NextStep } from '../../../core/trials/index.ts';
import { Fraction, WhyLink } from '../../design/index.ts';
import { now, whenText } from '../../state/clock.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { actNow, type Act } from './actNow.ts';
import { againOf } from './again.ts';
import { wasChanged } from './changed.ts';
import { beginTrial, setTrial } from './edits.ts';
import { GoMeasure } from './GoMeasure.tsx';
import { NotedDone } from './NotedDone.tsx';
import { noteDone, takeOff } from './notes.ts';
import { OtherSteps } from './OtherSteps.tsx';
import type { PartProps } from './shared.ts';
import { StepShown } from './StepShown.tsx';
import { arrowsLeft, soFar } from './standing.ts';
import { chooseTrial, standIn } from './store.ts';

/** The one next change, what to do when it does not do what it should, and the end of the trial. */
export function ChangePart({ input, trial, reading, rows, bundle }: PartProps & { bundle: Bundle }) {
  const units = useUnits();
  const bench = useBenchApi();
  const { next, ifNot, waste } = reading;
  const ended = trial.ended !== null;
  const changed = wasChanged(trial, reading);
  const put = (label: string, patch: Partial<Trial>) => setTrial(bench, trial.id, label, patch);
  const note = (step: NextStep) => void noteDone(bench, trial.id, step).then(keepFocus);
  const repeat = againOf(input, rows);
  const again = () =>
    void beginTrial(bench, bundle, trial.trial, units, { plan: repeat.plan, between: trial.between }).then(
      (id) => id !== null && chooseTrial(trial.setupId, id),
    );
  const off = () => void takeOff(bench, trial.id).then(keepFocus);
  const first = actNow(trial, reading, rows);
  const early = first === 'shoot' && soFar(trial, rows, reading);
  const checked = trial.changes.at(-1);
  const look = (which: Act) => (which === first ? 'btn go' : 'btn');

  return (
    <div className="change-part">
      <div>
        {!changed && checked !== undefined && (
          <p className="note">
            Noted {whenText(checked.at, now())}: <Fraction>{checked.title}</Fraction>.{' '}
            {!ended && (
              <button type="button" className="link" onClick={off}>
                Take the note off
              </button>
            )}
          </p>
        )}
        {changed ? (
          <NotedDone changes={trial.changes} ended={ended} onTakeOff={ended ? null : off} />
        ) : early ? (
          <ShootOn left={arrowsLeft(rows)} />
        ) : (
          <StepShown step={next} />
        )}
        <div className="acts">
          {first === 'note' && <GoMeasure step={next} />}
          {first === 'note' && (
            <button type="button" className={next.go === null ? 'btn go' : 'btn'} onClick={() => note(next)}>
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
          {!changed && !early && <OtherSteps steps={reading.others} onNote={ended ? null : note} />}
          {!changed && !early && <WhyLink why={next.why} about={next.title} />}
        </div>
      </div>
      <div className="change-aside">
        {!early && <Aside title="If it does not do what it should" text={ifNot} />}
        {!early && <Aside title="A waste of arrows now" text={waste} />}
        <div className="acts">
          {reading.verdict !== 'stopped' && rows.rows.some(({ shot }) => shot > 0) && (
            <button type="button" className={look('again')} onClick={again}>
              <Fraction>{repeat.words}</Fraction>
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
        <p className="note faint">
          {ended ? '' : 'Ended, it stays here and on Record, and nothing more is shot in it. '}Put away, it leaves this list and
          Record’s, and can be taken out again.
        </p>
      </div>
    </div>
  );
}

/** A plan that was shot in part gives no verdict of its own. */
function ShootOn({ left }: { left: number }) {
  return (
    <section className="next">
      <h3 className="plate">Shoot the plan to its end: {left === 1 ? 'one arrow' : `${left} arrows`} left</h3>
      <p className="note">
        What was shot so far is no verdict: taking the first that looks well is how chance is taken for a finding. What will not
        be shot is taken out of the plan.
      </p>
    </section>
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
