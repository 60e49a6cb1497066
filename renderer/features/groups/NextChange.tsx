import { useState } from 'react';
import { sourceWords } from '../../../core/findings/parts.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { NextStep, readBareShaft } from '../../../core/trials/index.ts';
import { Dialog, Fraction, Mark, WhyLink } from '../../design/index.ts';
import { NewGroupPage } from './NewGroup.tsx';
import { useEdits } from '../../state/useEdits.ts';

interface Props {
  bundle: Bundle;
  reading: ReturnType<typeof readBareShaft>;
  groups: readonly ShotGroup[];
}

/** One change, what it should do, and what to shoot then. A stop stands in its place: nothing is tuned on a bow that may not be shot. */
export function NextChange({ bundle, reading, groups }: Props) {
  const edit = useEdits();
  const [others, setOthers] = useState(false);
  const [shooting, setShooting] = useState(false);
  const [causes, setCauses] = useState(false);

  const { next } = reading;
  const note = (step: NextStep) => step.patch !== null && edit.settings(step.title, step.patch);
  return (
    <section className={next.kind === 'stop' ? 'next stopped' : 'next'}>
      <p className="name note">Next change</p>
      <h2 className="plate">
        {next.kind === 'stop' && <Mark level="stop" />}
        <Fraction>{next.title}</Fraction>
      </h2>
      <p className="note">
        <Fraction>{next.text}</Fraction>
      </p>
      {next.then !== '' && (
        <p className="note">
          <Fraction>{next.then}</Fraction>
        </p>
      )}
      {next.caution !== null && (
        <p className="note caution-line">
          <Mark level="caution" /> <Fraction>{next.caution}</Fraction>
        </p>
      )}
      <div className="acts">
        {next.patch !== null && (
          <button type="button" className="btn go" onClick={() => note(next)}>
            Note it as done
          </button>
        )}
        {reading.others.length > 0 && (
          <button type="button" className="link" onClick={() => setOthers(true)}>
            Other changes
          </button>
        )}
        {reading.causes.length > 0 && (
          <button type="button" className="link" onClick={() => setCauses(true)}>
            Causes
          </button>
        )}
        {next.kind !== 'stop' && (
          <button type="button" className="link" onClick={() => setShooting(true)}>
            Next group
          </button>
        )}
        <WhyLink why={next.why} about={next.title} />
      </div>
      {shooting && <NewGroupPage bundle={bundle} groups={groups} onClose={() => setShooting(false)} />}
      {others && (
        <Dialog title="Other changes, in the trade’s order" onClose={() => setOthers(false)}>
          <p className="note">
            One change at a time, written down, and the groups shot again. The first stands on the page; these come after it.
          </p>
          <ol className="other-steps">
            {reading.others.map((step) => (
              <li key={step.title}>
                <b>
                  <Fraction>{step.title}</Fraction>
                </b>
                <p className="note">
                  <Fraction>{step.text}</Fraction>
                </p>
                {step.caution !== null && (
                  <p className="note caution-line">
                    <Mark level="caution" /> <Fraction>{step.caution}</Fraction>
                  </p>
                )}
                <p className="note faint">{sourceWords(step.mark)}</p>
              </li>
            ))}
          </ol>
        </Dialog>
      )}
      {causes && (
        <Dialog title={`What may lie behind it, ${bundle.setup.name}`} onClose={() => setCauses(false)}>
          {reading.causes.map((cause) => (
            <section key={cause.cause} className="cause">
              <h3>
                <Fraction>{cause.cause}</Fraction>
              </h3>
              {cause.evidenceFor.length + cause.evidenceAgainst.length === 0 && (
                <p className="note faint">Nothing measured speaks for it or against it yet.</p>
              )}
              <ul>
                {cause.evidenceFor.map((line) => (
                  <li key={line}>
                    For: <Fraction>{line}</Fraction>
                  </li>
                ))}
                {cause.evidenceAgainst.map((line) => (
                  <li key={line}>
                    Against: <Fraction>{line}</Fraction>
                  </li>
                ))}
              </ul>
            </section>
          ))}
        </Dialog>
      )}
    </section>
  );
}
