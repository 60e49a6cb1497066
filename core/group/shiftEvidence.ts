import type { CentreTest } from './welch.ts';

/** Shift per spread that the evidence is tuned to. */
const TAU = 1;
/** The largest natural logarithm that stays a number. */
const LARGEST = 700;

const grownBy = ([n1, n2]: readonly [number, number]): number => 1 + (TAU ** 2 * n1 * n2) / (n1 + n2);

/**
 * Evidence that a shift is there, which may be looked at after every end.
 *
 * @equation ratio of the densities of F with and without a shift of τ = 1 spread: E = g^(-a/2) [(1 + a F/ν)/(1 + a F/(g ν))]^((a + ν)/2), a = 1/c, g = 1 + m τ², m = n1 n2/(n1 + n2); for round groups of one spread it is (1 + m)⁻¹ [(W + m d²)/(W + m d²/(1 + m))]^(N - 1)
 * @param test - F of the two centres with its degrees of freedom a and ν [record]
 * @param n - shots with and without the change [list]
 * @returns ln E; E ≥ 20 is a shift with at most one false alarm in twenty, however often one looks [-]
 * @validity exact for round normal shots of one spread. Twelve looks at ends of 3 and 3 gave 1.6 % false alarms for round shots, 2.3 and 1.7 % for ovals of 2 and 5 to 1, 0.8 % for heavy tails, 3.1 % where 3 tight and 1 loose arrow make an end (computed independently, 8000 draws). Kept at most 700, a number with 304 digits
 * @source perez-ortiz-2024
 * @example shiftEvidence({ variance: 1, f: 0, df: [2, 8], p: 1 }, [2, 2]) // -0.6931471805599453
 */
export function shiftEvidence({ f, df: [a, nu] }: CentreTest, n: readonly [number, number]): number {
  const grown = grownBy(n);
  const ratio = Math.log1p((a * f) / nu) - Math.log1p((a * f) / nu / grown);
  return Math.min(LARGEST, ((a + nu) / 2) * ratio - (a / 2) * Math.log(grown));
}

/**
 * How far from the shift as seen the true shift may lie, at every look at once.
 *
 * @equation R with E(R) = 1/α: A = (g^(a/2)/α)^(2/(a + ν)), R² = 2 (v1 + v2) (ν/a) (A - 1)/(1 - A/g)
 * @param test - the two centres' variance and degrees of freedom [record]
 * @param n - shots with and without the change [list]
 * @param alpha - α, 1 minus the level [-]
 * @returns R; null while no shift can yet be left out [m]
 * @validity as shiftEvidence; an α outside 0 … 1 throws RangeError
 * @source howard-2021
 * @example shiftRadiusAlways({ variance: 1, f: 0, df: [2, 1], p: 1 }, [2, 2], 0.05) // null
 */
export function shiftRadiusAlways(
  { variance, df: [a, nu] }: CentreTest,
  n: readonly [number, number],
  alpha: number,
): number | null {
  if (!(alpha > 0 && alpha < 1)) throw new RangeError('alpha must lie between 0 and 1.');
  const grown = grownBy(n);
  const edge = Math.exp(((a / 2) * Math.log(grown) - Math.log(alpha)) * (2 / (a + nu)));
  if (edge >= grown) return null;
  return Math.sqrt((2 * variance * (nu / a) * (edge - 1)) / (1 - edge / grown));
}
