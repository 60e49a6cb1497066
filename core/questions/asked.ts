import type { SpreadPrior } from '../group/index.ts';
import { counted, type Shot, type ShotGroup } from '../model/group.ts';
import type { Result } from '../model/problem.ts';
import { earlierAlike, usualSpread } from './history.ts';
import type { QuestionInput } from './question.ts';

/** The input with what several questions share, worked out once. */
export interface Asked extends QuestionInput {
  /** The shots that count. */
  readonly shots: readonly Shot[];
  /** The archer's earlier groups that were shot alike, oldest first. */
  readonly history: readonly ShotGroup[];
  readonly usual: Result<SpreadPrior>;
}

/**
 * A group made ready for its questions.
 *
 * @equation the shots that count, earlier groups shot alike, and their usual spread
 * @param input - group, groups beside and before it, set-up and units [record]
 * @returns the input with what the questions share [record]
 * @validity any groups
 * @source own derivation
 * @example asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units }).shots.length // 6
 */
export function asked(input: QuestionInput): Asked {
  const history = earlierAlike(input.group, input.others);
  return { ...input, shots: counted(input.group), history, usual: usualSpread(history) };
}
