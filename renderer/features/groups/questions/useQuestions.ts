import { useEffect, useState } from 'react';
import { inOrder, questionSteps, type Question, type QuestionInput } from '../../../../core/questions/index.ts';

/** What was answered, and of what. */
export interface Answered {
  readonly input: QuestionInput;
  readonly questions: readonly Question[];
}

/** So long may the page stand still for answers before it draws again [ms]. */
const SLICE = 4;
/** With more shots than this the answers wait until the hand rests [shots, ms]. */
export const MANY_SHOTS = 1000;
const REST = 250;

/**
 * The answers, worked out a few at a time between two frames: entering a shot never waits for them. Until the new ones are there the last
 * ones stay; null before there are any.
 */
export function useQuestions(input: QuestionInput): Answered | null {
  const [answered, setAnswered] = useState<Answered | null>(null);
  useEffect(() => {
    let timer = 0;
    let steps: ReturnType<typeof questionSteps> | null = null;
    const found: Question[] = [];
    let next = 0;
    const work = () => {
      const began = performance.now();
      steps ??= questionSteps(input);
      while (next < steps.length && performance.now() - began < SLICE) {
        const question = steps[next]?.() ?? null;
        if (question !== null) found.push(question);
        next += 1;
      }
      if (next < steps.length) timer = window.setTimeout(work, 0);
      else setAnswered({ input, questions: inOrder(found) });
    };
    const shots = input.group.shots.length + (input.beside?.shots.length ?? 0);
    timer = window.setTimeout(work, shots > MANY_SHOTS ? REST : 0);
    return () => window.clearTimeout(timer);
  }, [input]);
  return answered;
}
