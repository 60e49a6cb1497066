import type { Point } from './points.ts';

/** Where the next arrow strikes: a normal law, or Student's when the spread is itself only an estimate. Axes are those of the oval. */
export interface Scatter {
  /** Standard deviation along the first axis, then the second [m]. */
  readonly spread: readonly [number, number];
  /** Centre of the scatter from the centre of the circle, along the same axes [m]. */
  readonly offset: Point;
  /** ν of a spread that is an estimate; left out for a spread that is known [-]. */
  readonly degreesOfFreedom?: number;
}

/** A needle thinner than this share of the circle's radius counts as this thick: nobody reads a line finer. */
const FINEST = 1e-4;
/** Steps along the edge, as a share of the narrower spread: the error of the periodic rule falls below the last bits. */
const STEP = 0.6;
/** Student's law is less smooth the fewer its degrees of freedom: this times their root. */
const STEP_OF_AN_ESTIMATE = 0.25;
const FEWEST = 48;
/** A normal scatter never reaches this many spreads: less than 1e-18. */
const REACH = 9.2;

/**
 * Chance that an arrow of a round or oval scatter, centred or not, strikes inside a circle.
 *
 * @equation with u, v the place on the edge in units of the spreads from the scatter's centre and ρ² = u² + v²: P = (1/2π) ∮ (1 - S(ρ))/ρ² (u dv - v du), S = e^(-ρ²/2), or (1 + ρ²/ν)^(-ν/2) with ν degrees of freedom
 * @param radius - radius of the circle, ≥ 0 [m]
 * @param scatter - spreads along the axes, offset and ν [record]
 * @returns P [-]
 * @validity twelve digits from a round scatter to an oval of 100 to 1; spreads below 1e-4 of the radius count as that. Spreads not above 0, a radius below 0 or figures that are not finite throw RangeError
 * @source own derivation
 * @example chanceInside(5, { spread: [3, 2], offset: { x: 1, y: 2 } }) // 0.7507650998
 */
export function chanceInside(radius: number, scatter: Scatter): number {
  const { offset, degreesOfFreedom: nu = Infinity } = scatter;
  const [along, across] = scatter.spread;
  const usable = along > 0 && across > 0 && along + across < Infinity && radius >= 0 && radius < Infinity && nu > 0;
  if (!usable || !Number.isFinite(offset.x + offset.y))
    throw new RangeError('Spreads above 0 and a radius of 0 or more are needed.');
  if (radius === 0) return 0;
  const sx = Math.max(along, FINEST * radius);
  const sy = Math.max(across, FINEST * radius);
  const known = nu === Infinity;
  const off = Math.hypot(offset.x, offset.y);
  if (known && radius > off + REACH * Math.max(sx, sy)) return 1;
  if (known && radius < off - REACH * Math.max(sx, sy)) return 0;
  const step = Math.min(STEP, STEP_OF_AN_ESTIMATE * Math.sqrt(nu));
  const steps = Math.max(FEWEST, Math.ceil((2 * Math.PI * radius) / (step * Math.min(sx, sy))));
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const angle = (2 * Math.PI * (i + 0.5)) / steps;
    const dx = radius * Math.cos(angle);
    const dy = radius * Math.sin(angle);
    const u = (dx - offset.x) / sx;
    const v = (dy - offset.y) / sy;
    const square = u * u + v * v;
    const beyond = known ? -square / 2 : (-nu / 2) * Math.log1p(square / nu);
    const share = square > 0 ? -Math.expm1(beyond) / square : 0.5;
    sum += share * ((u * dx) / sy + (v * dy) / sx);
  }
  return Math.min(1, Math.max(0, sum / steps));
}
