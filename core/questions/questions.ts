import { aimQuestion } from './aim.ts';
import { asked, type Asked } from './asked.ts';
import { driftQuestion } from './drift.ts';
import { flyerQuestion } from './flyer.ts';
import { leftOutQuestion } from './leftOut.ts';
import { oddQuestion } from './odd.ts';
import { oneCentreQuestion } from './oneCentre.ts';
import type { Question, QuestionInput, Standing } from './question.ts';
import { scoreQuestion } from './score.ts';
import { shapeQuestion } from './shape.ts';
import { sizeQuestion } from './size.ts';
import { stoppingQuestion } from './stopping.ts';
import { tighterQuestion } from './tighter.ts';

const steps: readonly ((input: Asked) => Question | null)[] = [
  leftOutQuestion,
  aimQuestion,
  sizeQuestion,
  flyerQuestion,
  oddQuestion,
  driftQuestion,
  stoppingQuestion,
  tighterQuestion,
  scoreQuestion,
  shapeQuestion,
  oneCentreQuestion,
];

/** What rests on where the group lies from the middle of the face. */
const ofThePlace: ReadonlySet<(input: Asked) => Question | null> = new Set([aimQuestion, scoreQuestion, oneCentreQuestion]);

const rank: Readonly<Record<Standing, number>> = { act: 0, figure: 1, open: 2, clear: 3 };

/**
 * The questions in the order in which they are of use.
 *
 * @equation what asks for an act, then figures, then what is open, then where nothing was found; else as they were
 * @param questions - the questions [list]
 * @returns the same in order [list]
 * @validity any list
 * @source own derivation
 * @example inOrder([]) // []
 */
export function inOrder(questions: readonly Question[]): readonly Question[] {
  return [...questions].sort((a, b) => rank[a.standing] - rank[b.standing]);
}

/**
 * The questions of a group one by one, each answered only when it is called: a page can draw between two of them.
 *
 * @equation one function a question; null for one that does not arise; none of where a group lies for one of a walk-back, whose one aim was for all distances
 * @param input - group, groups beside and before it, set-up and units [record]
 * @returns the functions [list]
 * @validity any groups
 * @source own derivation
 * @example questionSteps({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units }).length // 11
 */
export function questionSteps(input: QuestionInput): readonly (() => Question | null)[] {
  const ready = asked(input);
  const fit = input.walkBack?.has(input.group.id) === true ? steps.filter((step) => !ofThePlace.has(step)) : steps;
  return fit.map((step) => () => step(ready));
}

/**
 * What a technician asks of one group, each question with its answer, what would tell, and the page behind it.
 *
 * @equation every question answered from the shots that count, in the order in which they are of use
 * @param input - group, groups beside and before it, set-up and units [record]
 * @returns the questions [list]
 * @validity any groups, none, one and many shots too: what cannot be told says what would tell
 * @source own derivation
 * @example groupQuestions({ group: exampleFletched, beside: exampleBare, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units }).length // 10
 */
export function groupQuestions(input: QuestionInput): readonly Question[] {
  return inOrder(questionSteps(input).flatMap((step) => step() ?? []));
}
