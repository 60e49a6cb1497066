import { useState } from 'react';
import { sourceWords } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { NextStep } from '../../../core/trials/index.ts';
import { Fraction, Mark, WhyLink } from '../../design/index.ts';
import { now, whenText } from '../../state/clock.ts';
import { useBenchApi, useUnits } from '../../state/useBench.ts';
import { keepFocus } from '../frame/keepFocus.ts';
import { beginTrial, noteDone, setTrial } from './edits.ts';
import type { PartProps } from './shared.ts';
import { chooseTrial, standIn } from './store.ts';

/** The one next change, what to do when it does not do what it should, and the end of the trial. */
export function ChangePart({ trial, reading, bundle }: PartProps & { bundle: Bundle }) {
  const units = useUnits();
  const bench = useBenchApi();
  const [others, setOthers] = useState(false);
  const { next, ifNot, waste, verdict } = reading;
  const ended = trial.ended !== null;
  const again = () =>
    void beginTrial(bench, bundle, trial.trial, units, trial).then((id) => id !== null && chooseTrial(trial.setupId, id));
  const put = (label: string, patch: Parameters<typeof setTrial>[3]) => setTrial(bench, trial.id, label, patch);
  const noted = trial.changes.some(({ title }) => title === next.title);
  const canNote = next.kind === 'change' && !noted && !ended;
  return (
    <div className="change-part">
      <div>
        <Step step={next} />
        <div className="acts">
          {canNote && (
            <button type="button" className="btn go" onClick={() => void noteDone(bench, trial.id, next)}>
              Note it as done
            </button>
          )}
          {reading.others.length > 0 && (
            <button type="button" className="link" aria-expanded={others} onClick={() => setOthers(!others)}>
              {others ? 'Fewer changes' : 'Other changes'}
            </button>
          )}
          <WhyLink why={next.why} about={next.title} />
        </div>
        {others && (
          <ol className="other-steps">
            {reading.others.map((step) => (
              <li key={step.title}>
                <Step step={step} />
              </li>
            ))}
          </ol>
        )}
        {trial.changes.length > 0 && (
          <>
            <h3 className="name">Noted as done</h3>
            <ol className="noted">
              {trial.changes.map(({ title, at }) => (
                <li key={at.at}>
                  <span>
                    <Fraction>{title}</Fraction>
                  </span>
                  <span className="faint">{whenText(at, now())}</span>
                </li>
              ))}
            </ol>
          </>
        )}
      </div>
      <div className="change-aside">
        {ifNot !== '' && (
          <>
            <h3 className="name">If it does not do what it should</h3>
            <p className="note">
              <Fraction>{ifNot}</Fraction>
            </p>
          </>
        )}
        {waste !== '' && (
          <>
            <h3 className="name">A waste of arrows now</h3>
            <p className="note">
              <Fraction>{waste}</Fraction>
            </p>
          </>
        )}
        <div className="acts">
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
            <button type="button" className="btn" onClick={() => void put(`${trial.name} ended`, { ended: now() })}>
              End the trial
            </button>
          )}
          {verdict !== 'stopped' && (
            <button type="button" className="btn" onClick={again}>
              Shoot it again
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

function Step({ step }: { step: NextStep }) {
  return (
    <section className={step.kind === 'stop' ? 'next stopped' : 'next'}>
      <h3 className="plate">
        {step.kind === 'stop' && <Mark level="stop" />}
        <Fraction>{step.title}</Fraction>
      </h3>
      <p className="note">
        <Fraction>{step.text}</Fraction>
      </p>
      {step.then !== '' && (
        <p className="note">
          <Fraction>{step.then}</Fraction>
        </p>
      )}
      {step.caution !== null && (
        <p className="note caution-line">
          <Mark level="caution" /> <Fraction>{step.caution}</Fraction>
        </p>
      )}
      {step.kind === 'change' && <p className="note faint">{sourceWords(step.mark)}</p>}
    </section>
  );
}
