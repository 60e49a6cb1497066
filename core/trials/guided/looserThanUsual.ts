import { axisVariance, fQuantileUpper, momentsOf } from '../../group/index.ts';
import { counted, type ShotGroup } from '../../model/group.ts';
import type { Words } from '../sentences.ts';
import { WIDER } from '../timesWider.ts';
import type { SpreadAt } from './types.ts';

/**
 * Whether the groups of a trial scatter far wider than this archer's do, so that they are no groups to read from.
 *
 * @equation ratio² = (Σ SS/z²/ν)/σ0²; least = √(ratio²/F_0.025(ν, ν0)); told when least > 1.5
 * @param groups - groups of one kind, each about its own centre [list]
 * @param spread - what the archer scatters; a guess judges nothing [record]
 * @returns headline and line under it; null when nothing is told [record]
 * @validity three or more shots in all; the spread of the same bow, arrows and form
 * @source own derivation
 * @example looserThanUsual([exampleFletched], { perMetre: 0.0002, degreesOfFreedom: 20, from: '3 groups at 18 m' }).headline // "Fletched arrows scatter 4.5 times as wide as usual"
 */
export function looserThanUsual(groups: readonly ShotGroup[], spread: SpreadAt | null): Words | null {
  if (spread === null || spread.degreesOfFreedom === null) return null;
  let [squares, df] = [0, 0];
  for (const group of groups) {
    const shots = counted(group);
    if (shots.length < 2) continue;
    squares += (2 * (shots.length - 1) * axisVariance(momentsOf(shots))) / group.context.distance ** 2;
    df += 2 * (shots.length - 1);
  }
  if (df < 4) return null;
  const ratio = Math.sqrt(squares / df) / spread.perMetre;
  const least = ratio / Math.sqrt(fQuantileUpper(0.025, df, spread.degreesOfFreedom));
  if (!(least > WIDER)) return null;
  return {
    headline: `Fletched arrows scatter ${ratio.toFixed(1)} times as wide as usual`,
    subline: `At least ${least.toFixed(1)} times as wide as ${spread.from}, 39 times in 40. That is no group of this archer\u2019s, and no setting is read from it.`,
  };
}
