import type { Bundle } from '../../../core/model/bundle.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { OneGroup } from './derive.ts';
import './entry/entry.css';
import { EndLine } from './entry/EndLine.tsx';
import { FrameButton } from './entry/FrameButton.tsx';
import { ShotTools } from './entry/ShotTools.tsx';
import { ShotsButton } from './entry/ShotsButton.tsx';
import { TypedShot } from './entry/TypedShot.tsx';
import type { Frame } from './entry/useFrame.ts';
import { FromPhoto } from './photo/FromPhoto.tsx';
import { turnTo } from './store.ts';

interface Props {
  bundle: Bundle;
  first: OneGroup;
  second: OneGroup | null;
  entering: ShotGroup;
  frame: Frame;
}

/** Above the face: which group and which end take the next shot, how much of the face is seen, and a field for those who read the places off a rule. */
export function FaceTools({ bundle, first, second, entering, frame }: Props) {
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
      <EndLine entering={entering} />
      <ShotTools group={entering}>
        <FrameButton frame={frame} />
        <ShotsButton entering={entering} />
        <FromPhoto group={entering} />
      </ShotTools>
    </div>
  );
}
