import { ok, refuse, type Archer, type Bow, type Result, type Settings } from '../model/index.ts';
import { given } from '../model/given.ts';
import { inch } from '../units/exact.ts';
import type { Band } from '../model/band.ts';

/** How fast draw weight grows, as a share of the marked weight per inch of draw. */
export const weightPerInch = {
  /** Between 26 and 30 in: common practice, computed from a straight line that starts at the brace height. */
  inside: { from: 26 * inch, to: 30 * inch, low: 0.05, value: 0.0525, high: 0.055 },
  /** Beyond that a bow may stack or go soft, so each inch counts for more doubt: from memory. */
  outside: { low: 0.04, value: 0.0525, high: 0.07 },
  /** Past this the estimate says nothing worth having. */
  farthest: 10 * inch,
} as const;

/** What a marked weight may be out by on the scale, and a scale by itself, as a share of it: from memory. */
export const weightDoubt = { marked: 0.03, scale: 0.01 } as const;

/** A compound's limb bolts can be turned out from the marked peak weight by about this share: from memory. */
const COMPOUND_TURNED_OUT = 0.2;

/**
 * Draw weight at another draw than the one that the bow is marked at, with its band.
 *
 * @equation F = F_marked (1 + p Δ), p = 5 to 5.5 % per inch between 26 and 30 in, 4 to 7 % per inch outside
 * @param markedWeight - F_marked, weight marked on the bow [N]
 * @param markedDraw - AMO draw that the weight is marked at [m]
 * @param drawLength - AMO draw of the archer [m]
 * @returns F, value with low and high [N] [record]
 * @validity recurves and longbows; refused beyond 10 in from the marked draw and for figures outside the model's limits
 * @source common practice
 * @example weightAtDraw(160, 0.7112, 0.6858).value.value // 151.6
 */
export function weightAtDraw(markedWeight: number, markedDraw: number, drawLength: number): Result<Band> {
  const figures = given('the weight at this draw', { markedWeight, markedDraw, drawLength });
  if (!figures.ok) return figures;
  const { inside, outside, farthest } = weightPerInch;
  const total = Math.abs(drawLength - markedDraw);
  if (total > farthest)
    return refuse(
      'too far from the mark',
      'This draw is more than 10 in from the draw that the weight is marked at. Weigh the bow at full draw with a scale.',
      'weightOnFingers',
    );
  const shorter = Math.min(drawLength, markedDraw);
  const longer = Math.max(drawLength, markedDraw);
  const within = Math.max(0, Math.min(longer, inside.to) - Math.max(shorter, inside.from)) / inch;
  const beyond = total / inch - within;
  const change = (end: 'low' | 'value' | 'high') => inside[end] * within + outside[end] * beyond;
  const grows = drawLength >= markedDraw;
  return ok({
    value: markedWeight * (1 + (grows ? change('value') : -change('value'))),
    low: markedWeight * (1 + (grows ? change('low') : -change('high'))),
    high: markedWeight * (1 + (grows ? change('high') : -change('low'))),
  });
}

export interface DrawWeight extends Band {
  readonly from: 'on the fingers' | 'marked weight';
}

const estimated = (band: Band): DrawWeight => ({
  value: band.value,
  low: band.low * (1 - weightDoubt.marked),
  high: band.high * (1 + weightDoubt.marked),
  from: 'marked weight',
});

/**
 * Draw weight of this bow on this archer's fingers: the scale's reading when there is one, else an estimate from the marked weight.
 *
 * @equation F = F_scale (1 ± 1 %), or weightAtDraw with another ± 3 % for the mark itself
 * @param bow - bowKind, markedWeight [N] and markedDraw [m] [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N] [record]
 * @returns F, value with low and high [N], and where it is from [record]
 * @validity a compound counts at its marked peak, with 20 % less as its low end, unless a reading is higher: what it holds at full draw is far less than what drives the arrow; the refusal names what is missing
 * @source common practice
 * @example drawWeight(exampleBundle.bow, exampleBundle.archer, { weightOnFingers: 150 }).value.value // 150
 */
export function drawWeight(
  bow: Pick<Bow, 'bowKind' | 'markedWeight' | 'markedDraw'>,
  archer: Pick<Archer, 'drawLength'>,
  settings: Pick<Settings, 'weightOnFingers'>,
): Result<DrawWeight> {
  const { weightOnFingers } = settings;
  const held = bow.bowKind === 'compound' && bow.markedWeight !== null && bow.markedWeight > (weightOnFingers ?? 0);
  if (weightOnFingers !== null && !held) {
    const read = given('the draw weight', { weightOnFingers });
    if (!read.ok) return read;
    const value = read.value.weightOnFingers;
    return ok({ value, low: value * (1 - weightDoubt.scale), high: value * (1 + weightDoubt.scale), from: 'on the fingers' });
  }
  if (bow.markedWeight === null)
    return refuse(
      'missing',
      'The draw weight is not known. Weigh the bow at full draw with a scale, or enter its marked weight.',
      'weightOnFingers',
    );
  if (bow.bowKind === 'compound') {
    const marked = given('the draw weight', { markedWeight: bow.markedWeight });
    if (!marked.ok) return marked;
    const value = marked.value.markedWeight;
    return ok({ value, low: value * (1 - COMPOUND_TURNED_OUT), high: value, from: 'marked weight' });
  }
  const figures = given('the weight on the fingers', { drawLength: archer.drawLength });
  if (!figures.ok) return figures;
  const band = weightAtDraw(bow.markedWeight, bow.markedDraw, figures.value.drawLength);
  return band.ok ? ok(estimated(band.value)) : band;
}
