import { heightAndWidth, type HeightAndWidth } from '../group/index.ts';
import { sources } from '../sources.ts';
import { acrossText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import { endsOf } from './ends.ts';
import type { Question, QuestionPage } from './question.ts';
import { manyText, pText, tableOf, unanswered } from './texts.ts';

const ASK = 'Is it taller than wide?';
const TEXT =
  'Height against width, freed of how the ends lie where they are noted. Few arrows can hardly tell: twelve show a true two to one in 59 of 100 groups, six in 27. Cannot tell is not round. The deciding test allows for an oval that leans.';

/**
 * Whether a group is taller than wide, or wider than tall.
 *
 * @equation heightAndWidth, end by end where every shot has its end
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as heightAndWidth
 * @source pitman-1939
 * @example shapeQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "cannot tell"
 */
export function shapeQuestion({ shots, units }: Asked): Question {
  const ends = endsOf(shots);
  const whole = ends.reduce((sum, end) => sum + end.shots.length, 0) === shots.length;
  const byEnds = whole && ends.some((end) => end.shots.length > 1) ? heightAndWidth(ends.map((end) => end.shots)) : null;
  // Ends of one or two leave too little: then the group as it lies.
  const found = byEnds?.ok === true ? byEnds : heightAndWidth([shots]);
  if (!found.ok) return unanswered('shape', ASK, found.problem, TEXT);
  const value = found.value;
  const [low, high] = value.interval;
  const times = `${value.ratio.toFixed(2)} times as tall as wide (${low.toFixed(2)} to ${high.toFixed(2)})`;
  const page = (): QuestionPage => shapePage(value, byEnds?.ok === true, units);
  const base = { id: 'shape', ask: ASK, page } as const;
  if (value.verdict === 'taller') return { ...base, answer: `Yes: ${times}.`, state: 'yes', standing: 'act', tells: null };
  if (value.verdict === 'wider')
    return { ...base, answer: `No, wider than tall: ${times}.`, state: 'no', standing: 'act', tells: null };
  const hundred = Math.round(100 * value.findsTwoToOne);
  return {
    ...base,
    answer: `Cannot tell: ${times}.`,
    state: 'cannot tell',
    standing: 'open',
    tells:
      hundred >= 80
        ? `A true two to one would show in ${hundred} of 100 such groups, so it is not that oval.`
        : `A true two to one shows in only ${hundred} of 100 such groups${value.shotsNeeded === null ? '' : `; an oval as seen in about ${manyText(value.shotsNeeded, 'shot')}`}.`,
  };
}

function shapePage(value: HeightAndWidth, byEnds: boolean, units: Asked['units']): QuestionPage {
  return {
    tables: [
      tableOf(
        ['', 'figure', '95 %'],
        [
          ['height over width', value.ratio.toFixed(2), value.interval.map((end) => end.toFixed(2)).join(' to ')],
          ['spread in height', acrossText(value.vertical, units), ''],
          ['spread in width', acrossText(value.lateral, units), ''],
          ['short over long axis, any lean', value.oval.ratio.toFixed(2), `p ${pText(value.oval.p)}`],
        ],
        ['height over width'],
      ),
    ],
    notes: [
      byEnds
        ? 'Each end about its own centre.'
        : 'About the centre of the whole group: where the sight was moved or the group drifted, note the ends.',
      'Taller than wide points to the draw length, the bow hand’s height and unlike arrow speeds; wider than tall to the string hand, the line and the wind (common practice).',
    ],
    plot: null,
    why: {
      title: ASK,
      text: TEXT,
      equation: 't = r √((ν − 1)/(1 − r²)), r the correlation of x + y with x − y',
      symbols: [
        { symbol: 'S_yy/S_xx', name: 'height over width, squared', value: (value.ratio ** 2).toFixed(2) },
        { symbol: 'ν', name: 'degrees of freedom of each axis', value: String(value.df) },
        { symbol: 'p', name: 'chance alone, leaning ovals allowed', value: pText(value.leaningP) },
        { symbol: '', name: 'chance that a true two to one is found', value: `${Math.round(100 * value.findsTwoToOne)} in 100` },
      ],
      source: sources['pitman-1939'],
    },
  };
}
