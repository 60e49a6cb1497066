import type { ShotGroup } from '../../../../core/model/group.ts';
import { useBenchApi } from '../../../state/useBench.ts';
import { leaveOut, removeShot } from '../edits.ts';
import { endInHand, shotName } from './ends.ts';
import { setEntry, useEntry } from './store.ts';

/** Under the face: what can be done with the shot in hand, else with the last one, said by its name. */
export function ShotTools({ group }: { group: ShotGroup }) {
  const bench = useBenchApi();
  const entry = useEntry(group.id);
  const { shotInHand, pinned = null } = entry;
  const chosen = group.shots.find(({ id }) => id === shotInHand);
  const shot = chosen ?? (pinned === null ? group.shots.at(-1) : group.shots.findLast(({ end }) => end === pinned));
  const end = endInHand(group.shots, entry);
  // The end in hand need not be said again.
  const name =
    shot === undefined ? 'the last shot' : shotName(shot, group.shots).replace(shot.end === end ? / of end .*/ : '', '');
  const isOut = shot !== undefined && shot.leftOut !== null;
  return (
    <div className="shot-tools">
      <span className="faint">{shot === undefined ? 'no shot yet' : chosen === undefined ? 'last shot' : 'in hand'}</span>
      <button
        type="button"
        className="link"
        aria-keyshortcuts="L"
        disabled={shot === undefined}
        onClick={() => {
          if (shot === undefined) return;
          if (isOut) void leaveOut(bench, group, shot, null);
          else setEntry(group.id, { leaving: shot.id });
        }}
      >
        {isOut ? `Count it again: ${name}` : `Leave out ${name}`}
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
