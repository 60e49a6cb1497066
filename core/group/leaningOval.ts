import type { Covariance } from './moments.ts';
import type { Interval } from './measures.ts';

/** An oval in any direction, with what scatters of one normal law leave open about it. */
export interface LeaningOval {
  /** Shortest over longest axis as it shows, and the chance that round shots look at least so oval. */
  readonly ratio: number;
  readonly p: number;
  /** Longest over shortest axis, from 1 on: above 1 exactly when the oval is told. */
  readonly times: Interval;
  /** The long axis from upright, to the right positive, above -90° and up to 90° [rad]. */
  readonly lean: number;
  /** Half width of its 95 % interval [rad]; null where the oval is not told, which may then lie in any direction. */
  readonly leanHalf: number | null;
}

/** Beyond this many times as long as wide the oval is a line. */
const LINE = 1e6;

/**
 * How oval shots lie, in whatever direction, with the intervals that the test of roundness leaves.
 *
 * @equation W = 4 det S/(tr S)², p = W^((ν - 1)/2); stretched by 1/ρ along some direction the shots must pass as round: w = α^(1/(ν - 1)), g = (1 - √(1 - w²))/w, long over short L: g L … L/g, from 1 on; lean δ: sin² 2δ = W (1 - w²)/(w² (1 - W))
 * @param covariance - S, not of shots in one hole [record]
 * @param df - ν of each axis: shots less groups, ≥ 2 [-]
 * @param alpha - α, 1 minus the level of the intervals [-]
 * @returns ratio, p, and the intervals [record]
 * @validity normal shots. Both intervals hold together in at least 1 - α of groups, so that each by itself is a little wide. An argument outside throws RangeError
 * @source mauchly-1940; own derivation
 * @example leaningOval({ xx: 1, xy: 0, yy: 4 }, 5, 0.05).p // 0.4096
 */
export function leaningOval({ xx, xy, yy }: Covariance, df: number, alpha: number): LeaningOval {
  if (!(xx + yy > 0 && xx + yy < Infinity && df >= 2 && alpha > 0 && alpha < 1))
    throw new RangeError('A spread, two degrees of freedom and a level are needed.');
  const half = (xx + yy) / 2;
  const oval = Math.min(half, Math.hypot((xx - yy) / 2, xy));
  const round = (1 - oval / half) * (1 + oval / half);
  const ratio = Math.sqrt((half - oval) / (half + oval));
  const times = Math.min(LINE, 1 / Math.max(ratio, 1 / LINE));
  const p = round ** ((df - 1) / 2);
  const w = alpha ** (1 / (df - 1));
  const g = (1 - Math.sqrt(1 - w * w)) / w;
  // ½ atan2 from x towards y is 90° less the lean.
  const lean = oval === 0 ? 0 : Math.PI / 2 - Math.atan2(2 * xy, xx - yy) / 2;
  const open = (round * (1 - w * w)) / (w * w * (1 - round));
  return {
    ratio,
    p,
    times: [Math.max(1, g * times), times / g],
    lean: lean > Math.PI / 2 ? lean - Math.PI : lean,
    leanHalf: p >= alpha || open >= 1 ? null : Math.asin(Math.sqrt(open)) / 2,
  };
}
