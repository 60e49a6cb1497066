import { scaleLinear } from 'd3';
import type { DrawnGroup } from '../face/marks.ts';
import type { FaceView } from '../face/geometry.ts';
import { counted } from '../../../core/model/group.ts';
import { signed } from '../signed.ts';
import { textWidth } from '../textWidth.ts';

interface AxisMarks {
  /** One row a group: each shot a tick, the centre with its 95 % interval. Along the axis, px from its start. */
  readonly rows: readonly {
    readonly name: string;
    readonly ticks: readonly number[];
    readonly centre: number | null;
    readonly from: number;
    readonly to: number;
  }[];
  /** Null where the next one's text has taken the room: the last is always written, since it carries the unit. */
  readonly ticks: readonly { readonly at: number; readonly label: { readonly x: number; readonly text: string } | null }[];
}

/** Air between the texts of two ticks, and the size they are written in [px]. */
const AIR = 7;
const SIZE = 12;

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
    ticks: labelled(
      values.map((value, i) => ({
        at: inUnit(value),
        text: `${signed(value)}${i === values.length - 1 ? ` ${unit.name}` : ''}`,
      })),
      view.size,
    ),
  };
}

/** Texts centred under their ticks, drawn in from the ends of the axis; what would come near the next one is left out. */
function labelled(ticks: readonly { at: number; text: string }[], size: number): AxisMarks['ticks'] {
  const placed: { at: number; label: { x: number; text: string } | null }[] = [];
  let next = Infinity;
  for (const { at, text } of ticks.toReversed()) {
    const half = textWidth(text, SIZE, 'text') / 2;
    const x = Math.max(half, Math.min(size - half, at));
    const free = x + half + AIR <= next;
    placed.unshift({ at, label: free ? { x, text } : null });
    if (free) next = x - half;
  }
  return placed;
}
