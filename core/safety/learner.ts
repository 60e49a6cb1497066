import type { Archer } from '../model/index.ts';

/**
 * Whether an archer is judged as a learner.
 *
 * @equation everybody whom nobody noted as settled
 * @param archer - experience [record]
 * @returns true for a learner, and while experience is not noted [choice]
 * @validity any archer
 * @source common practice
 * @example judgedAsLearner({ experience: null }) // true
 */
export function judgedAsLearner({ experience }: Pick<Archer, 'experience'>): boolean {
  return experience !== 'settled';
}
