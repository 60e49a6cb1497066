import { ok, refuse, type Result } from '../model/problem.ts';
import type { NumberedShot } from './oddModel.ts';
import { checkedPoints, type Point } from './points.ts';

/** A shot whose arrow may bear no number. */
export interface EndShot extends Point {
  readonly arrow: number | null;
  readonly end: number;
}

const FEWEST_ARROWS = 3;
const MOST_ARROWS = 100;

/**
 * The shots of numbered arrows, refused when single arrows cannot be judged by them.
 *
 * @equation at least 3 numbers, each at most once in an end; shots without a number are left out
 * @param shots - shots with the number of the arrow and of the end [list]
 * @returns the numbered shots, or a refusal: `bad-position`, `too-few-arrows`, `too-many-arrows`, `twice` [list]
 * @validity any input
 * @source own derivation
 * @example checkedNumbers([{ x: 0, y: 0, arrow: 1, end: 1 }]).problem.code // "too-few-arrows"
 */
export function checkedNumbers(shots: readonly EndShot[]): Result<readonly NumberedShot[]> {
  const checked = checkedPoints(shots, 'these ends');
  if (!checked.ok) return checked;
  const numbered = shots.flatMap(({ x, y, arrow, end }): NumberedShot[] => (arrow === null ? [] : [{ x, y, arrow, end }]));
  const count = new Set(numbered.map(({ arrow }) => arrow)).size;
  if (count < FEWEST_ARROWS) {
    const sentence = `At least ${FEWEST_ARROWS} numbered arrows were expected, and ${count} ${count === 1 ? 'was' : 'were'} found: write a number on each arrow and note it with its hole.`;
    return refuse('too-few-arrows', sentence, 'arrow');
  }
  if (count > MOST_ARROWS) {
    return refuse('too-many-arrows', `At most ${MOST_ARROWS} arrow numbers were expected, and ${count} were found.`, 'arrow');
  }
  const seen = new Set<string>();
  for (const { arrow, end } of numbered) {
    const key = `${end} ${arrow}`;
    if (seen.has(key)) {
      return refuse('twice', `Arrow ${arrow} stands twice in end ${end}: correct its number in one of the two places.`, 'arrow');
    }
    seen.add(key);
  }
  return ok(numbered);
}
