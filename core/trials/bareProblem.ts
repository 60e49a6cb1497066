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
  const say = (code: string, sentence: string): Problem => refuse(code, sentence).problem;
  if (fletched.fletching !== 'fletched' || bare.fletching !== 'bare')
    return say('fletching', 'One fletched and one bare group were expected.');
  const voids = differences.find((difference) => difference.voids);
  if (voids !== undefined) return say(voids.key.split('.')[0] ?? voids.key, voids.sentence);
  if (bundle.bow.bowKind === 'compound')
    return say(
      'compound',
      'Stiff and weak are read from a finger release; a compound shot with a release aid bends its arrow up and down.',
    );
  if (bundle.bow.hand !== bundle.archer.hand)
    return say('hand', 'Bow and archer of one hand were expected: stiff and weak lie on opposite sides for the two hands.');
  return null;
}
