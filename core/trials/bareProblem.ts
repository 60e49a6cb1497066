import type { Bundle } from '../model/bundle.ts';
import type { ShotGroup } from '../model/group.ts';
import { refuse, type Problem } from '../model/problem.ts';
import type { ContextDifference } from './context.ts';

/**
 * Why a bare group beside a fletched one says nothing of the tuning, whatever it shows.
 *
 * @equation one fletched and one bare; no difference that voids; finger release; bow and archer of one hand
 * @param bundle - the set-up with its records [record]
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @param differences - from contextDifferences [list]
 * @returns the first problem by this order; null when there is none [record]
 * @validity any two groups
 * @source common practice
 * @example bareProblem(exampleBundle, exampleFletched, exampleBare, []) // null
 */
export function bareProblem(
  bundle: Bundle,
  fletched: Pick<ShotGroup, 'fletching'>,
  bare: Pick<ShotGroup, 'fletching'>,
  differences: readonly ContextDifference[],
): Problem | null {
  return pairProblem(fletched, bare, differences) ?? fingerProblem(bundle);
}

/**
 * Why a bare and a fletched group are no pair.
 *
 * @equation one fletched and one bare; no difference that voids
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @param differences - from contextDifferences [list]
 * @returns the problem; null when there is none [record]
 * @validity any two groups
 * @source common practice
 * @example pairProblem(exampleFletched, exampleFletched, []).code // "fletching"
 */
export function pairProblem(
  fletched: Pick<ShotGroup, 'fletching'>,
  bare: Pick<ShotGroup, 'fletching'>,
  differences: readonly ContextDifference[],
): Problem | null {
  if (fletched.fletching !== 'fletched' || bare.fletching !== 'bare')
    return refuse('fletching', 'One fletched and one bare group were expected.').problem;
  const voids = differences.find((difference) => difference.voids);
  return voids === undefined ? null : refuse(voids.key.split('.')[0] ?? voids.key, voids.sentence).problem;
}

/**
 * Why nothing of stiff, weak or nocking point is read from this bow and archer, whatever was shot.
 *
 * @equation a compound; bow and archer of different hands
 * @param bundle - the set-up with its records [record]
 * @returns the problem; null when there is none [record]
 * @validity any set-up
 * @source common practice
 * @example fingerProblem(exampleBundle) // null
 */
export function fingerProblem({ bow, archer }: Bundle): Problem | null {
  if (bow.bowKind === 'compound')
    return refuse(
      'compound',
      'Stiff and weak are read from a finger release; a compound shot with a release aid bends its arrow up and down.',
    ).problem;
  if (bow.hand !== archer.hand)
    return refuse('hand', 'Bow and archer of one hand were expected: stiff and weak lie on opposite sides for the two hands.')
      .problem;
  return null;
}
