import type { Bow, Settings } from '../../model/index.ts';
import { inch } from '../../units/exact.ts';
import { braceHeightRange } from '../braceHeight.ts';
import { kindFigures } from '../kinds.ts';
import { AMO_ADDS } from '../stroke.ts';
import { curveThroughOne } from './kindCurve.ts';
import { readCurve, type Curve, type Place, type ReadCurve } from './readCurve.ts';
import { pointsRead, type ReadPoint } from './rows.ts';

/** What the readings off the scale rest on. */
export type ReadBow = Pick<Bow, 'bowKind' | 'length' | 'braceLow' | 'braceHigh' | 'forceDraw' | 'forceDrawBrace'>;
export type ReadSettings = Pick<Settings, 'braceHeight' | 'weightOnFingers' | 'weightDraw'>;

/** Where the string stands now and stood while the bow was read, from the pivot [m]; null when neither is on record and the kind has no range. */
export interface Braces {
  readonly now: number;
  readonly read: number;
  readonly from: 'measured' | 'middle of its range';
}

/** Less than this at full draw is no bow's weight [N], and less energy than this no bow's [J]. */
export const NO_FORCE = 0.1;

/** Nearer than this the brace height has not been altered [m]. */
const SAME_BRACE = 0.001;
/** Farther than this share of the stroke the readings are of another bow. */
const MOST_SHIFT = 0.25;
const AT_FULL = 0.25 * inch;

/**
 * The brace height now and the one that the force-draw readings were taken at.
 *
 * @equation read: as noted with the readings, else as it is set, else the middle of its range; now: as it is set, else as read
 * @param bow - bowKind, length, braceLow, braceHigh and forceDrawBrace [m] [record]
 * @param settings - braceHeight [m] [record]
 * @returns both, and where the one of now is from; null for a compound without any [m] [record]
 * @validity less than a millimetre apart they are the same
 * @source own derivation
 * @example bracesOf({ ...exampleBundle.bow, forceDrawBrace: 0.2 }, { braceHeight: 0.21 }).read // 0.2
 */
export function bracesOf(bow: Omit<ReadBow, 'forceDraw'>, settings: Pick<Settings, 'braceHeight'>): Braces | null {
  const range = braceHeightRange(bow);
  const known = settings.braceHeight ?? bow.forceDrawBrace;
  const now = known ?? (range === null ? null : (range.low + range.high) / 2);
  if (now === null) return null;
  const read = bow.forceDrawBrace ?? now;
  return {
    now,
    read: Math.abs(read - now) < SAME_BRACE ? now : read,
    from: known === null ? 'middle of its range' : 'measured',
  };
}

export interface OfReadings {
  readonly curve: Curve;
  /** The same before the brace height was altered, for readings of letting down; null with a single reading. */
  readonly asRead: (() => ReadCurve) | null;
  readonly points: readonly ReadPoint[];
  readonly leftOut: readonly number[];
  /** The farthest draw that a scale was read at [m]. */
  readonly last: number;
  /** Whether that reaches this draw. */
  readonly reaches: boolean;
  readonly endsOnFingers: boolean;
}

/**
 * The curve that the readings of a bow off the scale give at a draw.
 *
 * @equation as readCurve; as curveThroughOne where a single draw was read; a weight on the fingers read farther out ends the curve
 * @param bow - the readings, and what its brace height follows from [record]
 * @param settings - braceHeight [m], weightOnFingers [N] and weightDraw [m] [record]
 * @param braces - the brace height now and then [m] [record]
 * @param full - AMO draw of the archer [m]
 * @returns the curve with the points it goes through; null without a usable reading, when the brace height has moved by a quarter of the stroke, when a compound was read at fewer than three draws or not to this draw, and more than 10 in past the last reading [record]
 * @validity finite readings inside the model's limits, which the callers see to
 * @source own derivation
 * @example curveOfReadings(exampleBundle.bow, exampleBundle.setup.settings, { now: 0.2, read: 0.2, from: 'measured' }, 0.7) // null
 */
export function curveOfReadings(bow: ReadBow, settings: ReadSettings, braces: Braces, full: number): OfReadings | null {
  const place: Place = { brace: braces.now + AMO_ADDS, full, shift: braces.now - braces.read };
  const before: Place = { brace: braces.read + AMO_ADDS, full, shift: 0 };
  if (Math.abs(place.shift) > MOST_SHIFT * (full - Math.max(place.brace, before.brace))) return null;
  const compound = bow.bowKind === 'compound';
  const { points, leftOut } = pointsRead(bow.forceDraw, 'draw', before.brace);
  if (points.length < (compound ? 3 : 1)) return null;
  const farther = compound ? null : onFingers(settings, points);
  const all = farther === null ? points : [...points, farther];
  const last = all.at(-1)?.draw ?? 0;
  const reaches = last >= full - AT_FULL;
  const kind = kindFigures[bow.bowKind];
  if (full - last > MOST_BEYOND || (compound && !reaches)) return null;
  const [single] = all;
  if (all.length === 1 && single !== undefined) {
    const curve = kind === null ? null : curveThroughOne(kind, single, place);
    return curve === null ? null : { curve, asRead: null, points, leftOut, last, reaches, endsOnFingers: false };
  }
  const curve = readCurve(all, place, compound);
  // Whoever wants the weight alone has no use for it.
  const asRead = () => (place.shift === 0 ? curve : readCurve(all, before, compound));
  return { curve, asRead, points, leftOut, last, reaches, endsOnFingers: farther !== null };
}

/** Past this an extrapolation says nothing worth having [m]. */
const MOST_BEYOND = 10 * inch;

/** A weight on the fingers, read farther out than the table goes, is one more reading off a scale. */
function onFingers({ weightOnFingers, weightDraw }: ReadSettings, points: readonly ReadPoint[]): ReadPoint | null {
  const last = points.at(-1);
  if (weightOnFingers === null || weightDraw === null || last === undefined) return null;
  if (weightDraw < last.draw + AT_FULL || weightOnFingers < last.most) return null;
  return { draw: weightDraw, force: weightOnFingers, least: weightOnFingers, most: weightOnFingers, rows: [] };
}
