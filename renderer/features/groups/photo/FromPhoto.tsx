import { useState } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { PhotoSheet } from './PhotoSheet.tsx';

/** The way to the shots of a group by a photo of the target. */
export function FromPhoto({ group }: { group: ShotGroup }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" className="link" onClick={() => setOpen(true)}>
        Photo
      </button>
      {open && <PhotoSheet group={group} onClose={() => setOpen(false)} />}
    </>
  );
}
