import { sourceWords } from '../../../core/findings/index.ts';
import type { NextStep } from '../../../core/trials/index.ts';
import { Fraction, Mark } from '../../design/index.ts';

/** A step: what to do, what it should do, what to shoot then, and where the advice is from. */
export function StepShown({ step, plain = false }: { step: NextStep; plain?: boolean }) {
  return (
    <section className={plain ? 'step' : step.kind === 'stop' ? 'next stopped' : 'next'}>
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
