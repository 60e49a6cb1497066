import { MEAN_RADIUS_PER_SPREAD, type GroupMeasures, type Interval, type Length } from '../group/index.ts';
import type { Shot } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Problem } from '../model/problem.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import { acrossText, countText } from '../trials/words.ts';
import type { Question, QuestionId, QuestionPage, QuestionTable } from './question.ts';

/**
 * Both ends of an interval on the face.
 *
 * @equation low, "to", high, unit; as coarse as shots are placed
 * @param interval - the two ends [m]
 * @param units - the person's choice of units [record]
 * @returns for instance "19 to 46 mm" [text]
 * @validity finite ends
 * @source own derivation
 * @example betweenText([0.0192, 0.0461], defaultPreferences.units) // "19 to 46 mm"
 */
export function betweenText(interval: Interval, units: UnitChoice): string {
  const [low, high] = interval;
  const digits = units.setting === 'mm' ? 0 : 1;
  return `${showQuantity(low, 'setting', units, { digits }).figure} to ${acrossText(high, units)}`;
}

/**
 * A length with its interval, for a sentence.
 *
 * @equation value, then both ends
 * @param length - the length and its 95 % interval [record]
 * @param units - the person's choice of units [record]
 * @returns for instance "29 mm (19 to 46 mm)" [text]
 * @validity finite lengths
 * @source own derivation
 * @example lengthText({ value: 0.0291, interval: [0.0192, 0.0461] }, defaultPreferences.units) // "29 mm (19 to 46 mm)"
 */
export function lengthText({ value, interval }: Length, units: UnitChoice): string {
  return `${acrossText(value, units)} (${betweenText(interval, units)})`;
}

/**
 * The mean radius of very many shots, by the spread of a few.
 *
 * @equation spread of one axis and its interval, both times √(π/2)
 * @param measures - the figures of the group [record]
 * @returns mean radius and its interval [record]
 * @validity round normal shots, two or more
 * @source grubbs-1964
 * @example meanRadiusOfMany(groupMeasures([{ x: 0, y: 0 }, { x: 0.03, y: 0.04 }]).value).value // 0.035355339059327376
 */
export function meanRadiusOfMany({ meanRadiusOfMany: value, meanRadiusInterval }: GroupMeasures): Length {
  return { value, interval: meanRadiusInterval };
}

/**
 * A mean radius of very many shots from the spread of one axis.
 *
 * @equation √(π/2) σ, and so for both ends
 * @param spread - σ and its interval [record]
 * @returns mean radius and its interval [record]
 * @validity round normal shots
 * @source grubbs-1964
 * @example meanRadiusOf({ value: 1, interval: [0, 1] }).value // 1.2533141373155001
 */
export function meanRadiusOf({ value, interval: [low, high] }: Length): Length {
  const k = MEAN_RADIUS_PER_SPREAD;
  return { value: k * value, interval: [k * low, k * high] };
}

/**
 * An angle at the archer, fine enough for groups.
 *
 * @equation degrees with three decimals
 * @param angle - the angle [rad]
 * @param units - the person's choice of units [record]
 * @returns for instance "0.092°" [text]
 * @validity finite angles
 * @source own derivation
 * @example angleText(0.0016, defaultPreferences.units) // "0.092°"
 */
export function angleText(angle: number, units: UnitChoice): string {
  return textQuantity(angle, 'angle', units, { digits: 3 });
}

/**
 * So many of a thing.
 *
 * @equation the count, and the word with an s but for one
 * @param count - how many [-]
 * @param word - what, one of them [text]
 * @returns for instance "1 shot", "12 shots" [text]
 * @validity words that take an s
 * @source own derivation
 * @example manyText(12, 'shot') // "12 shots"
 */
export function manyText(count: number, word: string): string {
  return `${countText(count)} ${word}${count === 1 ? '' : 's'}`;
}

/**
 * What a shot is called, as on the face.
 *
 * @equation by its arrow's number, else by its order in its end; then its end, and its place in the list where another shot has the same name
 * @param shot - the shot [record]
 * @param shots - all shots of its group, those left out too [list]
 * @returns for instance "arrow 3", "shot 3 of end 2" [text]
 * @validity any shot of the list
 * @source own derivation
 * @example shotName(exampleFletched.shots[2], exampleFletched.shots) // "arrow 3"
 */
export function shotName(shot: Shot, shots: readonly Shot[]): string {
  const inEnd = shots.filter(({ end }) => end === shot.end);
  const own = shot.arrow === null ? `shot ${inEnd.indexOf(shot) + 1}` : `arrow ${shot.arrow}`;
  const twin = shot.arrow !== null && inEnd.some((other) => other !== shot && other.arrow === shot.arrow);
  return `${own}${shot.end === null ? '' : ` of end ${shot.end}`}${twin ? ` (shot ${inEnd.indexOf(shot) + 1})` : ''}`;
}

/**
 * A p value as people read it.
 *
 * @equation two figures, never below 0.0001
 * @param p - the chance [-]
 * @returns for instance "0.032" [text]
 * @validity 0 up to 1
 * @source own derivation
 * @example pText(0.0321) // "0.032"
 */
export function pText(p: number): string {
  return p < 1e-4 ? 'below 0.0001' : String(Number(p.toPrecision(2)));
}

/**
 * A table of texts.
 *
 * @equation head, and rows of which those whose first cell is named answer the question
 * @param head - over the columns [list]
 * @param rows - the cells, row by row [list]
 * @param answers - first cells of the rows that answer the question [list]
 * @returns the table [record]
 * @validity any texts
 * @source own derivation
 * @example tableOf(['', 'figure'], [['arrows', '6']], ['arrows']).rows[0].answer // true
 */
export function tableOf(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  answers: readonly string[] = [],
): QuestionTable {
  return { head, rows: rows.map((cells) => ({ cells, answer: answers.includes(cells[0] ?? '') })) };
}

/**
 * A question that these shots do not answer.
 *
 * @equation the refusal's sentence says what to do
 * @param id - which question [choice]
 * @param ask - the question [text]
 * @param problem - why there is no answer [record]
 * @param text - the rule in words, for its page [text]
 * @returns the question, left open [record]
 * @validity any refusal
 * @source own derivation
 * @example unanswered('aim', 'Is it on the aim?', { code: 'one-shot', sentence: 'Shoot more.' }, '').tells // "Shoot more."
 */
export function unanswered(id: QuestionId, ask: string, problem: Problem, text: string): Question {
  const page = (): QuestionPage => ({
    tables: [],
    notes: [],
    plot: null,
    why: { title: ask, text, equation: null, symbols: [], source: 'own derivation' },
  });
  return { id, ask, answer: 'Cannot tell yet.', state: 'cannot tell', standing: 'open', tells: problem.sentence, page };
}
