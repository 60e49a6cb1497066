import type { Braced, DrawnTo } from './braced.ts';
import { emptyString, halfString } from './geometry.ts';
import type { LimbBow } from './limbBow.ts';

const STEP = 1e-6;
const MOST_ROUNDS = 16;

/**
 * The bow held at a draw by whatever force its hinge asks for.
 *
 * @equation M(θ) = k (s − s₀) × lever, by Newton's rule
 * @param bow - the bow as the model sees it [record]
 * @param braced - s₀ and k of the string that is on it [record]
 * @param moment - M(θ) of the hinge [N m] [function]
 * @param u - nock from the pivot [m]
 * @param near - a stand of the arm near by, to begin with [rad]
 * @returns θ [rad], F [N], T [N] and M [N m] [record]
 * @validity near a draw that the hinge was fitted to; figures that are no numbers are handed on, for the caller to refuse
 * @source own derivation
 * @example heldAt(exampleLimbBow, { slack: 0.791, spring: 126000 }, () => 50, 0.6, 1.1).moment // 50
 */
export function heldAt(
  bow: LimbBow,
  { slack, spring }: Pick<Braced, 'slack' | 'spring'>,
  moment: (theta: number) => number,
  u: number,
  near: number,
): DrawnTo {
  const string = emptyString();
  const excess = (at: number) => {
    halfString(bow, u, at, string);
    return moment(at) - spring * (string.length - slack) * string.lever;
  };
  let theta = near;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const found = excess(theta);
    const step = (found * STEP) / (excess(theta + STEP) - found);
    theta -= step;
    if (!(Math.abs(step) > 1e-11)) break;
  }
  halfString(bow, u, theta, string);
  const tension = spring * (string.length - slack);
  return { theta, force: 2 * tension * string.alongArrow, tension, moment: tension * string.lever };
}
