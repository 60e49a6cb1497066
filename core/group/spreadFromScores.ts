import { crossing } from '../flight/root.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { Face } from './faces.ts';
import type { Interval } from './measures.ts';

/** A piece of the target about its centre: between two radii [m], and which share of the full round of that ring. */
export interface RegionPart {
  readonly inner: number;
  /** Infinity for all that lies outside. */
  readonly outer: number;
  readonly share: number;
}

/** What can be told apart on a score sheet: how many arrows, and in which pieces of the target each may lie. */
export interface RegionCount {
  readonly count: number;
  readonly parts: readonly RegionPart[];
}

/** How many arrows scored so many points; 0 for a miss. */
export interface ScoreCount {
  readonly points: number;
  readonly count: number;
}

/** Spread of one axis [m] read from a score sheet, with its 95 % interval. */
export interface SpreadFromScores {
  readonly arrows: number;
  readonly spread: number;
  readonly interval: Interval;
}

/** Fall of the log likelihood at the ends of a 95 % interval: half of chi-square with one degree of freedom, 3.841459 (printed tables). */
const FALL = 1.9207294;
/** The search runs this far beyond the smallest and the largest radius. */
const BEYOND = 60;
const STEPS = 80;
const NEAR = 1e-9;
const IMPOSSIBLE = 1e-300;

/**
 * The pieces of a face that a score sheet tells apart.
 *
 * @equation points of ring k: from the next smaller ring's radius + shaft radius to its own radius + shaft radius; a miss: all outside the largest
 * @param counts - arrows by points, 0 for a miss [list]
 * @param shaftRadius - half the shaft's diameter at the face, ≥ 0 [m]
 * @param face - the face [record]
 * @returns counts with their pieces, or a refusal: `bad-score` for points that the face does not have or a count that is none [record]
 * @validity any counts; a shaft radius below 0 throws RangeError
 * @source wa-rules
 * @example regionsOfScores([{ points: 10, count: 3 }], 0.003, face('122')).value[0].parts // [{ "inner": 0, "outer": 0.064, "share": 1 }]
 */
export function regionsOfScores(counts: readonly ScoreCount[], shaftRadius: number, face: Face): Result<readonly RegionCount[]> {
  if (!(shaftRadius >= 0)) throw new RangeError('A shaft radius of 0 or more is needed.');
  const radii = face.rings.map(({ radius }) => radius + shaftRadius);
  const regions: RegionCount[] = [];
  for (const { points, count } of counts) {
    const ring = face.rings.findIndex((other) => other.points === points);
    if ((ring < 0 && points !== 0) || !Number.isInteger(count) || count < 0) {
      const lowest = face.rings[0]?.points ?? 1;
      return refuse(
        'bad-score',
        `Whole numbers of arrows with 0 or ${lowest} to 10 points were expected on this face.`,
        'scores',
      );
    }
    const outer = points === 0 ? Infinity : (radii[ring] ?? Infinity);
    regions.push({ count, parts: [{ inner: (points === 0 ? radii[0] : radii[ring + 1]) ?? 0, outer, share: 1 }] });
  }
  return ok(regions);
}

/**
 * Spread from a score sheet without coordinates.
 *
 * @equation P = Σ share (e^(-a²/2σ²) - e^(-b²/2σ²)) over the pieces; σ of the greatest Σ count ln P; interval where that falls by 1.92
 * @param regions - arrows by the pieces of the target they may lie in [list]
 * @returns spread of one axis with its 95 % interval, or a refusal: `no-shots`, `bad-region`, `all-inside` (the sentence gives the bound), `all-outside` [record]
 * @validity round normal scatter about the centre of the face: a group off the centre reads as a wider one; from about 12 arrows on
 * @source own derivation
 * @example spreadFromRegions([{ count: 4, parts: [{ inner: 0, outer: 0.1, share: 1 }] }]).problem.code // "all-inside"
 */
