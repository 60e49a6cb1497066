import { ok, refuse, type Result } from '../../model/problem.ts';
import { armFor, emptyString, halfString } from './geometry.ts';
import { figureFault, type LimbBow } from './limbBow.ts';

/** The bow at rest with its string on. */
export interface Braced {
  /** θ_B [rad]. */
  readonly theta: number;
  /** T, the tension of the string [N]. */
  readonly tension: number;
  /** s₀, half the string with nothing pulling [m]. */
  readonly slack: number;
  /** k = EA/s₀, the spring that half a string is [N/m]. */
  readonly spring: number;
}

const cannotBe = (what: string) => refuse('cannot be', `${what} Measure bow length, brace height and draw again.`);

/** Read from the curve itself; exact for a parabola, and half a hundredth of the stroke is far finer than a scale's readings stand. */
function slopeAtBrace({ force, brace, draw }: LimbBow): number {
  const h = (draw - brace) / 200;
  return (4 * force(brace + h) - force(brace + 2 * h)) / (2 * h);
}

/**
 * The braced bow: how tight its string is, and how long the string would be without it.
 *
 * @equation sin θ_B = (B − x_h)/ell, T = F′(B) s/2, s₀ = s/(1 + T/EA)
 * @param bow - the bow as the model sees it [record]
 * @returns θ_B [rad], T [N], s₀ [m] and k [N/m] [record]
 * @validity the string is straight at rest; refused when the arm cannot reach the brace height, when the string would hang slack, and for figures that cannot be
 * @source own derivation
 * @example bracedOf(exampleLimbBow).value.tension // 227.97184378273013
 */
export function bracedOf(bow: LimbBow): Result<Braced> {
  const fault = figureFault(bow);
  if (fault !== null) return fault;
  const { brace, hingeX, hingeY, limb, stringStiffness } = bow;
  const sine = (brace - hingeX) / limb;
  if (!(Math.abs(sine) < 0.99)) return cannotBe('A limb of this length cannot reach this brace height.');
  const theta = Math.asin(sine);
  const length = hingeY + limb * Math.cos(theta);
  const tension = (slopeAtBrace(bow) * length) / 2;
  if (!(tension > 0.1 && tension < 0.2 * stringStiffness))
    return tension > 0.1
      ? refuse('too stretchy', 'This string would stretch by more than a fifth at brace. A stiffer string was expected.')
      : refuse('slack string', 'The force was expected to rise from the brace height on: the string would hang slack.');
  const slack = length / (1 + tension / stringStiffness);
  return ok({ theta, tension, slack, spring: stringStiffness / slack });
}

/** The nock drawn to u by a force: how the arm stands, and what that asks of the hinge. */
export interface DrawnTo {
  readonly theta: number;
  /** F, what a scale would read [N]. */
  readonly force: number;
  readonly tension: number;
  /** M = T × lever [N m]. */
  readonly moment: number;
}

const MOST_ROUNDS = 60;

/**
 * The bow held at a draw with a force that is known.
 *
 * @equation k (s − s₀) = F s/(2 (u − x_t)), M = T ∂s/∂θ taken as a lever
 * @param bow - the bow as the model sees it [record]
 * @param braced - the same bow at rest, from `bracedOf` [record]
 * @param u - nock from the pivot, beyond the brace height [m]
 * @returns θ [rad], F [N], T [N] and M [N m] [record]
 * @validity refused where the string cannot reach, where the tip would pass the string, and where the string has no lever left
 * @source own derivation
 * @example drawnTo(exampleLimbBow, bracedOf(exampleLimbBow).value, 0.68).value.tension > 178 // true
 */
export function drawnTo(bow: LimbBow, { slack, spring }: Braced, u: number): Result<DrawnTo> {
  const force = bow.force(u);
  if (!(force > 0 && force < Infinity)) return refuse('no force', 'A force above nought was expected all along the draw.');
  const string = emptyString();
  // With the string just slack there is no force at all, and the more the arm stays behind the more there is: one root, to the left.
  let right = armFor(bow, u, slack);
  if (right === null) return cannotBe('This string does not reach this draw.');
  let left = right;
  const excess = (theta: number) => {
    halfString(bow, u, theta, string);
    return 2 * spring * (string.length - slack) * string.alongArrow - force;
  };
  for (let step = 1e-4; excess(left) < 0; step *= 2) {
    if (step > 2) return cannotBe('This draw is more than these limbs can bend to.');
    right = left;
    left -= step;
  }
  let theta = (left + right) / 2;
  for (let round = 0; round < MOST_ROUNDS && right - left > 1e-15; round++) {
    const found = excess(theta);
    if (found > 0) left = theta;
    else right = theta;
    const { length, alongArrow, lever } = string;
    const slope = -2 * spring * lever * alongArrow - (2 * spring * (length - slack) * bow.limb * string.cos) / length;
    const next = theta - found / slope;
    if (Math.abs(next - theta) < 1e-15) break;
    theta = next > left && next < right ? next : (left + right) / 2;
  }
  halfString(bow, u, theta, string);
  const tension = spring * (string.length - slack);
  if (!(string.alongArrow > 0 && string.lever > 0 && string.cos * bow.limb + bow.hingeY > 0))
    return cannotBe('At this draw the tip would pass the string.');
  return ok({ theta, force, tension, moment: tension * string.lever });
}
