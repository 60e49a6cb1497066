import { heightAndWidth, type HeightAndWidth, type Interval, type LeaningOval } from '../group/index.ts';
import { sources } from '../sources.ts';
import { acrossText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import { endsOf } from './ends.ts';
import type { Question, QuestionPage } from './question.ts';
import { manyText, pText, tableOf, unanswered } from './texts.ts';

const ASK = 'Is it round, tall, wide or leaning?';
const TEXT =
  'Height against width first, by a test that allows for an oval that leans; where that tells nothing, whether it is an oval in any direction. Both are freed of how the ends lie where they are noted. Few arrows can hardly tell: twelve show a true two to one in 59 of 100 groups, six in 27, so that no oval shown is not round.';
/** Nearer to upright or level than this an oval is called tall or wide and nothing else. */
const UPRIGHT = Math.PI / 12;
/** Ovals longer than this are lines to the eye. */
const LINE = 99;

/**
 * Whether a group is taller than wide, wider than tall, or an oval that leans.
 *
 * @equation heightAndWidth, end by end where every shot has its end; an oval in some other direction only where neither is told
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
  const tall = `${value.ratio.toFixed(2)} times as tall as wide (${timesText(value.leaningInterval)})`;
  const page = (): QuestionPage => shapePage(value, byEnds?.ok === true, units);
  const told = { id: 'shape', ask: ASK, page, state: 'yes', standing: 'act', tells: null } as const;
  const { oval } = value;
  const slant =
    oval.leanHalf !== null && Math.abs(Math.sin(2 * oval.lean)) > Math.sin(2 * UPRIGHT) ? ` It ${leanText(oval)}.` : '';
  if (value.verdict === 'taller') return { ...told, answer: `Taller than wide: ${tall}.${slant}` };
  if (value.verdict === 'wider') {
    const [low, high] = value.leaningInterval;
    const wide = `${(1 / value.ratio).toFixed(2)} times as wide as tall (${timesText([1 / high, 1 / low])})`;
    return { ...told, answer: `Wider than tall: ${wide}.${slant}` };
  }
  if (value.verdict === 'oval') {
    const long = `${longText(1 / oval.ratio)} times as long as wide (${oval.times.map(longText).join(' to ')})`;
    return { ...told, answer: `An oval that ${leanText(oval)}: ${long}. It is neither surely taller nor surely wider.` };
  }
  const hundred = Math.round(100 * value.findsTwoToOne);
  return {
    ...told,
    answer: `Round, as far as can be told: ${tall}.`,
    state: 'cannot tell',
    standing: 'open',
    tells:
      hundred >= 80
        ? `A true two to one would show in ${hundred} of 100 such groups, so it is not that oval.`
        : `A true two to one shows in only ${hundred} of 100 such groups${value.shotsNeeded === null ? '' : `; an oval as seen in about ${manyText(value.shotsNeeded, 'shot')}`}.`,
  };
}

const timesText = ([low, high]: Interval): string => `${low.toFixed(2)} to ${high.toFixed(2)}`;
const longText = (times: number): string => (times > LINE ? `more than ${LINE}` : times.toFixed(1));

/** From upright, which is what the eye reads a lean from. */
function leanText({ lean, leanHalf }: LeaningOval): string {
  const degrees = (angle: number): string => String(Math.round((180 / Math.PI) * angle));
  const within = leanHalf === null ? '' : ` \u00b1 ${degrees(leanHalf)}`;
  return `leans to the ${lean < 0 ? 'left' : 'right'} by ${degrees(Math.abs(lean))}${within} degrees from upright`;
}

function shapePage(value: HeightAndWidth, byEnds: boolean, units: Asked['units']): QuestionPage {
  return {
    tables: [
      tableOf(
        ['', 'figure', '95 %'],
        [
          ['height over width', value.ratio.toFixed(2), timesText(value.leaningInterval)],
          ['the same, if it does not lean', value.ratio.toFixed(2), timesText(value.interval)],
          ['spread in height', acrossText(value.vertical, units), ''],
          ['spread in width', acrossText(value.lateral, units), ''],
          ['long over short axis', longText(1 / value.oval.ratio), value.oval.times.map(longText).join(' to ')],
        ],
        [value.verdict === 'oval' ? 'long over short axis' : 'height over width'],
      ),
    ],
    notes: [
      byEnds
        ? 'Each end about its own centre.'
        : 'About the centre of the whole group: where the sight was moved or the group drifted, note the ends.',
      'One far shot makes an oval that points at it: ask first whether there is a flyer.',
      'Taller than wide points to the draw length, the bow hand’s height and unlike arrow speeds; wider than tall to the string hand, the line and the wind; an oval that leans to both at once, or to a canted bow (common practice).',
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
        { symbol: 'p', name: 'chance that round shots look so oval', value: pText(value.oval.p) },
        { symbol: '', name: 'chance that a true two to one is found', value: `${Math.round(100 * value.findsTwoToOne)} in 100` },
      ],
      source: sources['pitman-1939'],
    },
  };
}
