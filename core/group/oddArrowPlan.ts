import { fQuantileUpper, fUpperTail } from './distributions.ts';
import { noncentralFUpperTail } from './noncentralF.ts';
import { leastWhole } from './search.ts';

const MOST = 1000;
const ALPHA = 0.05;

function expectSet(arrows: number, power: number): void {
  if (!(Number.isInteger(arrows) && arrows >= 3)) throw new RangeError('Three arrows or more are needed.');
  if (!(power > ALPHA && power < 1)) throw new RangeError('A chance above 0.05 and below 1 is needed.');
}

const found = (ends: number): number | null => (ends <= MOST ? ends : null);

/**
 * Ends needed to show one odd arrow in a set.
 *
 * @equation the least m with P(F' > F_{α/k}) ≥ power: 2 and 2 (k - 1)(m - 1) degrees of freedom, λ = δ² m (k - 1)/k, α = 0.05
 * @param arrows - k, arrows in the set, ≥ 3 [-]
 * @param offsetInSigma - δ, how far the arrow strikes from the mean of the others, per spread of one axis, ≥ 0 [-]
 * @param power - the wanted chance [-]
 * @returns m, at least 2; null when more than a thousand [-]
 * @validity round normal shots, every arrow in every end; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example endsForOddArrow(12, 1, 0.8) // 18
 */
export function endsForOddArrow(arrows: number, offsetInSigma: number, power: number): number | null {
  expectSet(arrows, power);
  if (!(offsetInSigma >= 0)) throw new RangeError('An offset of 0 or more is needed.');
  // Beyond this the second end already shows it, and the series for the chance grows long.
  const offset = Math.min(offsetInSigma, 50);
  return found(
    leastWhole(2, MOST + 1, (ends) => {
      const df2 = 2 * (arrows - 1) * (ends - 1);
      const critical = fQuantileUpper(ALPHA / arrows, 2, df2);
      return noncentralFUpperTail(critical, 2, df2, (offset ** 2 * ends * (arrows - 1)) / arrows) >= power;
    }),
  );
}

/**
 * Ends needed to show that the arrows of a set differ at all.
 *
 * @equation the least m with P(F > F_α/(1 + m q²)) ≥ power, 2 (k - 1) and 2 (k - 1)(m - 1) degrees of freedom, α = 0.05
 * @param arrows - k, arrows in the set, ≥ 3 [-]
 * @param spreadOfArrows - q, spread of the arrows' true places per spread of one arrow, > 0 [-]
 * @param power - the wanted chance [-]
 * @returns m, at least 2; null when more than a thousand [-]
 * @validity round normal shots, every arrow in every end; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example endsForDifference(12, 0.3, 0.8) // 13
 */
export function endsForDifference(arrows: number, spreadOfArrows: number, power: number): number | null {
  expectSet(arrows, power);
  if (!(spreadOfArrows > 0)) throw new RangeError('A spread above 0 is needed.');
  const df1 = 2 * (arrows - 1);
  return found(
    leastWhole(2, MOST + 1, (ends) => {
      const df2 = df1 * (ends - 1);
      return fUpperTail(fQuantileUpper(ALPHA, df1, df2) / (1 + ends * spreadOfArrows ** 2), df1, df2) >= power;
    }),
  );
}

/**
 * Ends needed to show one loose arrow in a set.
 *
 * @equation the least m with P(F > F_{α/k} k/((k - 1) ρ² + 1)) ≥ power, 2 (m - 1) and 2 (k - 2)(m - 1) degrees of freedom, α = 0.05
 * @param arrows - k, arrows in the set, ≥ 3 [-]
 * @param ratio - ρ, its spread over that of the others, > 1 [-]
 * @param power - the wanted chance [-]
 * @returns m, at least 2; null when more than a thousand [-]
 * @validity round normal shots, every arrow in every end; an argument outside throws RangeError
 * @source own derivation
 * @example endsForLooseArrow(12, 2, 0.8) // 8
 */
export function endsForLooseArrow(arrows: number, ratio: number, power: number): number | null {
  expectSet(arrows, power);
  if (!(ratio > 1)) throw new RangeError('A ratio above 1 is needed.');
  const raised = ((arrows - 1) * ratio ** 2 + 1) / arrows;
  return found(
    leastWhole(2, MOST + 1, (ends) => {
      const df1 = 2 * (ends - 1);
      const df2 = (arrows - 2) * df1;
      return fUpperTail(fQuantileUpper(ALPHA / arrows, df1, df2) / raised, df1, df2) >= power;
    }),
  );
}
