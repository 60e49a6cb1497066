import { useState } from 'react';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { kindsOf, type Makers, type PaperKind } from './makers.ts';
import { PrintDesk } from './PrintDesk.tsx';

interface Props {
  bundle: Bundle;
  /** What stands on the button: "Print strip". */
  label: string;
  makers: Makers;
  /** The paper that it opens with; without it the first that is offered. */
  first?: PaperKind;
}

/** The way to the papers of a part: a preview with what can be chosen for it, and the printer. */
export function PrintButton({ bundle, label, makers, first }: Props) {
  const [open, setOpen] = useState(false);
  const kind = first ?? kindsOf(makers)[0];
  return (
    <>
      <button type="button" className="btn" disabled={kind === undefined} onClick={() => setOpen(true)}>
        {label}
      </button>
      {open && kind !== undefined && <PrintDesk bundle={bundle} makers={makers} first={kind} onClose={() => setOpen(false)} />}
    </>
  );
}
