import { ok, type Result } from '../model/problem.ts';
import { axisTest } from './axes.ts';
import { concludeShift, type Shift } from './concludeShift.ts';
import { twoSampleT2KrishnamoorthyYu } from './hotelling.ts';
import { c4, MEAN_RADIUS_PER_SPREAD } from './measures.ts';
import { axisVariance, momentsOf, type Moments } from './moments.ts';
import { checkedPair } from './pair.ts';
import type { Point } from './points.ts';
import { shiftTest } from './shiftTest.ts';

export type { Shift, ShiftVerdict } from './concludeShift.ts';

export interface ShiftOptions {
  /** The smallest shift that matters [m]; about one mean radius of the groups when left out. */
  readonly matters?: number;
  /** False alarms allowed, 0.05 when left out. */
  readonly alpha?: number;
}

const HOTELLING_FROM = 6;

/**
 * The shift between two groups: how far, how sure, and whether it is real.
 *
 * @equation shape-corrected Welch, held back along the shift's own line (shiftTest): F = |d|²/(2 (v1 + v2)) ~ F(1/c, ν); radius √(2 (v1 + v2) F_α), or what the line asks for if that is more; real when p < α; no sign when size + radius ≤ what matters; else cannot tell. An axis is real when the whole and the axis's own Welch t both are (closed testing)
 * @param reference - places of the shots that the shift is counted from [m]
 * @param moved - places of the other group's shots [m]
 * @param options - the smallest shift that matters, by default 1.25 of the pooled spread, and α, by default 0.05 [record]
 * @returns the shift with its verdict, or a refusal: `no-shots`, `one-shot`, `one-hole`, `bad-position`, `bad-matters` [record]
 * @validity independent, about normal shots, two or more in each group, spreads and ovals may differ; one look: testing again after each end finds more false shifts than α. An α outside 0 … 0.5 throws RangeError
 * @source brunner-dette-munk-1997
 * @example shiftOfGroups([{ x: 0, y: 0 }, { x: 0.02, y: 0 }, { x: 0, y: 0.02 }], [{ x: 0.2, y: 0 }, { x: 0.22, y: 0 }, { x: 0.2, y: 0.02 }]).value.verdict // "real"
 */
export function shiftOfGroups(reference: readonly Point[], moved: readonly Point[], options: ShiftOptions = {}): Result<Shift> {
  const { alpha = 0.05 } = options;
  const pair = checkedPair(reference, moved, options.matters);
  if (!pair.ok) return pair;
  if (!(alpha > 0 && alpha < 0.5)) throw new RangeError('alpha must lie between 0 and 0.5.');
  const first = momentsOf(reference);
  const second = momentsOf(moved);
  const test = shiftTest(first, second);
  const spread = pooledSpread(first, second);
  // Adding 0 turns -0 into 0, whose direction is 0 and not -π.
  const dx = second.centre.x - first.centre.x + 0;
  const dy = second.centre.y - first.centre.y + 0;
  return ok({
    ...concludeShift({
      first,
      second,
      dx,
      dy,
      shape: test.shape,
      spread,
      matters: options.matters ?? MEAN_RADIUS_PER_SPREAD * spread,
      alpha,
      test,
      axis: (which) => axisTest(first, second, which, alpha),
    }),
    hotelling: Math.min(first.n, second.n) < HOTELLING_FROM ? null : hotellingBeside(first, second),
  });
}

function pooledSpread(first: Moments, second: Moments): number {
  const [d1, d2] = [2 * (first.n - 1), 2 * (second.n - 1)];
  return Math.sqrt((d1 * axisVariance(first) + d2 * axisVariance(second)) / (d1 + d2)) / c4(d1 + d2);
}

function hotellingBeside(first: Moments, second: Moments): Shift['hotelling'] {
  const [a, b] = [first, second].map(({ n, centre, covariance: { xx, xy, yy } }) => ({
    n,
    mean: [centre.x, centre.y],
    covariance: [
      [xx, xy],
      [xy, yy],
    ],
  }));
  if (a === undefined || b === undefined) return null;
  const test = twoSampleT2KrishnamoorthyYu(a, b);
  return test.ok ? { t2: test.value.t2, f: test.value.f, p: test.value.p } : null;
}
