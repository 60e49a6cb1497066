import { ok, refuse, type Archer, type Bow, type Result, type Settings } from '../model/index.ts';
import { given } from '../model/given.ts';
import { inch } from '../units/exact.ts';
import type { Band } from '../model/band.ts';
import { carriedWeight, weightAtDraw, weightPerInch } from './weightAtDraw.ts';

/** What a marked weight may be out by on the scale, and a scale by itself, as a share of it: from memory. */
const weightDoubt = { marked: 0.03, scale: 0.01 } as const;

/** A compound's limb bolts can be turned out from the marked peak weight by about this share: from memory. */
const COMPOUND_TURNED_OUT = 0.2;

/** A draw is measured to about this: nearer than it, a weight was read at this draw [m]. */
const SAME_DRAW = 0.25 * inch;
const ROUNDING = 1e-6;

export interface DrawWeight extends Band {
  /** A reading belongs to the draw it was taken at: at another one, or one that nobody noted, it is an estimate too. */
  readonly from: 'on the fingers' | 'at another draw' | 'marked weight';
}

/** The records that a draw weight rests on. */
export type WeightBow = Pick<Bow, 'bowKind' | 'markedWeight' | 'markedDraw'>;
export type WeightArcher = Pick<Archer, 'drawLength'>;
export type WeightSettings = Pick<Settings, 'weightOnFingers' | 'weightDraw'>;

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
 * @equation F = F_scale (1 ± 1 %); read more than 1/4 in from this draw, carried to it as weightAtDraw does; read at a draw that nobody noted, ± another 5.5 %; without a reading weightAtDraw with another ± 3 % for the mark itself
 * @param bow - bowKind, markedWeight [N] and markedDraw [m] [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N] and weightDraw, the AMO draw it was read at [m] [record]
 * @returns F, value with low and high [N], and where it is from [record]
 * @validity a compound counts at its marked peak, with 20 % less as its low end, unless a reading is higher: what it holds at full draw is far less than what drives the arrow; the refusal names what is missing
 * @source common practice
 * @example drawWeight(exampleBundle.bow, exampleBundle.archer, { weightOnFingers: 150, weightDraw: null }).value.value // 150
 */
export function drawWeight(bow: WeightBow, archer: WeightArcher, settings: WeightSettings): Result<DrawWeight> {
  const { weightOnFingers } = settings;
  const compound = bow.bowKind === 'compound';
  const held = compound && bow.markedWeight !== null && bow.markedWeight > (weightOnFingers ?? 0);
  if (weightOnFingers !== null && !held) return fromReading(weightOnFingers, settings.weightDraw, archer.drawLength, compound);
  if (bow.markedWeight === null)
    return refuse(
      'missing',
      'The draw weight is not known. Weigh the bow at full draw with a scale, or enter its marked weight.',
      'weightOnFingers',
    );
  if (compound) {
    const marked = given('the draw weight', { markedWeight: bow.markedWeight });
    if (!marked.ok) return marked;
    const value = marked.value.markedWeight;
    return ok({ value, low: value * (1 - COMPOUND_TURNED_OUT), high: value, from: 'marked weight' });
  }
  const figures = given('the weight on the fingers', { drawLength: archer.drawLength });
  if (!figures.ok) return figures;
  const band = weightAtDraw(bow.markedWeight, bow.markedDraw, figures.value.drawLength);
  return band.ok ? ok(doubted(band.value, weightDoubt.marked, 'marked weight')) : band;
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
  if (Math.abs(readAt - drawLength) <= SAME_DRAW + ROUNDING) return ok(here);
  const band = carriedWeight(weightOnFingers, readAt, drawLength);
  return band === null
    ? refuse(
        'too far from the reading',
        'The weight was read more than 10 in from this draw. Weigh the bow at full draw with a scale.',
        'weightOnFingers',
      )
    : ok(doubted(band, weightDoubt.scale, 'at another draw'));
}
