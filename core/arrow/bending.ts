import { requireNotNegative, requirePositive } from '../model/positive.ts';

/** Bending modes that are asked for: the first three lie well inside what the slender-beam theory describes. */
export type BendingMode = 1 | 2 | 3;

// The frequency equation divided by cosh z, so that it stays finite, with a and b the end masses in shaft masses times z:
// sech z - cos z + (a + b)(sin z - tanh z cos z) + 2 a b sin z tanh z = 0.
const frequencyEquation = (z: number, nockRatio: number, frontRatio: number): number => {
  const a = nockRatio * z;
  const b = frontRatio * z;
  return (
    1 / Math.cosh(z) - Math.cos(z) + (a + b) * (Math.sin(z) - Math.tanh(z) * Math.cos(z)) + 2 * a * b * Math.sin(z) * Math.tanh(z)
  );
};

/**
 * Wave number times length of a free beam that carries a mass at each end.
 *
 * @equation 1 − cosh z cos z + z(ν₁ + ν₂)(cosh z sin z − sinh z cos z) + 2 z² ν₁ν₂ sinh z sin z = 0, z = βL
 * @param mode - which bending mode, 1 to 3 [-]
 * @param nockRatio - ν₁, mass at the nock over mass of the shaft [-]
 * @param frontRatio - ν₂, mass at the front over mass of the shaft [-]
 * @returns βL, the mode's root [-]
 * @validity slender uniform shaft, end masses without rotary inertia; RangeError for a ratio that is negative or not finite
 * @source bilge-morgul-2023
 * @example betaL(1, 0, 0) // 4.730040744862704
 */
export function betaL(mode: BendingMode, nockRatio: number, frontRatio: number): number {
  requireNotNegative({ nockRatio, frontRatio });
  // Mass at the ends only lowers a mode. Without it the root lies beside (k + 1/2) pi; with endless mass the ends stand still: k pi.
  let low = mode * Math.PI;
  let high = (mode + 0.5) * Math.PI + 0.02;
  const signAtLow = Math.sign(frequencyEquation(low, nockRatio, frontRatio));
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (Math.sign(frequencyEquation(middle, nockRatio, frontRatio)) === signAtLow) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A shaft with what sits on its ends, as the beam theory sees it. */
export interface LoadedShaft {
  /** Bending stiffness EI [N m²]. */
  readonly stiffness: number;
  /** Mass per length of the shaft [kg/m]. */
  readonly linearDensity: number;
  /** Throat of the nock to end of shaft [m]. */
  readonly length: number;
  /** Nock and fletching, lumped at the nock [kg]. */
  readonly nockMass: number;
  /** Point and insert, lumped at the front [kg]. */
  readonly frontMass: number;
}

/**
 * Frequency at which a free arrow bends.
 *
 * @equation f = (βL)² / (2π L²) √(EI/μ)
 * @param shaft - stiffness EI [N m²], linearDensity μ [kg/m], length L [m], nockMass and frontMass [kg] [record]
 * @param mode - which bending mode, 1 to 3 [-]
 * @returns f, natural frequency [Hz]
 * @validity as betaL; RangeError for a figure that is not finite, a negative mass, or a stiffness, density or length that is not positive
 * @source blevins-1979
 * @example bendingFrequency({ stiffness: 4, linearDensity: 0.01, length: 1, nockMass: 0, frontMass: 0 }, 1) // 71.2163794452986
 */
export function bendingFrequency(shaft: LoadedShaft, mode: BendingMode): number {
  const { stiffness, linearDensity, length, nockMass, frontMass } = shaft;
  requirePositive({ stiffness, linearDensity, length });
  requireNotNegative({ nockMass, frontMass });
  const mass = linearDensity * length;
  const root = betaL(mode, nockMass / mass, frontMass / mass);
  return (root ** 2 / (2 * Math.PI * length ** 2)) * Math.sqrt(stiffness / linearDensity);
}

/**
 * Lowest frequency at which a free arrow bends: the one that carries it round the bow.
 *
 * @equation f₁ = (β₁L)² / (2π L²) √(EI/μ)
 * @param shaft - stiffness EI [N m²], linearDensity μ [kg/m], length L [m], nockMass and frontMass [kg] [record]
 * @returns f₁, natural frequency of the first bending mode [Hz]
 * @validity as bendingFrequency
 * @source blevins-1979
 * @example firstBendingFrequency({ stiffness: 4, linearDensity: 0.01, length: 1, nockMass: 0, frontMass: 0 }) // 71.2163794452986
 */
export function firstBendingFrequency(shaft: LoadedShaft): number {
  return bendingFrequency(shaft, 1);
}
