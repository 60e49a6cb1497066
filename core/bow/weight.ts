import { ok, refuse, type Archer, type Bow, type Result, type Settings } from '../model/index.ts';
import { given } from '../model/given.ts';
import { inch } from '../units/exact.ts';
import type { Band } from '../model/band.ts';
import { bracesOf, curveOfReadings, NO_FORCE, type ReadBow } from './curve/ofReadings.ts';
import { powerStroke } from './stroke.ts';
import { carriedWeight, weightAtDraw, weightPerInch } from './weightAtDraw.ts';

/** What a marked weight may be out by on the scale, and a scale by itself, as a share of it: from memory. */
export const weightDoubt = { marked: 0.03, scale: 0.01 } as const;

/** A compound's limb bolts can be turned out from the marked peak weight by about this share: from memory. */
const COMPOUND_TURNED_OUT = 0.2;

/** A draw is measured to about this: nearer than it, a weight was read at this draw [m]. */
const SAME_DRAW = 0.25 * inch;
const ROUNDING = 1e-6;

export interface DrawWeight extends Band {
  /** A reading belongs to the draw it was taken at: at another one, or one that nobody noted, it is an estimate too. */
  readonly from: 'on the fingers' | 'read on the scale' | 'at another draw' | 'marked weight';
}

/** The records that a draw weight rests on. */
export type WeightBow = ReadBow & Pick<Bow, 'markedWeight' | 'markedDraw'>;
export type WeightArcher = Pick<Archer, 'drawLength'>;
export type WeightSettings = Pick<Settings, 'weightOnFingers' | 'weightDraw' | 'braceHeight'>;

const doubted = ({ value, low, high }: Band, doubt: number, from: DrawWeight['from']): DrawWeight => ({
  value,
  low: low * (1 - doubt),
  high: high * (1 + doubt),
  from,
});
const exactly = (value: number): Band => ({ value, low: value, high: value });

/**
 * Draw weight of this bow on this archer's fingers: the scale's reading when there is one, else an estimate from the marked weight.
 *
 * @equation F = F_scale (1 ± 1 %): on the fingers at this draw, else off the bow's force-draw readings at this draw; readings that end more than 1/4 in short are drawn on as forceDrawOf does; a weight on the fingers read more than 1/4 in from this draw is carried to it as weightAtDraw does, read at a draw that nobody noted ± another 5.5 %; without a reading weightAtDraw with another ± 3 % for the mark itself
 * @param bow - bowKind, markedWeight [N] and markedDraw [m], and the force-draw readings with what their brace height follows from [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N], weightDraw, the AMO draw it was read at [m], and braceHeight [m] [record]
 * @returns F, value with low and high [N], and where it is from [record]
 * @validity a compound counts at its marked peak, with 20 % less as its low end, unless a reading is higher: what it holds at full draw is far less than what drives the arrow; the refusal names what is missing
 * @source common practice
 * @example drawWeight(exampleBundle.bow, exampleBundle.archer, { weightOnFingers: 150, weightDraw: null, braceHeight: null }).value.value // 150
 */
export function drawWeight(bow: WeightBow, archer: WeightArcher, settings: WeightSettings): Result<DrawWeight> {
  const { weightOnFingers, weightDraw } = settings;
  if (bow.bowKind === 'compound') return peakWeight(bow, settings);
  const table = weightOnFingers !== null && atThisDraw(weightDraw, archer.drawLength) ? null : fromTable(bow, archer, settings);
  // A table that ends short of this draw gives way to a weight on the fingers, though nobody noted at which draw that was read.
  const governs = table?.from === 'read on the scale' || weightOnFingers === null || weightDraw !== null;
  if (table !== null && governs) return ok(table);
  if (weightOnFingers !== null) return fromReading(weightOnFingers, weightDraw, archer.drawLength, false);
  if (bow.markedWeight === null) return unknown;
  const figures = given('the weight on the fingers', { drawLength: archer.drawLength });
  if (!figures.ok) return figures;
  const band = weightAtDraw(bow.markedWeight, bow.markedDraw, figures.value.drawLength);
  return band.ok ? ok(doubted(band.value, weightDoubt.marked, 'marked weight')) : band;
}

