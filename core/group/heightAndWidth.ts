import { ok, refuse, type Result } from '../model/problem.ts';
import { fQuantileUpper, fUpperTail, tQuantile, tTwoSided } from './distributions.ts';
import { leaningOval, type LeaningOval } from './leaningOval.ts';
import type { Interval } from './measures.ts';
import { checkedPoints, ONE_HOLE, type Point } from './points.ts';
import { leastWhole } from './search.ts';

/** Vertical spread against lateral, of one group or of several ends about their own centres. */
export interface HeightAndWidth {
  readonly shots: number;
  /** Degrees of freedom of each axis. */
  readonly df: number;
  /** Standard deviations [m]. */
  readonly vertical: number;
  readonly lateral: number;
  /** Vertical over lateral. */
  readonly ratio: number;
  /** By F of the two axes, two-sided, which takes heights and widths to be independent: shown beside. */
  readonly interval: Interval;
  readonly p: number;
  /** The same question where the oval may lean: exact for normal shots, and the one that decides, so that its interval leaves out 1 exactly then. */
  readonly leaningInterval: Interval;
  readonly leaningP: number;
  /** Oval in any direction. */
  readonly oval: LeaningOval;
  /** An oval is told when it is neither of the first two: it leans. */
  readonly verdict: 'taller' | 'wider' | 'oval' | 'cannot tell';
  /** Chance that so many shots show a true 2 to 1. */
  readonly findsTwoToOne: number;
  /** For 'cannot tell': shots in all that show the ratio as seen four times in five; null when more than a thousand. */
  readonly shotsNeeded: number | null;
}

const ALPHA = 0.05;
const POWER = 0.8;
const MANY = 1000;

/**
 * Chance that a spread taller than wide, or the other way, is found.
 *
 * @equation P(F > F_{α/2}/ρ²) + P(F < 1/(F_{α/2} ρ²)), ν and ν degrees of freedom, α = 0.05
 * @param ratio - ρ, one axis over the other, ≥ 1 [-]
 * @param df - ν of each axis: shots less groups, ≥ 1 [-]
 * @returns power [-]
 * @validity normal shots whose heights and widths are independent; an argument outside throws RangeError
 * @source johnson-kotz-balakrishnan-1995
 * @example powerForTall(1, 5) // 0.05
 */
export function powerForTall(ratio: number, df: number): number {
  if (!(ratio >= 1 && df >= 1)) throw new RangeError('A ratio and degrees of freedom of 1 or more are needed.');
  const critical = fQuantileUpper(ALPHA / 2, df, df);
  return fUpperTail(critical / ratio ** 2, df, df) + fUpperTail(critical * ratio ** 2, df, df);
}

/**
 * Whether shots scatter more in height than in width, or the other way.
 *
 * @equation F = S_yy/S_xx with ν and ν, ratio √F in √(F/F_{α/2}) … √(F F_{α/2}); decided by t = r √((ν - 1)/(1 - r²)) with ν - 1, r the correlation of x + y with x - y, whose own interval is √(F (K ± √(K² - 1))), K = 1 + 2 (1 - r_xy²) t_{α/2}²/(ν - 1); else an oval, where leaningOval tells one
 * @param groups - places of the shots of each group or end; each about its own centre [m]
 * @returns the comparison, or a refusal: `bad-position`, `too-few`, `one-hole`, `on-a-line` [record]
 * @validity normal shots, spreads alike in all groups. Six shots find a true 2 to 1 in 27 of 100, twelve in 59: 'cannot tell' is not 'round'
 * @source pitman-1939, mauchly-1940
 * @example heightAndWidth([[{ x: 0, y: 0 }, { x: 0.01, y: 0.04 }, { x: 0.02, y: 0 }]]).value.verdict // "cannot tell"
 */
export function heightAndWidth(groups: readonly (readonly Point[])[]): Result<HeightAndWidth> {
  let [shots, df, xx, xy, yy] = [0, 0, 0, 0, 0];
  for (const [i, points] of groups.entries()) {
    const checked = checkedPoints(points, groups.length === 1 ? 'this group' : `end ${i + 1}`);
    if (!checked.ok) return checked;
    const n = points.length;
    if (n === 0) continue;
    const x = points.reduce((sum, p) => sum + p.x, 0) / n;
    const y = points.reduce((sum, p) => sum + p.y, 0) / n;
    shots += n;
    df += n - 1;
    for (const p of points) {
      xx += (p.x - x) ** 2;
      xy += (p.x - x) * (p.y - y);
      yy += (p.y - y) ** 2;
    }
  }
  if (df < 2) return refuse('too-few', 'At least three shots in one group were expected: shoot more, better twelve.', 'shots');
  if (xx + yy < ONE_HOLE ** 2) {
    return refuse(
      'one-hole',
      'All shots lie in one hole, so height and width cannot be compared: place each where it struck.',
      'shots',
    );
  }
  if (Math.min(xx, yy) < 1e-10 * (xx + yy)) {
    return refuse(
      'on-a-line',
      'All shots lie on one level or upright line: check that both places of each shot were entered.',
      'shots',
    );
  }
  const f = yy / xx;
  const critical = fQuantileUpper(ALPHA / 2, df, df);
  // (1 - r²) of x + y and x - y, times the product of their squares; never quite nought, so that a needle has a t.
  const free = Math.max(1e-12 * (xx + yy) ** 2, 4 * (xx * yy - xy * xy));
  const t = (yy - xx) * Math.sqrt((df - 1) / free);
  const leaningP = tTwoSided(t, df - 1);
  const oval = leaningOval({ xx: xx / df, xy: xy / df, yy: yy / df }, df, ALPHA);
  const none = oval.p < ALPHA ? 'oval' : 'cannot tell';
  const verdict = leaningP >= ALPHA ? none : f > 1 ? 'taller' : 'wider';
  const ratio = Math.sqrt(f);
  const open = 1 + (free / (2 * xx * yy)) * (tQuantile(1 - ALPHA / 2, df - 1) ** 2 / (df - 1));
  const wide = Math.sqrt(open + Math.sqrt(open * open - 1));
  return ok({
    shots,
    df,
    vertical: Math.sqrt(yy / df),
    lateral: Math.sqrt(xx / df),
    ratio,
    interval: [ratio / Math.sqrt(critical), ratio * Math.sqrt(critical)],
    p: Math.min(1, 2 * Math.min(fUpperTail(f, df, df), fUpperTail(1 / f, df, df))),
    leaningInterval: [ratio / wide, ratio * wide],
    leaningP,
    oval,
    verdict,
    findsTwoToOne: powerForTall(2, df),
    shotsNeeded: verdict === 'cannot tell' ? shotsFor(Math.max(ratio, 1 / ratio), df, shots - df) : null,
  });
}

function shotsFor(ratio: number, df: number, groups: number): number | null {
  const needed = leastWhole(df + 1, MANY + 1, (nu) => powerForTall(ratio, nu) >= POWER);
  return needed <= MANY ? needed + groups : null;
}
