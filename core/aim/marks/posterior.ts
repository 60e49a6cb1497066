import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { type Held, heldOf, markError, placeOf, usualShots } from './markModel.ts';
import { launchSlope } from './launchSlope.ts';
import { normalPair } from './normalPair.ts';
import type { FittedMarks } from './types.ts';

/** One possible truth behind the marks, and how often it was drawn. */
export interface DrawnTruth {
  readonly speed: number;
  readonly eyeHeight: number;
  readonly k: number;
  readonly sightRadius: number;
  readonly zero: number;
  readonly times: number;
}

/** Wider than the valley is to first order, so that its far slopes are visited too. */
const stretch = 1.15;

interface Known {
  readonly distance: number;
  readonly place: number;
  /** 1/σ² */
  readonly weight: number;
}

/** What (v, e, k) leave to say of zero and sight radius, in which the places are straight: a normal law, and how likely the three are. */
interface Rest {
  /** Squared misses that no zero and no radius can mend, and the logarithm of how sharply the two are told. */
  readonly squares: number;
  readonly sharpness: number;
  readonly mean: readonly [zero: number, sightRadius: number];
  /** Lower factor of their covariance. */
  readonly root: readonly [number, number, number];
}

function restOf(known: readonly Known[], held: Held, speed: number, eyeHeight: number, k: number): Rest | null {
  const [r0, held1] = [held.means[3], 1 / held.sds[3] ** 2];
  let [sw, swp, swpp, swy, swpy] = [0, 0, held1, 0, 0];
  const slopes: number[] = [];
  for (const { distance, place, weight } of known) {
    const p = launchSlope(speed, k, eyeHeight, distance);
    if (!Number.isFinite(p)) return null;
    slopes.push(p);
    // Counted from the usual radius, so that what is left is small.
    const y = place - r0 * p;
    sw += weight;
    swp += weight * p;
    swpp += weight * p * p;
    swy += weight * y;
    swpy += weight * p * y;
  }
  const det = sw * swpp - swp * swp;
  if (!(det > 0)) return null;
  const zero = (swpp * swy - swp * swpy) / det;
  const more = (sw * swpy - swp * swy) / det;
  const squares = known.reduce(
    (sum, { place, weight }, i) => {
      const p = slopes[i] ?? 0;
      return sum + weight * (place - zero - (r0 + more) * p) ** 2;
    },
    more * more * held1,
  );
  const first = Math.sqrt(swpp / det);
  const second = -swp / det / first;
  return {
    squares,
    sharpness: Math.log(det),
    mean: [zero, r0 + more],
    root: [first, second, Math.sqrt(Math.max(0, sw / det - second * second))],
  };
}

interface Proposed {
  readonly flight: Pick<DrawnTruth, 'speed' | 'eyeHeight' | 'k'>;
  readonly rest: Rest;
  readonly logWeight: number;
}

/** Draws again by weight in even steps, so that as few as can be are lost, and gives each its zero and sight radius. */
function drawnAgain(found: readonly Proposed[], draws: number, wider: number, random: () => number): DrawnTruth[] {
  const most = found.reduce((greatest, { logWeight }) => Math.max(greatest, logWeight), -Infinity);
  const weights = found.map(({ logWeight }) => Math.exp(logWeight - most));
  const share = draws / weights.reduce((sum, weight) => sum + weight, 0);
  const drawn: DrawnTruth[] = [];
  let reached = random();
  let taken = 0;
  found.forEach(({ rest, flight }, i) => {
    reached += share * (weights[i] ?? 0);
    const times = Math.min(Math.floor(reached), draws) - taken;
    if (times < 1) return;
    taken += times;
    const [u, v] = normalPair(random);
    const [first, second, third] = rest.root;
    const [zero, sightRadius] = rest.mean;
    drawn.push({
      ...flight,
      zero: zero + wider * first * u,
      sightRadius: sightRadius + wider * (second * u + third * v),
      times,
    });
  });
  return drawn;
}

/**
 * Truths behind some marks, drawn as likely as they are.
 *
 * @equation (ln v, e, ln k) from the normal law of the fit, weighed by the true one with zero and sight radius integrated out, drawn again by weight in even steps; zero and sight radius from their own normal law
 * @param fit - from `fitMarks` [record]
 * @param draws - how many [-]
 * @param random - numbers from 0 to 1, below 1 [function]
 * @returns the truths, each with how often it was drawn [list]
 * @validity whole draws from 1 on, else RangeError; the same numbers give the same truths; errors widened as the fit's
 * @source own derivation
 * @example drawTruths(fitMarks(exampleMarks, exampleScale, examplePriors).value, 100, () => 0.3).reduce((sum, { times }) => sum + times, 0) // 100
 */
export function drawTruths(fit: FittedMarks, draws: number, random: () => number): DrawnTruth[] {
  if (!(Number.isInteger(draws) && draws >= 1)) throw new RangeError('A whole number of draws from 1 on was expected.');
  const { priors, scale, marks, parameters, covariance, wider } = fit;
  const held = heldOf(priors);
  const known = marks.map(({ distance, reading, shots = usualShots }): Known => {
    return { distance, place: placeOf(reading, scale), weight: markError(priors, shots) ** -2 };
  });
  const three = covariance.slice(0, 3).map((row) => row.slice(0, 3));
  const root = new CholeskyDecomposition(new Matrix(three)).lowerTriangularMatrix.to2DArray();
  const at = (i: number, j: number) => root[i]?.[j] ?? 0;
  const reach = wider * stretch;
  const found: Proposed[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const [[z0, z1], [z2]] = [normalPair(random), normalPair(random)];
    const z = [z0, z1, z2] as const;
    const by = (i: number) => reach * (at(i, 0) * z[0] + at(i, 1) * z[1] + at(i, 2) * z[2]);
    const values = [parameters[0] + by(0), parameters[1] + by(1), parameters[2] + by(2)] as const;
    const [speed, eyeHeight, k] = [Math.exp(values[0]), values[1], Math.exp(values[2])];
    const rest = restOf(known, held, speed, eyeHeight, k);
    if (rest === null) continue;
    const prior = values.reduce((sum, value, j) => sum + ((value - (held.means[j] ?? 0)) / (held.sds[j] ?? 1)) ** 2, 0);
    const logTarget = -0.5 * ((rest.squares + prior) / wider ** 2 + rest.sharpness);
    found.push({ flight: { speed, eyeHeight, k }, rest, logWeight: logTarget + 0.5 * (z[0] ** 2 + z[1] ** 2 + z[2] ** 2) });
  }
  return drawnAgain(found, draws, wider, random);
}
