import type { Bundle } from '../../../core/model/bundle.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import { useBenchApi } from '../../state/useBench.ts';
import type { OneGroup } from './derive.ts';
import { takeBack } from './edits.ts';
import './entry/entry.css';
import { EndLine } from './entry/EndLine.tsx';
import { LeaveOut } from './entry/LeaveOut.tsx';
import { setEntry, useEntry } from './entry/store.ts';
import { ShotsButton } from './entry/ShotsButton.tsx';
import { TypedShot } from './entry/TypedShot.tsx';
import { FromPhoto } from './photo/FromPhoto.tsx';
import { turnTo } from './store.ts';

interface Props {
  bundle: Bundle;
  first: OneGroup;
  second: OneGroup | null;
  entering: ShotGroup;
  whole: boolean;
}

/** Above the face: which group and which end take the next shot, how much of the face is seen, and a field for those who read the places off a rule. */
export function FaceTools({ bundle, first, second, entering, whole }: Props) {
  const bench = useBenchApi();
  const { shotInHand } = useEntry(entering.id);
  const shot = entering.shots.find(({ id }) => id === shotInHand) ?? entering.shots.at(-1);
  const name = (one: OneGroup, place: string) =>
    second !== null && first.group.fletching === second.group.fletching ? place : one.group.fletching;
  return (
    <div className="face-tools">
      {second !== null && (
        <fieldset>
          <legend>shots go to</legend>
          {[first, second].map((one, i) => (
            <label key={one.group.id}>
              <input
                type="radio"
                name="entering"
                checked={one.group.id === entering.id}
                onChange={() => turnTo(bundle.setup.id, { enteringId: one.group.id })}
              />
              {name(one, i === 0 ? 'first' : 'second')}
            </label>
          ))}
        </fieldset>
      )}
      <TypedShot entering={entering} />
      <button
        type="button"
        className="link"
        disabled={entering.shots.length === 0}
        onClick={() => void takeBack(bench, entering.id, null)}
      >
        Take back
      </button>
      <button
        type="button"
        className="link"
        aria-keyshortcuts="L"
        disabled={shot === undefined}
        onClick={() => setEntry(entering.id, { leaving: shot?.id ?? null })}
      >
        Leave out
      </button>
      <EndLine entering={entering} />
      <button type="button" className="link" onClick={() => turnTo(bundle.setup.id, { whole: !whole })}>
        {whole ? 'Close in' : 'Whole face'}
      </button>
      <ShotsButton entering={entering} />
      <FromPhoto group={entering} />
      <LeaveOut group={entering} />
    </div>
  );
}
