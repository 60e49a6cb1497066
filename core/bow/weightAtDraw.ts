import { ok, refuse, type Result } from '../model/index.ts';
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

/**
 * A draw weight known at one draw, carried to another.
 *
 * @equation F = F₀ (1 + p Δ), p = 5 to 5.5 % per inch between 26 and 30 in, 4 to 7 % per inch outside
 * @param weight - F₀, the weight at the draw where it is known [N]
 * @param from - AMO draw where it is known [m]
 * @param to - AMO draw that it is wanted at [m]
 * @returns F, value with low and high [N]; null more than 10 in off [record]
 * @validity positive, finite figures, which the callers see to; recurves and longbows
 * @source common practice
 * @example carriedWeight(100, 0.7112, 0.6858).value // 94.75
 */
export function carriedWeight(weight: number, from: number, to: number): Band | null {
  const { inside, outside, farthest } = weightPerInch;
  const total = Math.abs(to - from);
  if (total > farthest) return null;
  const shorter = Math.min(to, from);
  const longer = Math.max(to, from);
  const within = Math.max(0, Math.min(longer, inside.to) - Math.max(shorter, inside.from)) / inch;
  const beyond = total / inch - within;
  const change = (end: 'low' | 'value' | 'high') => inside[end] * within + outside[end] * beyond;
  const grows = to >= from;
  return {
    value: weight * (1 + (grows ? change('value') : -change('value'))),
    low: weight * (1 + (grows ? change('low') : -change('high'))),
    high: weight * (1 + (grows ? change('high') : -change('low'))),
  };
}

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
  const band = carriedWeight(markedWeight, markedDraw, drawLength);
  if (band === null)
    return refuse(
      'too far from the mark',
      'This draw is more than 10 in from the draw that the weight is marked at. Weigh the bow at full draw with a scale.',
      'weightOnFingers',
    );
  return ok(band);
}
