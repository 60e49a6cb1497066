import type { Band } from '../../../core/model/band.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { label, type Label } from '../labels.ts';
import { textWidth } from '../textWidth.ts';

/** Pixels: the picture's height, what is kept free above and below, and from the butt to the dimension and to the interval. */
export const holdFrame = { height: 216, edge: 10, aside: 16, gap: 9 } as const;

/** A butt is at least this wide and high, and its middle is the face's [m]: World Archery rule book. */
const BUTT = 1.24;
/** Kept free around the lowest and the highest thing drawn [m]. */
const ROOM = 0.1;
/** A hold nearer to the centre than this is not dimensioned [px]. */
const LEAST_DIMENSION = 12;

interface HoldMarks {
  readonly width: number;
  /** Pixels per metre. */
  readonly scale: number;
  readonly centre: { readonly x: number; readonly y: number };
  readonly butt: { readonly x: number; readonly y: number; readonly side: number };
  readonly groundY: number;
  readonly tipY: number;
  /** From the centre to the tip; null when they are too near to dimension. */
  readonly dimension: { readonly x: number; readonly from: number; readonly to: number } | null;
  readonly interval: { readonly x: number; readonly low: number; readonly high: number };
  readonly labels: readonly Label[];
}

/** The butt from straight ahead, to scale both ways, with the place in its plane that the tip of the arrow covers. */
export function holdMarks(hold: Band, ground: number, width: number, units: UnitChoice): HoldMarks {
  const { height, edge, aside, gap } = holdFrame;
  const text = (end: number) => textQuantity(Math.abs(end), 'drop', units);
  const figure = text(hold.value);
  const straddles = hold.low < 0 && hold.high > 0;
  // From top to bottom, as they stand; with the centre between them each says its side.
  const ends = straddles ? [`${text(hold.high)} above`, `${text(hold.low)} below`] : [`${text(hold.high)} to`, text(hold.low)];
  const leftRoom = aside + gap + textWidth(figure, 16, 'strong');
  const rightRoom = aside + gap + Math.max(...ends.map((end) => textWidth(end, 13, 'note')));

  const highest = Math.max(BUTT / 2, hold.high) + ROOM;
  const lowest = Math.min(-ground, hold.low - ROOM) - ROOM / 2;
  const scale = Math.min((height - 2 * edge) / (highest - lowest), (width - leftRoom - rightRoom) / BUTT);
  const y = (metres: number) => edge + (highest - metres) * scale;
  const side = BUTT * scale;
  const x = Math.max(leftRoom + side / 2, Math.min(width - rightRoom - side / 2, width / 2));
  const centre = { x, y: y(0) };
  const tipY = y(hold.value);
  const intervalX = x + side / 2 + aside;
  const dimension = Math.abs(tipY - centre.y) < LEAST_DIMENSION ? null : { x: x - side / 2 - aside, from: centre.y, to: tipY };
  const base = Math.max(14, Math.min(height - 20, tipY - 4));
  return {
    width,
    scale,
    centre,
    butt: { x: x - side / 2, y: y(BUTT / 2), side },
    groundY: y(-ground),
    tipY,
    dimension,
    interval: { x: intervalX, low: y(hold.low), high: y(hold.high) },
    labels: [
      ...(dimension === null
        ? []
        : [label(figure, dimension.x - gap, (dimension.from + dimension.to) / 2 + 5.5, 'end', 'strong', 16)]),
      ...ends.map((end, i) => label(end, intervalX + gap, base + 16 * i, 'start', 'note', 13)),
    ],
  };
}
