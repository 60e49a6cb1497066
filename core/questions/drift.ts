import { driftOverEnds, fQuantileUpper, noncentralFUpperTail, tQuantile, type Drift } from '../group/index.ts';
import { leastWhole } from '../group/search.ts';
import { refuse } from '../model/problem.ts';
import { sources } from '../sources.ts';
import { acrossText, mainParts, plusMinusText, whereWords } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import { endsOf } from './ends.ts';
import type { PlotRow, Question, QuestionPage } from './question.ts';
import { manyText, pText, tableOf, unanswered } from './texts.ts';

const ASK = 'Did it drift over the ends?';
/** A page of more rows than this is no picture. */
const MOST_ROWS = 24;
const TEXT =
  'A straight line through the centres of the ends, on both axes at once, against the scatter within the ends. Where the ends wander more than their own shots explain, the drift must show against that too. No sign means: even the largest drift that fits is less than one mean radius from first end to last.';

/**
 * Whether the centre drifted from end to end.
 *
 * @equation driftOverEnds of the shots that have their end
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as driftOverEnds; the sight must not have been moved between
 * @source draper-smith-1998
 * @example driftQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "cannot tell"
 */
export function driftQuestion({ shots, units }: Asked): Question {
  const ends = endsOf(shots);
  const noted = ends.length > 0;
  const found = noted
    ? driftOverEnds(byNumber(ends))
    : refuse('no-ends', 'Note which end each shot belongs to: with two ends or more, better six, it can be asked.');
  if (!found.ok) return unanswered('drift', ASK, found.problem, TEXT);
  const value = found.value;
  const span = value.total / Math.max(Math.hypot(value.perEnd.x, value.perEnd.y), 1e-12);
  const [dx, dy] = [value.perEnd.x * span, value.perEnd.y * span];
  const where = whereWords(dx, dy, mainParts(dx, dy), 'the first end', units);
  const page = (): QuestionPage => driftPage(ends, value, units);
  const base = { id: 'drift', ask: ASK, page } as const;
  if (value.verdict === 'real')
    return {
      ...base,
      answer: `Yes: the last of ${value.ends} ends lies ${where}, give or take ${acrossText(value.radius * span, units)}.`,
      state: 'yes',
      standing: 'act',
      tells: null,
    };
  if (value.verdict === 'no sign')
    return {
      ...base,
      answer: `No sign: at most ${acrossText(value.largest, units)} over ${value.ends} ends.`,
      state: 'no',
      standing: 'clear',
      tells: null,
    };
  const wander = value.wander !== null && value.wander.p < 0.05;
  return {
    ...base,
    answer: wander
      ? `No steady drift, but the ends wander more than their shots explain, p ${pText(value.wander?.p ?? 1)}.`
      : `Cannot tell: ${acrossText(value.total, units)} over ${value.ends} ends, and up to ${acrossText(value.largest, units)} fits.`,
    state: 'cannot tell',
    standing: wander ? 'act' : 'open',
    tells: wander
      ? 'Light, wind, tiredness or the sight may differ from end to end: note it with the group.'
      : moreEnds(value, shots.length / value.ends),
  };
}

const MANY = 1000;

/** Ends like these until a drift that goes on as seen is found four times in five: its squares grow with the cube of the ends. */
function moreEnds({ f, ends }: Drift, shotsEach: number): string {
  const each = Math.max(2, shotsEach);
  const lever = (m: number): number => m * (m * m - 1);
  const needed = leastWhole(ends + 1, MANY + 1, (m) => {
    const df = 2 * m * (each - 1);
    return noncentralFUpperTail(fQuantileUpper(0.05, 2, df), 2, df, (2 * f * lever(m)) / lever(ends)) >= 0.8;
  });
  return needed > MANY
    ? 'Hardly any drift is seen: more ends would only narrow what fits.'
    : `About ${manyText(needed - ends, 'more end')} would show it, if it goes on as seen.`;
}

/** Places by the number of the end; an end that is missing keeps its place in time. */
function byNumber(ends: ReturnType<typeof endsOf>): Asked['shots'][] {
  const [first, last] = [ends[0]?.end ?? 1, ends.at(-1)?.end ?? 1];
  const known = new Map(ends.map(({ end, shots }) => [end, shots]));
  return Array.from({ length: last - first + 1 }, (_, i) => known.get(first + i) ?? []);
}

function driftPage(ends: ReturnType<typeof endsOf>, value: Drift, units: Asked['units']): QuestionPage {
  const step = Math.ceil(ends.length / MOST_ROWS);
  const shown = ends.filter((_, i) => i % step === 0);
  const nu = ends.reduce((sum, { shots }) => sum + shots.length - 1, 0);
  const rows = (axis: 'x' | 'y'): PlotRow[] => {
    const error = Math.sqrt(within(ends, axis) / nu);
    return shown.map(({ end, shots }) => {
      const mean = shots.reduce((sum, shot) => sum + shot[axis], 0) / shots.length;
      const half = (tQuantile(0.975, nu) * error) / Math.sqrt(shots.length);
      return { name: `end ${end}`, value: mean, interval: [mean - half, mean + half], strong: false };
    });
  };
  const [across, up] = [rows('x'), rows('y')];
  const half = (row: PlotRow | undefined): number => (row?.interval == null ? 0 : row.interval[1] - row.value);
  return {
    tables: [
      tableOf(
        ['', 'shots', 'across', 'up'],
        shown.map(({ end, shots }, i) => [
          `end ${end}`,
          String(shots.length),
          plusMinusText(across[i]?.value ?? 0, half(across[i]), units),
          plusMinusText(up[i]?.value ?? 0, half(up[i]), units),
        ]),
      ),
    ],
    notes: [
      `Drift an end: ${plusMinusText(value.perEnd.x, value.radius, units)} across, ${plusMinusText(value.perEnd.y, value.radius, units)} up.`,
      ...(step > 1 ? [`Every ${step}th of ${ends.length} ends is listed; all count.`] : []),
    ],
    plot: {
      kind: 'rows',
      sentence: `The centre of each end across and up, with 95 % bars: ${acrossText(value.total, units)} from first end to last.`,
      of: 'length',
      panels: [
        { title: 'across', rows: across, against: 0 },
        { title: 'up', rows: up, against: 0 },
      ],
    },
    why: {
      title: ASK,
      text: TEXT,
      equation: 'F = |b|² S / (2 s²), b = Σ n (t − t̄) c / S',
      symbols: [
        { symbol: '|b|', name: 'drift an end', value: acrossText(Math.hypot(value.perEnd.x, value.perEnd.y), units) },
        { symbol: 'F', name: 'test figure', value: value.f.toPrecision(3) },
        { symbol: 'p', name: 'chance alone', value: pText(value.p) },
        ...(value.wander === null
          ? []
          : [{ symbol: '', name: 'ends wander more than their shots explain, p', value: pText(value.wander.p) }]),
        { symbol: '', name: 'what matters over all ends', value: acrossText(value.matters, units) },
      ],
      source: sources['draper-smith-1998'],
    },
  };
}

/** Squares within the ends, on one axis. */
function within(ends: ReturnType<typeof endsOf>, axis: 'x' | 'y'): number {
  return ends.reduce((sum, { shots }) => {
    const mean = shots.reduce((total, shot) => total + shot[axis], 0) / shots.length;
    return sum + shots.reduce((total, shot) => total + (shot[axis] - mean) ** 2, 0);
  }, 0);
}
