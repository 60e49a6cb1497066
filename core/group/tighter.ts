import { ok, refuse, type Result } from '../model/problem.ts';
import { fQuantileUpper, tQuantile, tTwoSided } from './distributions.ts';
import { helmertRadii } from './helmert.ts';
import { axisVariance, momentsOf } from './moments.ts';
import { checkedPoints, inOneHole, ONE_HOLE, type Point } from './points.ts';
import { arrowsToTell, ratioTold } from './spreadPower.ts';
import { chanceOfRatio } from './tighterPower.ts';

export type TighterVerdict = 'tighter' | 'looser' | 'cannot tell';

/** New spread over old, and how sure that is. */
export interface Tighter {
  /** Shots in the old and in the new group. */
  readonly n: readonly [old: number, fresh: number];
  /** Spread new over old, below 1 is tighter: by the mean Helmert lengths, of which the deciding test is one, so that it lies within the interval as far as that reaches. */
  readonly ratio: number;
  /** Of the true ratio by the deciding test, so that it leaves out 1 exactly when the verdict is not 'cannot tell'; null has no upper end. */
  readonly interval: readonly [low: number, high: number | null];
  /** The same of the standard deviations, by F, which trusts the shots to be round and normal: shown beside, never decides. */
  readonly roundRatio: number;
  readonly roundInterval: readonly [low: number, high: number];
  readonly p: number;
  readonly verdict: TighterVerdict;
  /** How often an unchanged bow would show a round ratio this far from 1 on this side, round normal shots taken. */
  readonly chance: number;
  /** These shots find a true tightening to this ratio, or less, four times in five; a milder one usually escapes them; null where they do not find even a tenth so often. */
  readonly finds: number | null;
  /** For 'cannot tell': arrows in each group, in all, that settle a ratio as seen four times in five; null when it is so near 1 that it takes more than a thousand. */
  readonly arrows: number | null;
}

const FEWEST = 3;
const POWER = 0.8;
const MANY = 1000;

function enough(points: readonly Point[], which: string): Result<readonly Point[]> {
  if (points.length < FEWEST) {
    const sentence = `At least ${FEWEST} shots in ${which} are needed to compare spreads, and ${points.length} ${points.length === 1 ? 'was' : 'were'} given: shoot more, better twelve or more.`;
    return refuse('too-few', sentence, 'shots');
  }
  const checked = checkedPoints(points, which);
  if (!checked.ok) return checked;
  if (!inOneHole(points)) return checked;
  return refuse(
    'one-hole',
    `All shots of ${which} lie in one hole, so its spread cannot be told: place each shot where it struck.`,
    'shots',
  );
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Mean, and sum of squares about it. */
function summary(values: readonly number[]): { n: number; mean: number; squares: number } {
  const mean = sumOf(values) / values.length;
  return { n: values.length, mean, squares: sumOf(values.map((value) => (value - mean) ** 2)) };
}

/** Ratios ρ that the pooled t of lengths, the new ones divided by ρ, does not refute: (a u - b)² ≤ K (S_a u² + S_b), u = 1/ρ. */
function ratiosKept(fresh: ReturnType<typeof summary>, old: ReturnType<typeof summary>, k: number): Tighter['interval'] {
  const a = fresh.mean ** 2 - k * fresh.squares;
  const b = fresh.mean * old.mean;
  const c = old.mean ** 2 - k * old.squares;
  const root = Math.sqrt(Math.max(0, b * b - a * c));
  return [a > 0 ? Math.max(0, a / (b + root)) : 0, c > 0 ? (b + root) / c : null];
}

/**
 * Whether the new group is really tighter than the old one.
 *
 * @equation ratio of the mean Helmert lengths, new over old; decided by Student's pooled t on them, whose own interval of the ratio is given; beside it √(F/F_{1-α/2}) … √(F/F_{α/2}) about √F = √(s²_new/s²_old)
 * @param old - places of the older group, in the order they were shot [m]
 * @param fresh - places of the newer group, in the order they were shot [m]
 * @param alpha - α, two-sided, 0.05 when left out [-]
 * @returns the comparison, or a refusal: `too-few`, `one-hole`, `bad-position` [record]
 * @validity keeps 4.6 to 5.5 % false alarms from 3 and 3 shots on for normal shots, round or oval up to 5 to 1, where F reaches 8.4 % at 2 to 1; with heavy tails (Student's t, 5 and 3 degrees of freedom) 7 and 9 %, where F reaches 15 and 25 %. Depends on the order of shots. An α outside 0 … 0.5 throws RangeError
 * @source levene-1960
 * @example tighterGroup([{ x: 0, y: 0 }, { x: 0.2, y: 0 }, { x: 0, y: 0.2 }], [{ x: 0, y: 0 }, { x: 0.1, y: 0 }, { x: 0, y: 0.1 }]).value.verdict // "cannot tell"
 */
export function tighterGroup(old: readonly Point[], fresh: readonly Point[], alpha = 0.05): Result<Tighter> {
  const before = enough(old, 'the old group');
  if (!before.ok) return before;
  const after = enough(fresh, 'the new group');
  if (!after.ok) return after;
  if (!(alpha > 0 && alpha < 0.5)) throw new RangeError('alpha must lie between 0 and 0.5.');
  const [n1, n2] = [fresh.length, old.length];
  const [df1, df2] = [2 * (n1 - 1), 2 * (n2 - 1)];
  const roundRatio = Math.sqrt(axisVariance(momentsOf(fresh)) / axisVariance(momentsOf(old)));
  const [a, b] = [summary(helmertRadii(fresh)), summary(helmertRadii(old))];
  const ratio = a.mean / b.mean;
  const nu = a.n + b.n - 2;
  const perUnit = (1 / a.n + 1 / b.n) / nu;
  const error = Math.sqrt((a.squares + b.squares) * perUnit);
  const difference = a.mean - b.mean;
  // Lengths that are all alike, as of shots on a drawn figure, leave no error to divide by.
  const p = error > ONE_HOLE * 1e-6 ? tTwoSided(difference / error, nu) : Math.abs(difference) > ONE_HOLE ? 0 : 1;
  const verdict = p >= alpha ? 'cannot tell' : difference < 0 ? 'tighter' : 'looser';
  return ok({
    n: [n2, n1],
    ratio,
    roundRatio,
    interval: ratiosKept(a, b, tQuantile(1 - alpha / 2, nu) ** 2 * perUnit),
    roundInterval: [
      roundRatio / Math.sqrt(fQuantileUpper(alpha / 2, df1, df2)),
      roundRatio * Math.sqrt(fQuantileUpper(alpha / 2, df2, df1)),
    ],
    p,
    verdict,
    chance: roundRatio <= 1 ? chanceOfRatio(roundRatio, n1, n2) : chanceOfRatio(1 / roundRatio, n2, n1),
    finds: ratioTold(n1, n2, POWER, alpha, 2),
    arrows: verdict === 'cannot tell' ? arrowsToSettle(ratio, alpha) : null,
  });
}

function arrowsToSettle(ratio: number, alpha: number): number | null {
  if (Math.abs(Math.log(ratio)) < 0.05) return null;
  const needed = arrowsToTell(ratio, POWER, alpha, 2);
  return needed <= MANY ? needed : null;
}
