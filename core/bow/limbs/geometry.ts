import type { LimbBow } from './limbBow.ts';

/** Where half the string runs while the nock is at u and the arm stands at θ. */
export interface HalfString {
  /** s, nock to tip [m]. */
  length: number;
  /** (u − x_t)/s: how s grows with u, and the share of the tension that pulls along the arrow [-]. */
  alongArrow: number;
  /** −∂s/∂θ, the lever of the tension about the hinge [m]. */
  lever: number;
  /** Of θ: asked for again beside the lever, and too dear to be worked out twice. */
  sin: number;
  cos: number;
}

/**
 * A half string to fill, made once so that nothing is made while stepping.
 *
 * @equation nothing is computed
 * @returns all nought [record]
 * @validity to be filled by halfString before it is read
 * @source own derivation
 * @example emptyString().length // 0
 */
export const emptyString = (): HalfString => ({ length: 0, alongArrow: 0, lever: 0, sin: 0, cos: 1 });

type Frame = Pick<LimbBow, 'hingeX' | 'hingeY' | 'limb'>;

/**
 * The half string between nock and limb tip.
 *
 * @equation x_t = x_h + ell sin θ, y_t = y_h + ell cos θ, s² = (u − x_t)² + y_t²; lever = ell ((u − x_t) cos θ + y_t sin θ)/s
 * @param frame - hingeX, hingeY and limb [m] [record]
 * @param u - nock from the pivot [m]
 * @param theta - θ, the arm from upright towards the archer [rad]
 * @param out - filled and handed back [record]
 * @returns length [m], alongArrow [-], lever [m], sin and cos of θ [record]
 * @validity a nock that is not at the tip
 * @source own derivation
 * @example halfString({ hingeX: 0, hingeY: 0.3, limb: 0.1 }, 0.3, 0, emptyString()).length // 0.5
 */
export function halfString({ hingeX, hingeY, limb }: Frame, u: number, theta: number, out: HalfString): HalfString {
  const [sin, cos] = [Math.sin(theta), Math.cos(theta)];
  const x = u - hingeX - limb * sin;
  const y = hingeY + limb * cos;
  const s = Math.sqrt(x * x + y * y);
  out.sin = sin;
  out.cos = cos;
  out.length = s;
  out.alongArrow = x / s;
  out.lever = (limb * (x * cos + y * sin)) / s;
  return out;
}

/**
 * How the arm stands when the half string has a given length.
 *
 * @equation s² = ell² + d² − 2 ell d sin(θ − γ), d and γ the nock's distance and bearing from the hinge
 * @param frame - hingeX, hingeY and limb [m] [record]
 * @param u - nock from the pivot [m]
 * @param length - s [m]
 * @returns θ [rad]; null when no stand of the arm makes the string so long [-]
 * @validity the stand on the archer's side of the line from nock through hinge is meant: there the arm gives way as the string pulls
 * @source own derivation
 * @example Math.abs(armFor({ hingeX: 0, hingeY: 0.3, limb: 0.1 }, 0.3, 0.5)) < 1e-12 // true
 */
export function armFor({ hingeX, hingeY, limb }: Frame, u: number, length: number): number | null {
  const distance = Math.hypot(u - hingeX, hingeY);
  const sine = (limb * limb + distance * distance - length * length) / (2 * limb * distance);
  return sine > -1 && sine < 1 ? Math.atan2(hingeY, u - hingeX) + Math.asin(sine) : null;
}
