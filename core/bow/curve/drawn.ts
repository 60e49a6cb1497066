import { ok, refuse, type Bundle, type Result } from '../../model/index.ts';
import type { Band } from '../../model/band.ts';
import { given } from '../../model/given.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { kindFigures } from '../kinds.ts';
import { AMO_ADDS, powerStroke } from '../stroke.ts';
import { drawWeight, weightDoubt } from '../weight.ts';
import { curveOfKind } from './kindCurve.ts';
import { lossBetween, type LetDown } from './letDown.ts';
import { bracesOf, curveOfReadings, NO_FORCE, type Braces, type OfReadings } from './ofReadings.ts';
import type { Curve } from './readCurve.ts';
import { pointsRead } from './rows.ts';

export type ForceInput = Pick<Bundle, 'bow' | 'archer' | 'setup'>;

/** A force-draw curve at an archer's draw, before anything is said of it. Draws are AMO draws. */
export interface Drawn {
  readonly from: 'readings' | 'weight on the fingers' | 'marked weight';
  readonly braces: Braces;
  /** AMO draw of this archer [m]. */
  readonly full: number;
  readonly stroke: number;
  /** What the readings gave; null where the curve is the kind's. */
  readonly read: OfReadings | null;
  readonly curve: Curve;
  /** At full draw, with what a scale or a mark may be out by [N]. */
  readonly weight: Band;
  /** Stored from the brace height to full draw, with the same doubt [J]. */
  readonly energy: Band;
}

/**
 * The force-draw curve of this bow at this archer's draw: what speeds and strokes want of forceDrawOf.
 *
 * @equation as forceDrawOf
 * @param input - bow, archer and setup [record]
 * @returns the curve with its weight [N] and its energy [J] [record]
 * @validity as forceDrawOf
 * @source own derivation
 * @example drawnOf(exampleBundle).value.from // "weight on the fingers"
 */
export function drawnOf(input: ForceInput): Result<Drawn> {
  const { bow, archer, setup } = input;
  const braces = bracesOf(bow, setup.settings);
  const figures = given('the force-draw curve', { drawLength: archer.drawLength, braceHeight: braces?.now ?? null });
  if (!figures.ok) return figures;
  const full = figures.value.drawLength;
  const stroke = powerStroke(full, figures.value.braceHeight);
  if (!stroke.ok || braces === null) return stroke.ok ? refuse('missing', 'Enter a brace height.', 'braceHeight') : stroke;
  for (const { draw, force } of bow.forceDraw) {
    const reading = given('the force-draw curve', { readingDraw: draw, readingForce: force });
    if (!reading.ok) return reading;
  }
  const read = curveOfReadings(bow, setup.settings, braces, full);
  const found = read === null ? expected(input, braces, full) : ok({ from: 'readings' as const, curve: read.curve });
  if (!found.ok) return found;
  const { from, curve } = found.value;
  const doubt = from === 'readings' ? weightDoubt.scale : 0;
  const doubted = ({ value, low, high }: Band): Band => ({ value, low: low * (1 - doubt), high: high * (1 + doubt) });
  const weight = doubted(curve.force(full));
  const energy = doubted(curve.energy);
  if (!(weight.value >= NO_FORCE && energy.value >= NO_FORCE))
    return refuse('no force', 'These readings leave no force at full draw. Read the bow on the scale again.', 'forceDraw');
  return ok({ from, braces, full, stroke: stroke.value, read, curve, weight, energy });
}

/** Without a usable reading: what the kind lets expect of the weight. */
function expected({ bow, archer, setup }: ForceInput, braces: Braces, full: number): Result<Pick<Drawn, 'from' | 'curve'>> {
  const kind = kindFigures[bow.bowKind];
  if (kind === null)
    return refuse(
      'compound',
      'A compound\u2019s curve follows from its cams. Read it on a scale at three draws or more, up to full draw.',
      'forceDraw',
    );
  const weight = drawWeight(bow, archer, setup.settings);
  if (!weight.ok) return weight;
  const curve = curveOfKind(kind, weight.value, { brace: braces.now + AMO_ADDS, full, shift: 0 });
  return ok({ from: weight.value.from === 'marked weight' ? 'marked weight' : 'weight on the fingers', curve });
}

/**
 * What a bow that was let down on the scale keeps for itself, by a curve that is known already.
 *
 * @equation as lossBetween
 * @param input - bow, archer and setup [record]
 * @param drawn - drawnOf the same [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns the loss and the flags of lossBetween; null without readings of letting down, or of several draws [record]
 * @validity as lossBetween
 * @source own derivation
 * @example letDownOf(exampleBundle, drawnOf(exampleBundle).value, defaultPreferences.units) // null
 */
export function letDownOf({ bow }: ForceInput, { braces, read }: Drawn, units: UnitChoice): LetDown | null {
  if (read?.asRead == null) return null;
  const brace = braces.read + AMO_ADDS;
  const { points } = pointsRead(bow.forceDraw, 'let-down', brace);
  return points.length === 0 ? null : lossBetween(points, brace, read.asRead(), units);
}
