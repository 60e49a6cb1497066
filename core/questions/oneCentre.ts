import { groupMeasures, severalCentres, type SeveralCentres } from '../group/index.ts';
import { counted, type ShotGroup } from '../model/group.ts';
import { refuse } from '../model/problem.ts';
import { sources } from '../sources.ts';
import { acrossText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import { groupNames } from './groupNames.ts';
import type { Question, QuestionPage } from './question.ts';
import { pText, tableOf, unanswered } from './texts.ts';

const ASK = 'Do the groups share one centre?';
/** The last so many: what was a year ago says little of one sight. */
const MOST_GROUPS = 12;
const TEXT =
  'All groups shot alike at once, whatever their spreads and sizes: do their centres differ more than their own scatter explains? That they differ does not say which, nor why: the sight is not on record, and settings that were turned are.';

/**
 * Whether the last groups that were shot alike share one centre.
 *
 * @equation severalCentres of this group and at most eleven earlier ones shot alike
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as severalCentres
 * @source brown-forsythe-1974
 * @example oneCentreQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "cannot tell"
 */
export function oneCentreQuestion({ group, history, shots, units, walkBack }: Asked): Question {
  const measured = groupMeasures(shots);
  if (!measured.ok) return unanswered('one centre', ASK, measured.problem, TEXT);
  // A walk-back keeps one sight setting at all distances: its centres are of another aim.
  const before = history.filter(({ id }) => walkBack?.has(id) !== true);
  const groups = [...before.slice(1 - MOST_GROUPS), group];
  if (groups.length < 2)
    return unanswered(
      'one centre',
      ASK,
      refuse('alone', 'There is no earlier group shot alike to hold it against.').problem,
      TEXT,
    );
  const found = severalCentres(groups.map((one) => (one.id === group.id ? shots : counted(one))));
  if (!found.ok) return unanswered('one centre', ASK, found.problem, TEXT);
  const value = found.value;
  const farthest = value.centres.reduce(
    (most, { x, y }) => Math.max(most, Math.hypot(x - value.common.x, y - value.common.y)),
    0,
  );
  const page = (): QuestionPage => centresPage(groups, value, farthest, units);
  const base = { id: 'one centre', ask: ASK, page } as const;
  const told = `${groups.length} groups, the farthest ${acrossText(farthest, units)} off their mean, p ${pText(value.p)}`;
  return value.verdict === 'differ'
    ? { ...base, answer: `No: ${told}.`, state: 'no', standing: 'act', tells: null }
    : {
        ...base,
        answer: `No difference shown: ${told}.`,
        state: 'cannot tell',
        standing: 'clear',
        tells: null,
      };
}

function centresPage(groups: readonly ShotGroup[], value: SeveralCentres, farthest: number, units: Asked['units']): QuestionPage {
  const settings = new Set(groups.map(({ context }) => JSON.stringify(context.settings)));
  const names = groupNames(groups);
  const rows = groups.map((one, i) => {
    const measured = groupMeasures(counted(one));
    const centre = value.centres[i] ?? value.common;
    return {
      name: i === groups.length - 1 ? 'this group' : (names.get(one.id) ?? ''),
      at: { x: centre.x - value.common.x, y: centre.y - value.common.y },
      radius: measured.ok ? measured.value.centreRadius : 0,
      shots: counted(one).length,
      strong: i === groups.length - 1,
    };
  });
  return {
    tables: [
      tableOf(
        ['', 'shots', 'off the mean', '95 % circle'],
        rows.map(({ name, shots, at, radius }) => [
          name,
          String(shots),
          acrossText(Math.hypot(at.x, at.y), units),
          acrossText(radius, units),
        ]),
        ['this group'],
      ),
    ],
    notes: [
      settings.size > 1
        ? `Settings were turned between them: ${settings.size} states of the bow.`
        : 'The settings were the same for all of them.',
    ],
    plot: {
      kind: 'places',
      sentence: `The centres of ${groups.length} groups about their common mean, with 95 % circles: the farthest ${acrossText(farthest, units)} off.`,
      origin: 'mean of all',
      places: rows,
    },
    why: {
      title: ASK,
      text: TEXT,
      equation: 'F = Σ n |x̄ᵢ − x̄|² / (2 Σ (1 − nᵢ/N) sᵢ²)',
      symbols: [
        { symbol: 'F', name: 'test figure', value: value.f.toPrecision(3) },
        { symbol: 'p', name: 'chance alone', value: pText(value.p) },
        { symbol: 'c', name: 'shape, ½ round to 1 a line', value: value.shape.toFixed(2) },
        { symbol: '', name: 'plain test beside it, p', value: pText(value.plain.p) },
      ],
      source: sources['brown-forsythe-1974'],
    },
  };
}
