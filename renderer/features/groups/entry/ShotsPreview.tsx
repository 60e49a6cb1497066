import { memo, useMemo } from 'react';
import { groupMeasures, type Face } from '../../../../core/group/index.ts';
import { counted, type Shot } from '../../../../core/model/group.ts';
import { wholeCount } from '../../../../core/units/index.ts';
import { FacePlot } from '../../../plots/face/FacePlot.tsx';
import { wholeFace } from '../../../plots/face/geometry.ts';
import type { RowShot } from './shotRows.ts';

const SIZE = 280;
/** A usual outdoor shaft, drawn no smaller than can be seen. */
const SHAFT = 0.00275;

/** Where the shots would be, before they are kept: a wrong unit, corner or direction is seen at once. */
export const ShotsPreview = memo(function ShotsPreview({
  face,
  shots,
  name,
}: {
  face: Face;
  shots: readonly RowShot[];
  name: string;
}) {
  const group = useMemo(() => {
    const placed = shots.map((shot, i): Shot => ({ ...shot, id: i }));
    const measured = groupMeasures(counted({ shots: placed }));
    return { name, shots: placed, measures: measured.ok ? measured.value : null };
  }, [shots, name]);
  const view = useMemo(() => ({ ...wholeFace(face.rings[0]?.radius ?? 0.2, group.shots), size: SIZE }), [face, group]);
  const groups = useMemo(() => [group], [group]);
  const count = shots.length === 1 ? '1 shot' : `${wholeCount(shots.length)} shots`;
  return (
    <figure className="shots-preview">
      <svg width={SIZE} height={SIZE} role="img" aria-label={`${count} on the ${face.name} face, as they would be kept.`}>
        <FacePlot face={face} view={view} groups={groups} shaftRadius={SHAFT} showShift={false} />
      </svg>
      <figcaption className="note faint">As they would be kept, on the {face.name} face.</figcaption>
    </figure>
  );
});
