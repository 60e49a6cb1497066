import { axisVariance, type Moments } from './moments.ts';
import { ONE_HOLE } from './points.ts';

/** A round group, and one that is a line. */
const ROUND = 0.5;
const LINE = 1;

/**
 * How far from round the pooled shape of groups is: the share by which their squared distances lose degrees of freedom.
 *
 * @equation P = Σ (n_i - 1) S_i/s_i² / μ, μ = Σ (n_i - 1), s_i² = tr S_i/2; a2 = μ²/((μ - 1)(μ + 2)) [tr P² - (tr P)²/μ], a1 = μ/((μ - 1)(μ + 2)) [(μ + 1)(tr P)² - 2 tr P²]; c = a2/a1, kept in ½ … 1
 * @param groups - moments of the groups; one that lies in one hole has no shape and is left out [list]
 * @returns c, ½ for round, 1 for a line; 1 when the shots are too few to show a shape [-]
 * @validity bias-corrected for few shots; two shots in all show no shape
 * @source brunner-dette-munk-1997
 * @example shapeFactor([{ n: 6, centre: { x: 0, y: 0 }, covariance: { xx: 1, xy: 0, yy: 0 } }]) // 1
 */
export function shapeFactor(groups: readonly Moments[]): number {
  const shaped = groups.filter((group) => axisVariance(group) >= ONE_HOLE ** 2);
  const mu = shaped.reduce((sum, { n }) => sum + n - 1, 0);
  if (mu < 2) return LINE;
  let [xx, xy, yy] = [0, 0, 0];
  for (const group of shaped) {
    const share = (group.n - 1) / mu / axisVariance(group);
    xx += share * group.covariance.xx;
    xy += share * group.covariance.xy;
    yy += share * group.covariance.yy;
  }
  const trace = xx + yy;
  const traceOfSquare = xx * xx + 2 * xy * xy + yy * yy;
  const a2 = mu * (traceOfSquare - (trace * trace) / mu);
  const a1 = (mu + 1) * trace * trace - 2 * traceOfSquare;
  return Math.min(LINE, Math.max(ROUND, a2 / a1));
}
