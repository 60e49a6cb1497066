import type { OdeSystem } from '../../flight/dormandPrinceStep.ts';
import type { Braced } from './braced.ts';
import { emptyString, halfString } from './geometry.ts';
import type { Hinge } from './hinge.ts';
import type { LimbBow } from './limbBow.ts';

/** What the energy of the stroke is in at one moment [J]. The four kinds and the lost part add up to the work at every moment. */
export interface Energies {
  readonly arrowEnergy: number;
  /** Of the moving limbs. */
  readonly limbEnergy: number;
  /** Of the moving string. */
  readonly stringEnergy: number;
  /** Still in the bent limbs and the stretched string, above what is in them at brace. */
  readonly stored: number;
  /** To hinges, string and fingers so far. */
  readonly lost: number;
}

export interface Motion {
  /** u, θ, u′, θ′, and what hinges, string and fingers have taken so far as shares of the work. */
  readonly system: (fingers: boolean) => OdeSystem;
  readonly start: Float64Array;
  /** W, the bow's energy at full draw above brace [J]. */
  readonly work: number;
  /** N = −m_a u″ [N]. */
  readonly thrust: (time: number, state: Float64Array) => number;
  readonly tension: (state: Float64Array) => number;
  readonly energies: (state: Float64Array) => Energies;
}

/**
 * The equations of motion of arrow, string and limbs, with a ledger of what is lost.
 *
 * @equation (m_a + 2q) u″ + q ell cos θ θ″ = q ell sin θ θ′² − 2T (u − x_t)/s + F₀(1 − t/τ)₊;  q ell cos θ u″ + 2 (I + q ell²) θ″ = 2T × lever − 2M(θ) − 2 c_h θ′;  q = m_s/6, I = m_t ell², T = (k(s − s₀) + c_s s′)₊ while s > s₀
 * @param bow - the bow as the model sees it [record]
 * @param braced - the same bow at rest, from `bracedOf` [record]
 * @param hinge - its hinges, from `hingeOf` [record]
 * @returns the system, its start at full draw, the work, and what can be read from a state [record]
 * @validity the string is a straight line with its mass spread along it; waves on it are left out
 * @source own derivation
 * @example motionOf(exampleLimbBow, bracedOf(exampleLimbBow).value, hingeOf(exampleLimbBow, bracedOf(exampleLimbBow).value).value).work > 47 // true
 */
export function motionOf(bow: LimbBow, braced: Braced, hinge: Hinge): Motion {
  const { arrowMass, limb, tipMass, stringMass, stringDamping, hingeDamping, fingers, draw } = bow;
  const { slack, spring } = braced;
  const string = emptyString();
  const q = stringMass / 6;
  const alongMass = arrowMass + 2 * q;
  const swing = 2 * (tipMass + q) * limb * limb;
  const held = hinge.atDraw.force;

  const potential = (u: number, theta: number) => {
    const stretch = Math.max(0, halfString(bow, u, theta, string).length - slack);
    return 2 * hinge.energy(theta) + spring * stretch * stretch;
  };
  const atRest = restOf(bow, braced, hinge);
  const least = potential(bow.hingeX + limb * Math.sin(atRest), atRest);
  const work = potential(draw, hinge.atDraw.theta) - least;

  /** Of half a string; fills `string`. A string cannot push, whatever its damping says. */
  const tensionOf = (u: number, theta: number, along: number, turning: number) => {
    halfString(bow, u, theta, string);
    const stretch = string.length - slack;
    if (stretch <= 0) return 0;
    return Math.max(0, spring * stretch + stringDamping * (string.alongArrow * along - string.lever * turning));
  };
  const fading = (time: number) => (time < fingers ? held * (1 - time / fingers) : 0);

  const rates = (pull: number, y: Float64Array, out: Float64Array) => {
    const { u, theta, along, turning } = placeOf(y);
    const tension = tensionOf(u, theta, along, turning);
    const coupling = q * limb * string.cos;
    const onNock = q * limb * string.sin * turning * turning - 2 * tension * string.alongArrow + pull;
    const onArms = 2 * (tension * string.lever - hinge.moment(theta) - hingeDamping * turning);
    const determinant = alongMass * swing - coupling * coupling;
    out[0] = along;
    out[1] = turning;
    out[2] = (swing * onNock - coupling * onArms) / determinant;
    out[3] = (alongMass * onArms - coupling * onNock) / determinant;
    const lengthening = string.alongArrow * along - string.lever * turning;
    const elastic = spring * Math.max(0, string.length - slack);
    out[4] = (2 * hingeDamping * turning * turning) / work;
    out[5] = (2 * (tension - elastic) * lengthening) / work;
    out[6] = (-pull * along) / work;
  };

  const scratch = new Float64Array(7);
  return {
    system: (held) => ({ size: 7, rate: (time, y, out) => rates(held ? fading(time) : 0, y, out) }),
    start: Float64Array.of(draw, hinge.atDraw.theta, 0, 0, 0, 0, 0),
    work,
    thrust: (time, y) => {
      rates(fading(time), y, scratch);
      return -arrowMass * (scratch[2] ?? Number.NaN);
    },
    tension: (y) => {
      const { u, theta, along, turning } = placeOf(y);
      return tensionOf(u, theta, along, turning);
    },
    energies: (y) => {
      const { u, theta, along, turning } = placeOf(y);
      const tip = limb * turning;
      return {
        arrowEnergy: (arrowMass * along * along) / 2,
        limbEnergy: tipMass * tip * tip,
        stored: potential(u, theta) - least,
        stringEnergy: q * (along * along + along * tip * string.cos + tip * tip),
        // Not by a view of the state: that would give each state a buffer of its own.
        lost: work * ((y[4] ?? 0) + (y[5] ?? 0) + (y[6] ?? 0)),
      };
    },
  };
}

/**
 * The place and the speed in a state.
 *
 * @equation y = (u, θ, u′, θ′, …), the three shares that are lost after them
 * @param y - state of the motion [list]
 * @returns u [m], θ [rad], u′ [m/s] and θ′ in radians a second [record]
 * @validity a state of motionOf
 * @source own derivation
 * @example placeOf(Float64Array.of(0.6, 1, -20, -9)).along // -20
 */
export function placeOf(y: Float64Array): {
  readonly u: number;
  readonly theta: number;
  readonly along: number;
  readonly turning: number;
} {
  return { u: y[0] ?? Number.NaN, theta: y[1] ?? Number.NaN, along: y[2] ?? Number.NaN, turning: y[3] ?? Number.NaN };
}

/** The model's own braced bow, where its energy is least: the fitted hinge puts it within a millimetre or two of the brace height. */
function restOf({ hingeY, limb }: LimbBow, { theta, slack, spring }: Braced, { moment }: Hinge): number {
  const H = 1e-6;
  const excess = (at: number) => moment(at) - Math.max(0, spring * (hingeY + limb * Math.cos(at) - slack)) * limb * Math.sin(at);
  let rest = theta;
  for (let round = 0; round < 12; round++) {
    const found = excess(rest);
    const step = (found * H) / (excess(rest + H) - found);
    if (!(Math.abs(step) < 0.2)) return theta;
    rest -= step;
    if (Math.abs(step) < 1e-12) break;
  }
  return rest;
}
