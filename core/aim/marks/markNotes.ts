import type { Problem } from '../../model/problem.ts';
import { countWord, together } from '../../model/sentence.ts';
import { heldAgainst } from './heldAgainst.ts';
import { turningDistance } from './turningDistance.ts';
import type { FittedMarks } from './types.ts';
import { farWords, readWords } from './words.ts';

type Told = Omit<FittedMarks, 'covariance' | 'notes'>;

const note = (code: string, sentence: string): Problem => ({ code, sentence, field: 'marks' });

function fitting({ judged, scale: { unit } }: Told): Problem[] {
  const notes = judged
    .filter(({ verdict, leftOut = false }) => verdict === 'does not fit' && !leftOut)
    .map(({ distance, reading, expected }) => {
      const band =
        expected === null ? '' : ` ${readWords(expected.low, unit)} to ${readWords(expected.high, unit)} was expected:`;
      return note(
        'does-not-fit',
        `The mark for ${farWords(distance)} reads ${readWords(reading, unit)} and does not fit the others;${band} shoot it in again.`,
      );
    });
  const unclear = judged.filter(({ verdict }) => verdict === 'one of these');
  if (unclear.length === 0) return notes;
  const names = together(unclear.map(({ distance }) => farWords(distance)));
  const blame =
    unclear.length === 2
      ? `neither can be blamed by itself: shoot both in again${judged.length === 2 ? ', or add a third' : ''}.`
      : 'none of them can be blamed by itself: shoot them in again.';
  return [...notes, note('one-of-these', `The marks for ${names} do not go together, and ${blame}`)];
}

/**
 * What a person must know of a fit of marks.
 *
 * @equation one mark: figures lead; marks that do not fit; a figure that they speak against; S ≥ 1.5: intervals wider; marks nearer than the turning distance
 * @param told - the fit without its notes [record]
 * @returns a note each, none when all is well [list]
 * @validity a fit that was made
 * @source own derivation
 * @example fitMarks(exampleMarks.slice(0, 1), exampleScale, examplePriors).value.notes.map(({ code }) => code) // ["one-mark"]
 */
export function markNotes(told: Told): Problem[] {
  const { marks, wider, figures } = told;
  const notes: Problem[] = [];
  if (marks.length === 1)
    notes.push(
      note(
        'one-mark',
        'With one mark all other readings rest on the figures of the bow and the arrow: shoot in a second one, far from it.',
      ),
    );
  else if (new Set(marks.map(({ distance }) => distance)).size === 1)
    notes.push(note('one-distance', 'All marks are for one distance: shoot in another one, far from it.'));
  const misfits = fitting(told);
  notes.push(...misfits);
  // A mark that is plainly wrong drags the figures along: first things first.
  const held = misfits.length > 0 ? null : heldAgainst(told);
  if (held !== null)
    notes.push(
      note(
        'against-figures',
        `The marks ask for ${held}: check that figure, the unit of the scale and which way its numbers grow.`,
      ),
    );
  if (wider >= 1.5)
    notes.push(
      note(
        'wider',
        `The marks${held === null ? '' : ', held against bow and arrow,'} scatter ${wider.toFixed(1)} times as wide as usual: every interval is wider by that.`,
      ),
    );
  // Figures that marks pull so far apart say nothing of where the readings turn.
  if (wider > 3) return notes;
  const turns = turningDistance(figures.speed.value, figures.k.value, figures.eyeHeight.value);
  const near = marks.filter(({ distance }) => distance < turns);
  if (near.length > 0)
    notes.push(
      note(
        'turning',
        `Nearer than about ${farWords(Math.round(turns))} the readings turn back, as the eye is above the arrow: ${near.length === marks.length ? 'all marks lie there' : `${countWord(near.length)} of the marks ${near.length === 1 ? 'lies' : 'lie'} there`}, and what they tell is the eye height more than the far readings.`,
      ),
    );
  return notes;
}
