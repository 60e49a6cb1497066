import { useId, useState } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { beginEnd } from './beginEnd.ts';
import { endText, newEnd } from './ends.ts';
import { setEntry, useEntry } from './store.ts';

/** More arrows than anybody shoots in one end. */
const MOST_ARROWS = 72;

/** Which end is in hand and how full it is, the way to the next one. */
export function EndLine({ entering }: { entering: ShotGroup }) {
  const entry = useEntry(entering.id);
  return (
    <>
      <span className="end-in-hand" role="status">
        {endText(entering.shots, entry)}
      </span>
      <button
        type="button"
        className="link"
        aria-keyshortcuts="N"
        disabled={newEnd(entering.shots, entry) === null}
        onClick={() => beginEnd(entering)}
      >
        New end
      </button>
      <EndSize entering={entering} />
    </>
  );
}

/** How many arrows make an end: then the next begins by itself. */
function EndSize({ entering }: { entering: ShotGroup }) {
  const { size } = useEntry(entering.id);
  const [draft, setDraft] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const id = useId();
  const keep = () => {
    if (draft === null) return;
    setDraft(null);
    const typed = draft.trim();
    const count = /^\d{1,3}$/.test(typed) ? Number(typed) : 0;
    const fits = typed === '' || (count >= 1 && count <= MOST_ARROWS);
    setWrong(fits ? null : `A whole number from 1 to ${MOST_ARROWS} was expected, or none.`);
    if (fits) setEntry(entering.id, { size: typed === '' ? null : count });
  };
  return (
    <>
      <span className="end-size">
        <label htmlFor={id}>arrows an end</label>
        <input
          id={id}
          className="words"
          inputMode="numeric"
          value={draft ?? (size === null ? '' : String(size))}
          placeholder="–"
          autoComplete="off"
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={(event) => setDraft(event.currentTarget.value)}
          onBlur={keep}
          onKeyDown={(event) => {
            if (event.key === 'Enter') keep();
            if (event.key === 'Escape') setDraft(null);
          }}
        />
      </span>
      {wrong !== null && (
        <span id={`${id}-wrong`} className="wrong" role="alert">
          {wrong}
        </span>
      )}
    </>
  );
}