export function spreadFromRegions(regions: readonly RegionCount[]): Result<SpreadFromScores> {
  const struck = regions.filter(({ count }) => count !== 0);
  const arrows = struck.reduce((sum, { count }) => sum + count, 0);
  if (struck.some((region) => !isRegion(region)))
    return refuse('bad-region', 'Pieces of the target with an inner radius below the outer one were expected.', 'scores');
  if (arrows === 0) return refuse('no-shots', 'There are no scores: note at least twelve arrows.', 'scores');
  const edges = struck.flatMap(({ parts }) => parts.flatMap(({ inner, outer }) => [inner, outer]));
  const finite = edges.filter((edge) => edge > 0 && edge < Infinity);
  const farthest = Math.max(...edges);
  if (struck.every(({ parts }) => parts.every(({ outer }) => outer === Infinity)))
    return refuse(
      'all-outside',
      'Every arrow struck outside all rings that tell something: shoot nearer, or at a larger face.',
      'scores',
    );
  if (struck.every(({ parts }) => parts.every(({ inner, share }) => inner === 0 && share === 1))) {
    // Even the widest spread that is likely would have left one of them outside once in twenty times.
    const bound = farthest / Math.sqrt(-2 * Math.log1p(-(0.05 ** (1 / arrows))));
    const sentence = `All ${arrows} arrows struck the innermost zone, so that only a bound is known: a spread below ${(1000 * bound).toFixed(0)} mm. Shoot farther off, or at a smaller face.`;
    return refuse('all-inside', sentence, 'scores');
  }
  return fitted(struck, arrows, Math.log(Math.min(...finite) / BEYOND), Math.log(Math.max(...finite) * BEYOND));
}

function fitted(struck: readonly RegionCount[], arrows: number, from: number, to: number): Result<SpreadFromScores> {
  const logLikelihood = (logSpread: number): number => {
    const twice = 2 * Math.exp(2 * logSpread);
    return struck.reduce((sum, { count, parts }) => sum + count * Math.log(Math.max(chanceOf(parts, twice), IMPOSSIBLE)), 0);
  };
  const at = (i: number): number => from + ((to - from) * i) / STEPS;
  let best = 0;
  let most = -Infinity;
  for (let i = 0; i <= STEPS; i++) {
    const value = logLikelihood(at(i));
    if (value > most) [best, most] = [i, value];
  }
  const top = summit(logLikelihood, at(best - 1), at(best + 1));
  const height = logLikelihood(top);
  const above = (logSpread: number): number => logLikelihood(logSpread) - height + FALL;
  if (above(from) > 0 || above(to) > 0)
    return refuse('all-outside', 'These scores set no bound to the spread: shoot nearer, or note more arrows.', 'scores');
  const ends = [crossing(above, from, top, NEAR), crossing(above, top, to, NEAR)].map(Math.exp);
  return ok({ arrows, spread: Math.exp(top), interval: [ends[0] ?? 0, ends[1] ?? 0] });
}

const isRegion = ({ count, parts }: RegionCount): boolean =>
  Number.isInteger(count) &&
  count > 0 &&
  parts.length > 0 &&
  parts.every(({ inner, outer, share }) => inner >= 0 && inner < outer && share > 0 && share <= 1);

function chanceOf(parts: readonly RegionPart[], twiceVariance: number): number {
  return parts.reduce((sum, { inner, outer, share }) => {
    const near = (inner * inner) / twiceVariance;
    return sum - share * Math.exp(-near) * Math.expm1(near - (outer * outer) / twiceVariance);
  }, 0);
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Golden section on a stretch with one summit. */
function summit(f: (x: number) => number, from: number, to: number): number {
  let [a, b] = [from, to];
  while (b - a > 1e-8) {
    const low = b - GOLDEN * (b - a);
    const high = a + GOLDEN * (b - a);
    if (f(low) < f(high)) a = low;
    else b = high;
  }
  return (a + b) / 2;
}
