import { weightedFit, type WeightedPoint } from '../../group/index.ts';
import type { TrialPlan } from '../../model/trial.ts';
import { errorsFound } from './foundBy.ts';

/** Found four times in five, as so many spreads at the farthest distance. */
export interface WalkBackFinds {
  /** Sideways drift at the farthest distance. */
  readonly slant: number;
  /** Greatest way off the straight between nearest and farthest. */
  readonly bow: number;
}

/**
 * The slant and the bend that a walk-back of this plan finds four times in five.
 *
 * @equation weights 1/z²; errors of b and c from (X' W X)⁻¹ with one arrow's spread over its distance as unit; times errorsFound(N - 2) and errorsFound(N - 3); slant b z, bow c (z_far - z_near)²/4, both over z_far
 * @param plan - distances and arrows [record]
 * @returns both in spreads at the farthest distance; null with fewer than three distances or four arrows [record]
 * @validity scatter that grows with the distance; independent arrows
 * @source draper-smith-1998
 * @example walkBackFinds({ distances: [10], ends: 1, arrows: 3, others: 0, steps: [] }) // null
 */
export function walkBackFinds(plan: Pick<TrialPlan, 'distances' | 'ends' | 'arrows'>): WalkBackFinds | null {
  const each = plan.ends * plan.arrows;
  const distances = [...new Set(plan.distances)].sort((a, b) => a - b);
  const count = each * distances.length;
  if (distances.length < 3 || count < 4) return null;
  const [near = 1, far = 1] = [distances[0], distances.at(-1)];
  const slant = unitError(distances, each, 1);
  const bend = unitError(distances, each, 2);
  if (slant === null || bend === null) return null;
  return {
    slant: errorsFound(count - 2) * slant,
    bow: (errorsFound(count - 3) * bend * (far - near) ** 2) / 4 / far,
  };
}

/** Standard error of the highest coefficient when a point of weight 1 has a variance of 1: the places decide it, whatever is measured there. */
function unitError(distances: readonly number[], each: number, degree: 1 | 2): number | null {
  const points = distances.flatMap((x, i): WeightedPoint[] =>
    Array.from({ length: each }, (_, k) => ({ x, y: ((i + k) % 2 === 0 ? 1 : -1) * x * (1 + i / 7), weight: x ** -2 })),
  );
  const fit = weightedFit(points, degree);
  if (!fit.ok || !(fit.value.variance > 0)) return null;
  return (fit.value.errors[degree] ?? 0) / Math.sqrt(fit.value.variance);
}
