import type { ShotGroup } from '../../../../core/model/group.ts';
import { useBenchApi } from '../../../state/useBench.ts';
import { leaveOut } from '../edits.ts';
import { shotName } from './ends.ts';
import { focusEntry } from './focusEntry.ts';

/** As many as are read through; the table of shots has them all. */
const MOST_NAMED = 12;

/** The shots of a group that somebody left out, each with its reason and the way back. */
export function LeftOut({ group }: { group: ShotGroup }) {
  const bench = useBenchApi();
  const out = group.shots.filter(({ leftOut: reason }) => reason !== null);
  if (out.length === 0) return null;
  return (
    <>
      <p className="note">Left out of the {group.fletching} group’s figures:</p>
      <ul className="left-out">
        {out.slice(0, MOST_NAMED).map((shot) => (
          <li key={shot.id}>
            {shotName(shot, group.shots)}: “{shot.leftOut}”.{' '}
            <button
              type="button"
              className="link"
              onClick={() => void leaveOut(bench, group, shot, null).then(() => focusEntry('face'))}
            >
              Count it again<span className="heard">: {shotName(shot, group.shots)}</span>
            </button>
          </li>
        ))}
        {out.length > MOST_NAMED && <li>{out.length - MOST_NAMED} more, in the table of shots.</li>}
      </ul>
    </>
  );
}
