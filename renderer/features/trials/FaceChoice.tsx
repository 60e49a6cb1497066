import { useId } from 'react';
import { FaceId, type ShotGroup } from '../../../core/model/group.ts';
import { useBenchApi } from '../../state/useBench.ts';
import { setContext } from '../groups/edits.ts';
import { faceOptions } from '../groups/NewGroup.tsx';

/** On which face this group is shot. */
export function FaceChoice({ group }: { group: ShotGroup }) {
  const bench = useBenchApi();
  const id = useId();
  return (
    <span className="face-choice">
      <label htmlFor={id} className="name">
        face
      </label>
      <select
        id={id}
        className="choice"
        value={group.context.face}
        onChange={({ currentTarget: { value } }) => {
          const face = FaceId.safeParse(value);
          if (face.success) void setContext(bench, group.id, 'Face of a group', { face: face.data });
        }}
      >
        {faceOptions.map(({ value, text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </span>
  );
}
