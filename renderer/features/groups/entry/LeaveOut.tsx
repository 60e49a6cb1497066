import { useId, useRef, useState } from 'react';
import type { Shot, ShotGroup } from '../../../../core/model/group.ts';
import { Dialog } from '../../../design/index.ts';
import { useBenchApi } from '../../../state/useBench.ts';
import { leaveOut } from '../edits.ts';
import { shotName } from './ends.ts';
import { setEntry, useEntry } from './store.ts';

const LONGEST = 200;

/** The page on which a shot is left out, open while one is named for it. */
export function LeaveOut({ group }: { group: ShotGroup }) {
  const { leaving } = useEntry(group.id);
  const shot = leaving === null ? undefined : group.shots.find(({ id }) => id === leaving);
  return shot === undefined ? null : <Reason key={shot.id} group={group} shot={shot} />;
}

function Reason({ group, shot }: { group: ShotGroup; shot: Shot }) {
  const bench = useBenchApi();
  const [reason, setReason] = useState(shot.leftOut ?? '');
  const [wrong, setWrong] = useState(false);
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const close = () => setEntry(group.id, { leaving: null });
  const keep = async (why: string | null) => {
    if (why === '') {
      setWrong(true);
      return field.current?.focus();
    }
    if (await leaveOut(bench, group, shot, why)) close();
  };
  const name = shotName(shot, group.shots);
  return (
    <Dialog
      title={shot.leftOut === null ? `Leave ${name} out` : `Left out: ${name}`}
      onClose={close}
      foot={
        <>
          <button type="button" className="btn go" onClick={() => void keep(reason.trim())}>
            {shot.leftOut === null ? 'Leave it out' : 'Keep this reason'}
          </button>
          {shot.leftOut !== null && (
            <button type="button" className="btn" onClick={() => void keep(null)}>
              Count it again
            </button>
          )}
          <button type="button" className="btn" onClick={close}>
            Cancel
          </button>
        </>
      }
    >
      <p className="note">
        It stays on the face and on record, struck through, and the figures count without it. A shot is left out for what was seen
        when it was shot, not for where it struck.
      </p>
      <div className="row">
        <label htmlFor={id}>reason</label>
        <div className="row-value">
          <input
            ref={field}
            id={id}
            className="words"
            value={reason}
            maxLength={LONGEST}
            autoFocus
            autoComplete="off"
            aria-invalid={wrong}
            aria-describedby={wrong ? `${id}-wrong` : undefined}
            onChange={(event) => {
              setReason(event.currentTarget.value);
              setWrong(false);
            }}
            onKeyDown={(event) => {
              if (event.key === 'Enter') void keep(reason.trim());
            }}
          />
          {wrong && (
            <p id={`${id}-wrong`} className="wrong" role="alert">
              A reason was expected, as in “slipped off the rest”. Without one the shot{' '}
              {shot.leftOut === null ? 'counts' : 'keeps the one it has'}.
            </p>
          )}
        </div>
      </div>
    </Dialog>
  );
}
