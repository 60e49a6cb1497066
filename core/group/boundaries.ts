/** How the alarm is shared out over the looks: alike, or hardly any at first and most at the end. */
export type Boundary = 'pocock' | 'obrien-fleming';

/** Nodes and weights of Gauss and Legendre on 0 … 1, by Newton's rule. */
function gauss(count: number): (readonly [node: number, weight: number])[] {
  return Array.from({ length: count }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step++) {
      let [before, p] = [0, 1];
      for (let j = 1; j <= count; j++) [before, p] = [p, ((2 * j - 1) * x * p - (j - 1) * before) / j];
      slope = (count * (x * p - before)) / (x * x - 1);
      x -= p / slope;
    }
    return [(1 - x) / 2, 1 / ((1 - x * x) * slope * slope)] as const;
  });
}

/** e^(-x) I0(x): the series below 15, the asymptotic one from there on. */
function scaledBessel(x: number): number {
  let sum = 1;
  let term = 1;
  if (x < 15) {
    for (let k = 1; term > 1e-17 * sum; k++) sum += term *= (x * x) / 4 / (k * k);
    return Math.exp(-x) * sum;
  }
  for (let k = 1; k < 20 && Math.abs(term) > 1e-17; k++) sum += term *= (2 * k - 1) ** 2 / (8 * k * x);
  return sum / Math.sqrt(2 * Math.PI * x);
}

function expectPlan(looks: number, alpha: number): void {
  if (!(Number.isInteger(looks) && looks >= 1 && looks <= 60)) throw new RangeError('1 to 60 looks are needed.');
  if (!(alpha >= 1e-4 && alpha < 0.5)) throw new RangeError('alpha from 0.0001 to below 0.5 is needed.');
}

/**
 * Chance that a centre that has not moved crosses a boundary at any of several looks.
 *
 * @equation S_k = S_{k-1} + N(0, I) in the plane; crossed when |S_k|²/k > c_k. Density of r = |S_k| not yet crossed: f_k(r) = ∫ f_{k-1}(q) r exp(-(r² + q²)/2) I0(r q) dq over q² ≤ (k - 1) c_{k-1}
 * @param limits - c_1, c_2 …: the χ² with 2 degrees of freedom that each look must pass, all > 0, for equal ends [list]
 * @returns the chance of a false alarm over all looks [-]
 * @validity normal scatter of known spread, equal ends, up to 60 looks; seven digits. A limit that is not positive throws RangeError
 * @source jennison-turnbull-2000
 * @example Math.round(1e9 * crossingChance([-2 * Math.log(0.05)])) // 50000000
 */
export function crossingChance(limits: readonly number[]): number {
  if (!limits.every((limit) => limit > 0 && Number.isFinite(limit))) throw new RangeError('Limits must be positive.');
  // Two nodes a spread, and some for the ends: the rule is good to ten digits from there.
  const farthest = Math.sqrt(Math.max(...limits.map((limit, i) => limit * (i + 1))));
  const rule = gauss(Math.ceil(12 + 2 * farthest));
  // Of each node: how far out, and the share of centres that are there and have not crossed.
  let inside: (readonly [radius: number, share: number])[] = [[0, 1]];
  limits.forEach((limit, i) => {
    const edge = Math.sqrt(limit * (i + 1));
    inside = rule.map(([node, weight]) => {
      const r = node * edge;
      let density = 0;
      for (const [q, share] of inside) density += share * Math.exp(-((r - q) ** 2) / 2) * scaledBessel(r * q);
      return [r, density * r * weight * edge] as const;
    });
  });
  return 1 - inside.reduce((sum, [, share]) => sum + share, 0);
}

/**
 * The limits that several equally spaced looks must pass so that all together they keep to α.
 *
 * @equation Pocock: c_k = c; O'Brien and Fleming: c_k = c K/k; c such that the chance of crossing any is α
 * @param looks - K, looks planned [-]
 * @param boundary - pocock or obrien-fleming [choice]
 * @param alpha - α, false alarms allowed over all looks; 0.05 when left out [-]
 * @returns c_1 … c_K, of χ² with 2 degrees of freedom; as a p that each look must fall short of, exp(-c_k/2) [list]
 * @validity the plan is made before the first shot, with equal ends; 1 to 60 looks and α from 0.0001, else RangeError
 * @source pocock-1977, obrien-fleming-1979
 * @example Math.round(1e4 * lookLimits(4, 'pocock')[0]) // 80638
 */
export function lookLimits(looks: number, boundary: Boundary, alpha = 0.05): number[] {
  expectPlan(looks, alpha);
  const limits = (c: number): number[] =>
    Array.from({ length: looks }, (_, i) => (boundary === 'pocock' ? c : (c * looks) / (i + 1)));
  // Secants of the logarithm of the chance, which is nearly straight in c.
  const excess = (c: number): number => Math.log(crossingChance(limits(c)) / alpha);
  let before = -2 * Math.log(alpha);
  let left = excess(before);
  let c = before + Math.log(looks) + 0.01;
  for (let step = 0; step < 20; step++) {
    const here = excess(c);
    if (Math.abs(here) < 1e-10 || here === left) break;
    const next = c - (here * (c - before)) / (here - left);
    [before, left, c] = [c, here, next];
  }
  return limits(c);
}
