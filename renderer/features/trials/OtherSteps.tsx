import { useState } from 'react';
import type { NextStep } from '../../../core/trials/index.ts';
import { StepShown } from './StepShown.tsx';

interface Props {
  steps: readonly NextStep[];
  onNote: ((step: NextStep) => void) | null;
}

/** What else there is, in the trade's order, behind one word. */
export function OtherSteps({ steps, onNote }: Props) {
  const [open, setOpen] = useState(false);
  if (steps.length === 0) return null;
  return (
    <>
      <button type="button" className="link" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? 'Fewer changes' : 'Other changes'}
      </button>
      {open && (
        <ol className="other-steps">
          {steps.map((step) => (
            <li key={step.title}>
              <StepShown step={step} plain />
              {onNote !== null && (step.kind === 'change' || step.kind === 'measure') && (
                <button type="button" className="link" onClick={() => onNote(step)}>
                  Note this one as done<span className="heard">: {step.title}</span>
                </button>
              )}
            </li>
          ))}
        </ol>
      )}
    </>
  );
}
