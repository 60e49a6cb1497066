import { angleAt, groupMeasures, offAim, MEAN_RADIUS_PER_SPREAD, type OffAim } from '../group/index.ts';
import { sources } from '../sources.ts';
import { acrossText, mainParts, plusMinusText, whereWords } from '../trials/words.ts';
import { moreOnAim } from './arrowsOnAim.ts';
import type { Asked } from './asked.ts';
import type { Question, QuestionPage } from './question.ts';
import { angleText, betweenText, manyText, pText, tableOf, unanswered } from './texts.ts';

const ASK = 'Is it on the aim?';
const AIM = { x: 0, y: 0 };
const TEXT =
  'The distance of the group’s centre from the middle of the face, against what chance alone does with so many arrows of this scatter. The distance is counted as told when chance would do it less than once in 20. On the aim means: even the far end of the interval is nearer than one mean radius.';

/**
 * Whether a group lies on the aim, and how far off.
 *
 * @equation offAim about the middle of the face; on the aim when the far end of the interval that allows for ovals is within one mean radius
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as offAim; shot at the middle of the face
 * @source jcgm-101; own derivation
 * @example aimQuestion(asked({ group: exampleBare, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "no"
 */
export function aimQuestion({ shots, group, units }: Asked): Question {
  const measured = groupMeasures(shots);
  const off = measured.ok ? offAim(shots, AIM) : measured;
  if (!measured.ok || !off.ok) return unanswered('aim', ASK, off.ok ? { code: '', sentence: '' } : off.problem, TEXT);
  const { dx, dy, interval, ovalInterval, told, distance } = off.value;
  const { spread, centre, axisHalf } = measured.value;
  const matters = MEAN_RADIUS_PER_SPREAD * spread;
  const near = !told && ovalInterval[1] <= matters;
  const where = whereWords(dx, dy, mainParts(dx, dy), 'the aim', units);
  const between = betweenText(interval, units);
  const page = (): QuestionPage => ({
    tables: [
      tableOf(
        ['', 'figure', 'angle'],
        [
          ['off the aim', acrossText(distance, units), angleText(angleAt(distance, group.context.distance), units)],
          ['95 %, round', between, ''],
          ['95 %, oval allowed', betweenText(ovalInterval, units), ''],
          ['across', plusMinusText(centre.x, axisHalf.x, units), ''],
          ['up', plusMinusText(centre.y, axisHalf.y, units), ''],
          ['freed of scatter', acrossText(off.value.freed, units), ''],
        ],
        ['off the aim'],
      ),
    ],
    notes: [
      'The sight is moved by the whole distance only when it is told; a centre that chance alone explains is left.',
      `What matters here: one mean radius, ${acrossText(matters, units)}.`,
    ],
    plot: null,
    why: whyOff(off.value, shots.length, spread, units),
  });
  const base = { id: 'aim', ask: ASK, page } as const;
  if (told) return { ...base, answer: `No: ${where} (${between} off).`, state: 'no', standing: 'act', tells: null };
  if (near)
    return {
      ...base,
      answer: `As far as can be told: no farther off than ${acrossText(ovalInterval[1], units)}.`,
      state: 'yes',
      standing: 'clear',
      tells: null,
    };
  const more = moreOnAim(shots.length, distance / spread, matters / spread);
  return {
    ...base,
    answer: `Cannot tell: ${where} (${between} off).`,
    state: 'cannot tell',
    standing: 'open',
    tells: `About ${manyText(more, 'more shot')} would settle it, if it stays as seen.`,
  };
}

function whyOff(off: OffAim, n: number, spread: number, units: Asked['units']): QuestionPage['why'] {
  const line = (symbol: string, name: string, value: string) => ({ symbol, name, value });
  return {
    title: ASK,
    text: TEXT,
    equation: 'F = n d² / (2 s²) ~ F(1/c, (n − 1)/c)',
    symbols: [
      line('n', 'shots', String(n)),
      line('d', 'distance of the centre from the aim', acrossText(off.distance, units)),
      line('s', 'spread of one axis', acrossText(spread, units)),
      line('p', 'chance alone', pText(off.p)),
    ],
    source: sources['jcgm-101'],
  };
}
