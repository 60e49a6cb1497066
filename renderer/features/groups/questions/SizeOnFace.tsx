import { useMemo } from 'react';
import { groupMeasures, type Face } from '../../../../core/group/index.ts';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { counted } from '../../../../core/model/group.ts';
import type { QuestionPlot } from '../../../../core/questions/index.ts';
import { FacePlot } from '../../../plots/face/FacePlot.tsx';
import { closeIn, type FaceView } from '../../../plots/face/geometry.ts';
import type { DrawnGroup } from '../../../plots/face/marks.ts';

interface Props {
  plot: Extract<QuestionPlot, { kind: 'face' }>;
  target: Face;
  group: ShotGroup;
  shaftRadius: number;
  width: number;
}

const MOST = 340;

/** The group by itself on the face, with the circles and the oval that say how big it is. */
export function SizeOnFace({ plot, target, group, shaftRadius, width }: Props) {
  const size = Math.min(MOST, width);
  const view: FaceView = useMemo(() => {
    const near = closeIn(group.shots, target.rings[0]?.radius ?? 0.2);
    const widest = plot.circles.reduce((most, { radius }) => Math.max(most, radius), 0);
    const reach = Math.max(Math.abs(plot.centre.x), Math.abs(plot.centre.y)) + widest;
    return { ...near, half: Math.max(near.half, reach * 1.06), size };
  }, [group.shots, target, plot, size]);
  const drawn: readonly DrawnGroup[] = useMemo(() => {
    const measured = groupMeasures(counted(group));
    return [
      {
        name: 'centre',
        shots: group.shots,
        measures: measured.ok ? measured.value : null,
        oval: plot.ellipse,
        circles: plot.circles,
      },
    ];
  }, [group, plot]);
  return (
    <svg className="size-on-face" width={size} height={size} role="img" aria-label={plot.sentence}>
      <FacePlot face={target} view={view} groups={drawn} shaftRadius={shaftRadius} showShift={false} />
    </svg>
  );
}
