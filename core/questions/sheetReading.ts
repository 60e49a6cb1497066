import {
  face,
  regionsOfScores,
  roundCircle,
  spreadFromRegions,
  type Face,
  type Length,
  type RegionCount,
  type ScoreCount,
} from '../group/index.ts';
import type { FaceId } from '../model/group.ts';
import { ok, type Result } from '../model/problem.ts';
import type { ArrowScore } from '../model/scoreSheet.ts';
import { scoresElsewhere } from './score.ts';
import { meanRadiusOf } from './texts.ts';

/** What a score sheet adds up to. */
export interface SheetTotal {
  readonly arrows: number;
  readonly total: number;
  readonly tens: number;
  readonly inner: number;
  readonly misses: number;
}

/** What a score sheet tells of the scatter. Lengths in m with their 95 % intervals. */
export interface SheetReading extends SheetTotal {
  readonly spread: Length;
  readonly meanRadius: Length;
  readonly r50: Length;
  readonly r95: Length;
  /** Points of one arrow at the distances and faces that are commonly shot, sight set right. */
  readonly elsewhere: ReturnType<typeof scoresElsewhere>;
  /** The lowest value, where arrows that fall as wide as all of them together hardly ever bring one so low, and the mean radius without it. */
  readonly apart: { readonly points: number; readonly meanRadius: Length } | null;
}

/**
 * The sum of a score sheet.
 *
 * @equation X counts 10, as a ten and as an inner ten; 0 is a miss
 * @param ends - the values, end by end [list]
 * @returns arrows, total, tens, inner tens and misses [record]
 * @validity any sheet
 * @source wa-rules
 * @example sheetTotal([['X', 10, 0]]) // { "arrows": 3, "total": 20, "tens": 2, "inner": 1, "misses": 1 }
 */
export function sheetTotal(ends: readonly (readonly ArrowScore[])[]): SheetTotal {
  const scores = ends.flat();
  const count = (of: (score: ArrowScore) => boolean): number => scores.filter(of).length;
  return {
    arrows: scores.length,
    total: scores.reduce<number>((sum, score) => sum + (score === 'X' ? 10 : score), 0),
    tens: count((score) => score === 'X' || score === 10),
    inner: count((score) => score === 'X'),
    misses: count((score) => score === 0),
  };
}

/**
 * The scatter behind a score sheet.
 *
 * @equation spreadFromRegions of the rings; where any X stands on the sheet the inner ten is a ring of its own
 * @param ends - the values, end by end [list]
 * @param faceId - the face [choice]
 * @param distance - at which it was shot [m]
 * @param shaftRadius - half the shaft's diameter [m]
 * @returns sum, spread, circles and scores elsewhere, or a refusal: those of regionsOfScores and spreadFromRegions [record]
 * @validity round normal scatter about the middle of the face: a group off it reads as a wider one. A sheet without any X may be one on which nobody wrote them
 * @source wa-rules; own derivation
 * @example sheetReading([['X', 10, 9], [9, 8, 8]], '40', 18, 0.003).value.total // 54
 */
export function sheetReading(
  ends: readonly (readonly ArrowScore[])[],
  faceId: FaceId,
  distance: number,
  shaftRadius: number,
): Result<SheetReading> {
  const target = face(faceId);
  const scores = ends.flat();
  const spread = spreadOf(scores, shaftRadius, target);
  if (!spread.ok) return spread;
  const times = (k: number): Length => ({
    value: k * spread.value.value,
    interval: [k * spread.value.interval[0], k * spread.value.interval[1]],
  });
  return ok({
    ...sheetTotal(ends),
    spread: spread.value,
    meanRadius: meanRadiusOf(spread.value),
    r50: times(roundCircle(0.5)),
    r95: times(roundCircle(0.95)),
    elsewhere: scoresElsewhere(spread.value, distance, shaftRadius),
    apart: apartOf(scores, spread.value.value, shaftRadius, target),
  });
}

function spreadOf(scores: readonly ArrowScore[], shaftRadius: number, target: Face): Result<Length> {
  const byPoints = new Map<number, number>();
  for (const score of scores) byPoints.set(pointsOf(score), (byPoints.get(pointsOf(score)) ?? 0) + 1);
  const counts: ScoreCount[] = [...byPoints].map(([points, count]) => ({ points, count }));
  const regions = regionsOfScores(counts, shaftRadius, target);
  if (!regions.ok) return regions;
  const sums = sheetTotal([scores]);
  const edge = target.innerTen + shaftRadius;
  const found = spreadFromRegions(sums.inner === 0 ? regions.value : parted(regions.value, sums, edge));
  return found.ok ? ok({ value: found.value.spread, interval: found.value.interval }) : found;
}

const pointsOf = (score: ArrowScore): number => (score === 'X' ? 10 : score);

/** Once in twenty such sheets or less: P(all rings higher missed) = e^(-r²/2σ²), for each of n arrows. */
const RARE = 0.05;

function apartOf(scores: readonly ArrowScore[], spread: number, shaftRadius: number, target: Face): SheetReading['apart'] {
  const lowest = scores.reduce<number>((least, score) => Math.min(least, pointsOf(score)), 10);
  const inside = target.rings.find(({ points }) => points > lowest);
  if (inside === undefined) return null;
  const chance = Math.exp(-((inside.radius + shaftRadius) ** 2) / (2 * spread * spread));
  if (chance * scores.length >= RARE) return null;
  const at = scores.findIndex((score) => pointsOf(score) === lowest);
  const rest = spreadOf(
    scores.filter((_, i) => i !== at),
    shaftRadius,
    target,
  );
  return rest.ok ? { points: lowest, meanRadius: meanRadiusOf(rest.value) } : null;
}

/** Tens parted into those inside the inner ten and those outside it. */
function parted(regions: readonly RegionCount[], { tens, inner }: SheetTotal, edge: number): RegionCount[] {
  return regions.flatMap((region): RegionCount[] => {
    const [part] = region.parts;
    if (part === undefined || part.inner !== 0) return [region];
    return [
      { count: inner, parts: [{ inner: 0, outer: edge, share: 1 }] },
      { count: tens - inner, parts: [{ inner: edge, outer: part.outer, share: 1 }] },
    ];
  });
}
