import { scaleLinear } from 'd3';
import type { DrawnGroup } from '../face/marks.ts';
import type { FaceView } from '../face/geometry.ts';
import { counted } from '../../../core/model/group.ts';
import { signed } from '../signed.ts';

interface AxisMarks {
  /** One row a group: each shot a tick, the centre with its 95 % interval. Along the axis, px from its start. */
  readonly rows: readonly {
    readonly name: string;
    readonly ticks: readonly number[];
    readonly centre: number | null;
    readonly from: number;
    readonly to: number;
  }[];
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** More ticks than this are a grey bar, not a reading [count]. */
const MOST_TICKS = 200;

/** One axis of the face on its own: the eye reads sideways and height apart, as the tuning does. */
export function axisMarks(
  view: FaceView,
  groups: readonly DrawnGroup[],
  axis: 'x' | 'y',
  unit: { perMetre: number; name: string },
): AxisMarks {
  const middle = view.middle[axis];
  const reach: [number, number] = axis === 'x' ? [0, view.size] : [view.size, 0];
  const position = scaleLinear([middle - view.half, middle + view.half], reach);
  const inUnit = scaleLinear([(middle - view.half) * unit.perMetre, (middle + view.half) * unit.perMetre], reach);
  const values = inUnit.ticks(5);
  return {
    rows: groups.map((group) => {
      const measures = group.measures;
      const half = measures === null ? 0 : measures.axisHalf[axis];
      return {
        name: group.name,
        ticks: group.shots.length > MOST_TICKS ? [] : counted(group).map((shot) => position(shot[axis])),
        centre: measures === null ? null : position(measures.centre[axis]),
        from: measures === null ? 0 : position(measures.centre[axis] - half),
        to: measures === null ? 0 : position(measures.centre[axis] + half),
      };
    }),
    ticks: values.map((value, i) => ({
      at: inUnit(value),
      text: `${signed(value)}${i === values.length - 1 ? ` ${unit.name}` : ''}`,
    })),
  };
}
