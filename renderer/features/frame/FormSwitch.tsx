import type { ReactNode } from 'react';
import { chooseForm, useFormKind, type FormKind } from './formKind.ts';
import './formSwitch.css';

const kinds: readonly { readonly kind: FormKind; readonly text: string }[] = [
  { kind: 'drawing', text: 'Drawing' },
  { kind: 'plain form', text: 'Plain form' },
];

/** The head of a screen whose drawing is its form, with the two words that choose between the drawing and the rows. */
export function HeadWithSwitch({ children }: { children: ReactNode }) {
  const chosen = useFormKind();
  return (
    <div className="head-with-switch">
      {children}
      <div className="form-switch" role="group" aria-label="Enter figures on the">
        {kinds.map(({ kind, text }) => (
          <button
            key={kind}
            type="button"
            aria-pressed={chosen === kind}
            title="F2 changes over"
            onClick={() => chooseForm(kind)}
          >
            {text}
          </button>
        ))}
      </div>
    </div>
  );
}
