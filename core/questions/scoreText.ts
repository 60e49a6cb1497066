import { face } from '../group/index.ts';
import type { FaceId } from '../model/group.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { ArrowScore } from '../model/scoreSheet.ts';

const MOST_IN_END = 24;
const MOST_ENDS = 200;

/**
 * The values of a score sheet, read from what was typed.
 *
 * @equation a line an end; values parted by blanks, commas, semicolons or dashes: X, 10 down to the face's lowest, M or 0 for a miss; empty lines are passed over
 * @param text - what was typed [text]
 * @param faceId - the face [choice]
 * @returns the ends, or a refusal that names line and value: `no-scores`, `bad-score`, `too-many` [list]
 * @validity any text
 * @source wa-rules
 * @example readScores('X 10 9\n8, 7, m', '40').value // [["X", 10, 9], [8, 7, 0]]
 */
export function readScores(text: string, faceId: FaceId): Result<ArrowScore[][]> {
  const lowest = face(faceId).rings[0]?.points ?? 1;
  const ends: ArrowScore[][] = [];
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    const words = line.split(/[\s,;|/\u2013-]+/).filter((word) => word !== '');
    if (words.length === 0) continue;
    const end: ArrowScore[] = [];
    for (const word of words) {
      const score = scoreOf(word, lowest);
      if (score === null)
        return refuse(
          'bad-score',
          `Line ${index + 1} holds \u201c${word.slice(0, 12)}\u201d: X, 10 down to ${lowest}, or M for a miss were expected on this face.`,
          'scores',
        );
      end.push(score);
    }
    if (end.length > MOST_IN_END)
      return refuse(
        'too-many',
        `Line ${index + 1} holds ${end.length} values: at most ${MOST_IN_END} in an end were expected. Begin a new line for each end.`,
        'scores',
      );
    ends.push(end);
  }
  if (ends.length === 0) return refuse('no-scores', 'Values were expected, a line for each end: X 10 9 8 7 M.', 'scores');
  if (ends.length > MOST_ENDS)
    return refuse('too-many', `At most ${MOST_ENDS} ends were expected, and ${ends.length} were found.`, 'scores');
  return ok(ends);
}

function scoreOf(word: string, lowest: number): ArrowScore | null {
  if (/^x$/i.test(word)) return 'X';
  if (/^m$/i.test(word)) return 0;
  const points = /^\d{1,2}$/.test(word) ? Number(word) : NaN;
  return points === 0 || (points >= lowest && points <= 10) ? points : null;
}

/**
 * The values of a score sheet as they are typed.
 *
 * @equation a line an end, blanks between, M for a miss; readScores reads it back
 * @param ends - the ends [list]
 * @returns the lines [text]
 * @validity any sheet
 * @source own derivation
 * @example scoreLines([['X', 10], [0]]) // "X 10\nM"
 */
export function scoreLines(ends: readonly (readonly ArrowScore[])[]): string {
  return ends.map((end) => end.map((score) => (score === 0 ? 'M' : String(score))).join(' ')).join('\n');
}
