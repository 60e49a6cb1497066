import type { ReactNode } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { useBenchApi } from '../../../state/useBench.ts';
import { leaveOut, removeShot } from '../edits.ts';
import { endInHand, shotName } from './ends.ts';
import { setEntry, useEntry } from './store.ts';

/** The line of tools right above the face: what is given, and what can be done with the shot in hand, else with the last one, said by its name. */
export function ShotTools({ group, children }: { group: ShotGroup; children?: ReactNode }) {
  const bench = useBenchApi();
  const entry = useEntry(group.id);
  const { shotInHand, pinned = null } = entry;
  const chosen = group.shots.find(({ id }) => id === shotInHand);
  const shot = chosen ?? (pinned === null ? group.shots.at(-1) : group.shots.findLast(({ end }) => end === pinned));
  const end = endInHand(group.shots, entry);
  const full = shot === undefined ? 'the last shot' : shotName(shot, group.shots);
  // One line has room for both names; the end in hand need not be said again.
  const name = shot?.end === end ? full.replace(/ of end .*/, '') : full.replace(' of end', ', end');
  const isOut = shot !== undefined && shot.leftOut !== null;
  return (
    <div className="shot-tools">
      {children}
      <button
        type="button"
        className="link"
        aria-label={isOut ? `Count it again: ${name}` : undefined}
        aria-keyshortcuts="L"
        disabled={shot === undefined}
        onClick={() => {
          if (shot === undefined) return;
          if (isOut) void leaveOut(bench, group, shot, null);
          else setEntry(group.id, { leaving: shot.id });
        }}
      >
        {isOut ? 'Count it again' : `Leave out ${name}`}
      </button>
      <button
        type="button"
        className="link"
        aria-keyshortcuts="Backspace"
        disabled={shot === undefined}
        onClick={() => {
          if (shot !== undefined) void removeShot(bench, group.id, shot.id);
        }}
      >
        {`Remove ${name}`}
      </button>
    </div>
  );
}
