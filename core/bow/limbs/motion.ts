import type { OdeSystem } from '../../flight/dormandPrinceStep.ts';
import type { Braced } from './braced.ts';
import { halfString, type HalfString } from './geometry.ts';
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
  readonly start: readonly number[];
  /** W, the bow's energy at full draw above brace [J]. */
  readonly work: number;
  /** N = −m_a u″ [N]. */
  readonly thrust: (time: number, state: ArrayLike<number>) => number;
  readonly tension: (state: ArrayLike<number>) => number;
  readonly energies: (state: ArrayLike<number>) => Energies;
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
  const { arrowMass, limb, tipMass, stringMass, stringDamping, hingeDamping, fingers, draw, brace } = bow;
  const { slack, spring } = braced;
  const string: HalfString = { length: 0, alongArrow: 0, lever: 0 };
  const q = stringMass / 6;
  const alongMass = arrowMass + 2 * q;
  const swing = 2 * (tipMass + q) * limb * limb;
  const held = bow.force(draw);

  const potential = (u: number, theta: number) => {
    const stretch = Math.max(0, halfString(bow, u, theta, string).length - slack);
    return 2 * hinge.energy(theta) + spring * stretch * stretch;
  };
  const atBrace = potential(brace, braced.theta);
  const work = potential(draw, hinge.atDraw.theta) - atBrace;

  /** Of half a string; fills `string`. A string cannot push, whatever its damping says. */
  const tensionOf = (u: number, theta: number, along: number, turning: number) => {
    halfString(bow, u, theta, string);
    const stretch = string.length - slack;
    if (stretch <= 0) return 0;
    return Math.max(0, spring * stretch + stringDamping * (string.alongArrow * along - string.lever * turning));
  };
  const fading = (time: number) => (time < fingers ? held * (1 - time / fingers) : 0);

  const rates = (pull: number, y: ArrayLike<number>, out: Float64Array | number[]) => {
    const [u, theta, along, turning] = [y[0]!, y[1]!, y[2]!, y[3]!];
    const tension = tensionOf(u, theta, along, turning);
    const coupling = q * limb * Math.cos(theta);
    const onNock = q * limb * Math.sin(theta) * turning * turning - 2 * tension * string.alongArrow + pull;
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

  const scratch = [0, 0, 0, 0, 0, 0, 0];
  return {
    system: (held) => ({ size: 7, rate: (time, y, out) => rates(held ? fading(time) : 0, y, out) }),
    start: [draw, hinge.atDraw.theta, 0, 0, 0, 0, 0],
    work,
    thrust: (time, y) => {
      rates(fading(time), y, scratch);
      return -arrowMass * scratch[2]!;
    },
    tension: (y) => tensionOf(y[0]!, y[1]!, y[2]!, y[3]!),
    energies: (y) => {
      const [u, theta, along, turning] = [y[0]!, y[1]!, y[2]!, y[3]!];
      const tip = limb * turning;
      return {
        arrowEnergy: (arrowMass * along * along) / 2,
        limbEnergy: tipMass * tip * tip,
        stringEnergy: q * (along * along + along * tip * Math.cos(theta) + tip * tip),
        stored: potential(u, theta) - atBrace,
        lost: work * (y[4]! + y[5]! + y[6]!),
      };
    },
  };
}