/**
 * Whether a draw weight was read on a scale at the archer's own draw, on the fingers or off the bow's readings.
 *
 * @equation on the fingers, or read on the scale
 * @param from - where the weight is from [choice]
 * @returns true when it was read, false for an estimate [choice]
 * @validity any of the four
 * @source own derivation
 * @example isWeighed('read on the scale') // true
 */
export function isWeighed(from: DrawWeight['from']): boolean {
  return from === 'on the fingers' || from === 'read on the scale';
}

const unknown = refuse(
  'missing',
  'The draw weight is not known. Weigh the bow at full draw with a scale, or enter its marked weight.',
  'weightOnFingers',
);

const atThisDraw = (readAt: number | null, drawLength: number | null): boolean =>
  drawLength === null || (readAt !== null && Math.abs(readAt - drawLength) <= SAME_DRAW + ROUNDING);

/** What drives a compound's arrow is its peak: the highest reading, or the mark where no reading comes up to it. */
function peakWeight({ markedWeight, forceDraw }: WeightBow, { weightOnFingers }: WeightSettings): Result<DrawWeight> {
  const peak = forceDraw.reduce((most, { force, way }) => (way === 'draw' && force > most ? force : most), 0);
  const read = Math.max(peak, weightOnFingers ?? 0);
  if (markedWeight === null || markedWeight <= read || Number.isNaN(read)) {
    if (weightOnFingers === null && !(peak > 0)) return unknown;
    const here = fromReading(read, null, null, true);
    return here.ok && peak > (weightOnFingers ?? 0) ? ok({ ...here.value, from: 'read on the scale' }) : here;
  }
  const marked = given('the draw weight', { markedWeight });
  return marked.ok
    ? ok({ value: markedWeight, low: markedWeight * (1 - COMPOUND_TURNED_OUT), high: markedWeight, from: 'marked weight' })
    : marked;
}

/** Off the readings of the bow, at this draw; null where they do not tell. */
function fromTable(bow: WeightBow, { drawLength }: WeightArcher, settings: WeightSettings): DrawWeight | null {
  const braces = bow.forceDraw.length === 0 ? null : bracesOf(bow, settings);
  if (braces === null || drawLength === null || !powerStroke(drawLength, braces.now).ok) return null;
  const sound = ({ draw, force }: ReadBow['forceDraw'][number]) =>
    given('the draw weight', { readingDraw: draw, readingForce: force }).ok;
  const read = bow.forceDraw.every(sound) ? curveOfReadings(bow, settings, braces, drawLength) : null;
  const weight = read?.curve.force(drawLength);
  if (read === null || weight === undefined || !(weight.value >= NO_FORCE)) return null;
  const here = (read.points.at(-1)?.draw ?? 0) >= drawLength - SAME_DRAW - ROUNDING;
  return doubted(weight, weightDoubt.scale, here ? 'read on the scale' : 'at another draw');
}

function fromReading(
  weightOnFingers: number,
  readAt: number | null,
  drawLength: number | null,
  compound: boolean,
): Result<DrawWeight> {
  const read = given('the draw weight', { weightOnFingers });
  if (!read.ok) return read;
  const here = doubted(exactly(weightOnFingers), weightDoubt.scale, 'on the fingers');
  // A compound is read at its peak, whatever the draw; and with no draw on record there is none that the reading could differ from.
  if (compound || drawLength === null) return ok(here);
  if (readAt === null)
    return ok(doubted(exactly(weightOnFingers), weightDoubt.scale + weightPerInch.inside.high, 'at another draw'));
  const draws = [readAt, drawLength].map((length) => given('the draw weight', { drawLength: length }));
  const wrong = draws.find((draw) => !draw.ok);
  if (wrong !== undefined && !wrong.ok) return wrong;
  if (atThisDraw(readAt, drawLength)) return ok(here);
  const band = carriedWeight(weightOnFingers, readAt, drawLength);
  return band === null
    ? refuse(
        'too far from the reading',
        'The weight was read more than 10 in from this draw. Weigh the bow at full draw with a scale.',
        'weightOnFingers',
      )
    : ok(doubted(band, weightDoubt.scale, 'at another draw'));
}
