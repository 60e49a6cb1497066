import {
  axisVariance,
  fQuantileUpper,
  fUpperTail,
  inOneHole,
  momentsOf,
  ratioFound,
  type Interval,
  type Point,
  type SpreadBasis,
} from '../group/index.ts';
import { ok, refuse, type Result } from '../model/problem.ts';

/** A group's spread over the usual one of the earlier groups. */
export interface AgainstUsual {
  readonly n: number;
  readonly ratio: number;
  readonly interval: Interval;
  readonly p: number;
  readonly verdict: 'tighter' | 'looser' | 'cannot tell';
  /** So many shots find a spread of this share of the usual, or less, four times in five; null where the history is worth too little. */
  readonly finds: number | null;
}

const ALPHA = 0.05;
const POWER = 0.8;

/**
 * Whether a group is tighter or wider than the archer's earlier groups.
 *
 * @equation F = s²/s0² ~ F(2 (n - 1), ν0); ratio √F in √(F/F_0.025) … √(F F'_0.025), F' with the degrees of freedom changed about
 * @param points - places of the shots [m]
 * @param usual - s0² and ν0, of the earlier groups [record]
 * @returns the comparison, or a refusal: `too-few` below three shots, `one-hole` [record]
 * @validity round normal shots, groups that differ among themselves as the earlier ones do: ν0 holds what one day is unlike another
 * @source smyth-2004
 * @example againstUsual([{ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 1 }], { variance: 1, degreesOfFreedom: 4 }).value.verdict // "cannot tell"
 */
export function againstUsual(points: readonly Point[], usual: SpreadBasis): Result<AgainstUsual> {
  const n = points.length;
  if (n < 3) return refuse('too-few', 'At least three shots are needed to compare spreads, better twelve: shoot more.', 'shots');
  if (inOneHole(points))
    return refuse('one-hole', 'All shots lie in one hole, so the spread cannot be told: place each where it struck.', 'shots');
  const [df, df0] = [2 * (n - 1), usual.degreesOfFreedom];
  const f = axisVariance(momentsOf(points)) / usual.variance;
  const p = Math.min(1, 2 * Math.min(fUpperTail(f, df, df0), fUpperTail(1 / f, df0, df)));
  const ratio = Math.sqrt(f);
  return ok({
    n,
    ratio,
    interval: [ratio / Math.sqrt(fQuantileUpper(ALPHA / 2, df, df0)), ratio * Math.sqrt(fQuantileUpper(ALPHA / 2, df0, df))],
    p,
    verdict: p >= ALPHA ? 'cannot tell' : f < 1 ? 'tighter' : 'looser',
    finds: df0 < 2 ? null : ratioFound(n, df0 / 2 + 1, POWER, ALPHA / 2),
  });
}
