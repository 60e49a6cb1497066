import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import { shapePreserving } from './cubic.ts';
import type { ReadCurve } from './readCurve.ts';
import type { ReadingFlag } from './flags.ts';
import type { ReadPoint } from './rows.ts';

/** What a bow keeps for itself when it is drawn and let down slowly. */
export interface DrawLoss {
  /** Area between the two curves [J]. */
  readonly energy: number;
  /** The same as a share of what went in over the same draws [-]. */
  readonly share: number;
}

/** What readings of letting down come to, with a flag for each that is odd. */
export interface LetDown {
  readonly loss: DrawLoss | null;
  readonly flags: readonly ReadingFlag[];
}

/** Rounding in a typed force is no contradiction. */
const HAIR = 1e-6;
/** A bow that gave back less than this share of what went in was not let down on the scale. */
const NOTHING_BACK = 0.01;

/**
 * The energy between drawing and letting down, over the draws that both were read at.
 *
 * @equation ∫(F_draw − F_let-down) du from the brace height, where both are nothing, to the nearer of the two last readings
 * @param points - let-down readings in order of their draws [list]
 * @param brace - the AMO draw at the brace height that both were read at [m]
 * @param drawn - the curve of the draw readings at that brace height [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the loss, null with fewer than two let-down readings, when no loss comes out or nothing comes back, and a flag for each reading that lies above the draw [record]
 * @validity drawn and let down slowly, without a rest between: creep at full draw counts as loss, and a loose is quicker than both
 * @source own derivation
 * @example lossBetween([], 0.26, { last: 0.75 }, defaultPreferences.units).loss // null
 */
export function lossBetween(points: readonly ReadPoint[], brace: number, drawn: ReadCurve, units: UnitChoice): LetDown {
  const weight = (si: number) => textQuantity(si, 'weight', units);
  const flags = points.flatMap((point) => {
    if (point.draw > drawn.last) return [];
    const drawing = drawn.value(point.draw);
    if (point.force <= drawing * (1 + HAIR)) return [];
    const sentence = `${weight(point.force)} while letting down is more than the ${weight(drawing)} of drawing at ${textQuantity(point.draw, 'length', units)}: read both again, slowly.`;
    return point.rows.map((index): ReadingFlag => ({ index, code: 'let-down above draw', sentence }));
  });
  if (points.length < 2) return { loss: null, flags };
  const down = shapePreserving([{ x: brace, y: 0 }, ...points.map(({ draw, force }) => ({ x: draw, y: force }))]);
  const to = Math.min(down.last, drawn.last);
  const stored = drawn.area(brace, to);
  const back = down.area(brace, to);
  const energy = stored - back;
  return { loss: energy >= 0 && back > NOTHING_BACK * stored ? { energy, share: energy / stored } : null, flags };
}
