import { useState } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { ShotsSheet } from './ShotsSheet.tsx';

/** The way to the table of a group's shots: to type, mend, paste and read them out of a file. */
export function ShotsButton({ entering }: { entering: ShotGroup }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="link" onClick={() => setOpen(true)}>
        Table
      </button>
      {open && <ShotsSheet group={entering} onClose={() => setOpen(false)} />}
    </>
  );
}
