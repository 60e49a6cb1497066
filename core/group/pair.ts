import { ok, refuse, type Result } from '../model/problem.ts';
import { checkedPoints, inOneHole, type Point } from './points.ts';

/** The largest shift that can matter [m]: no face is larger. */
const LARGEST_MATTERS = 1.5;

function enoughShots(points: readonly Point[], which: string): Result<readonly Point[]> {
  if (points.length === 0) return refuse('no-shots', `There are no shots in ${which}: shoot at least two, better six.`, 'shots');
  if (points.length === 1) {
    return refuse('one-shot', `One shot in ${which} cannot show its spread: shoot at least one more, better five.`, 'shots');
  }
  return checkedPoints(points, which);
}

/**
 * Refuses two groups whose shift cannot be judged.
 *
 * @equation two or more usable places in each group, and a spread in at least one of them
 * @param reference - places of the shots that the shift is counted from [m]
 * @param moved - places of the other group's shots [m]
 * @param matters - the smallest shift that matters; undefined for the default [m]
 * @returns the two groups, or a refusal: `no-shots`, `one-shot`, `one-hole`, `bad-position`, `bad-matters` [record]
 * @validity any input
 * @source own derivation
 * @example checkedPair([], [{ x: 0, y: 0 }], undefined).problem.code // "no-shots"
 */
export function checkedPair(
  reference: readonly Point[],
  moved: readonly Point[],
  matters: number | undefined,
): Result<readonly [readonly Point[], readonly Point[]]> {
  const first = enoughShots(reference, 'the reference group');
  if (!first.ok) return first;
  const second = enoughShots(moved, 'the other group');
  if (!second.ok) return second;
  if (inOneHole(reference) && inOneHole(moved)) {
    const sentence =
      'Each group lies in one hole, so there is no spread to judge the shift against: place each shot where it struck, or shoot more.';
    return refuse('one-hole', sentence, 'shots');
  }
  if (matters !== undefined && !(matters > 0 && matters <= LARGEST_MATTERS)) {
    return refuse('bad-matters', `A smallest shift that matters above 0 and up to ${LARGEST_MATTERS} m was expected.`, 'matters');
  }
  return ok([first.value, second.value]);
}
