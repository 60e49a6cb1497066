import { ok, refuse, type Archer, type Bow, type Result, type Settings } from '../model/index.ts';
import { given } from '../model/given.ts';
import { inch } from '../units/exact.ts';
import { braceHeightRange } from './braceHeight.ts';

/** AMO/ATA draw length is the draw to the pivot point plus this. */
export const AMO_ADDS = 1.75 * inch;

/** A shorter stroke than this is a slip of the pen, not a bow. */
const LEAST_STROKE = 4 * inch;

/**
 * Power stroke: how far the string drives the arrow, from full draw to the brace height.
 *
 * @equation d = D_AMO − 1.75 in − B
 * @param drawLength - D_AMO, AMO draw length [m]
 * @param braceHeight - B [m]
 * @returns d, power stroke [m] [record]
 * @validity refused for figures outside the model's limits and when less than 4 in of stroke would be left
 * @source astm-f1880
 * @example powerStroke(0.7112, 0.2159).value // 0.45085
 */
export function powerStroke(drawLength: number, braceHeight: number): Result<number> {
  const figures = given('the power stroke', { drawLength, braceHeight });
  if (!figures.ok) return figures;
  const stroke = drawLength - AMO_ADDS - braceHeight;
  if (stroke < LEAST_STROKE)
    return refuse('no stroke', 'This draw and this brace height leave no power stroke. Measure both again.', 'braceHeight');
  return ok(stroke);
}

export interface Stroke {
  readonly stroke: number;
  readonly braceHeight: number;
  readonly braceFrom: 'measured' | 'middle of its range';
}

/**
 * Power stroke of this archer with this bow, at the measured brace height or, without one, the one it was read at on the scale, else the middle of its range.
 *
 * @equation d = D_AMO − 1.75 in − B
 * @param bow - bowKind, length, braceLow, braceHigh and forceDrawBrace [m] [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - braceHeight [m] [record]
 * @returns stroke [m], the brace height it rests on [m] and where that is from [record]
 * @validity the refusal names what is missing
 * @source astm-f1880
 * @example strokeOf(exampleBundle.bow, { drawLength: 0.7112 }, { braceHeight: 0.2159 }).value.stroke // 0.45085
 */
export function strokeOf(
  bow: Pick<Bow, 'bowKind' | 'length' | 'braceLow' | 'braceHigh' | 'forceDrawBrace'>,
  archer: Pick<Archer, 'drawLength'>,
  settings: Pick<Settings, 'braceHeight'>,
): Result<Stroke> {
  const range = braceHeightRange(bow);
  const measured = settings.braceHeight ?? bow.forceDrawBrace;
  const braceHeight = measured ?? (range === null ? null : (range.low + range.high) / 2);
  const figures = given('the power stroke', { drawLength: archer.drawLength, braceHeight });
  if (!figures.ok) return figures;
  const stroke = powerStroke(figures.value.drawLength, figures.value.braceHeight);
  if (!stroke.ok) return stroke;
  return ok({
    stroke: stroke.value,
    braceHeight: figures.value.braceHeight,
    braceFrom: measured === null ? 'middle of its range' : 'measured',
  });
}
