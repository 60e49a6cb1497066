import { groupMeasures, inOneHole, sameDistance, tighterGroup, type Interval, type Tighter } from '../group/index.ts';
import { counted, type ShotGroup } from '../model/group.ts';
import { refuse, type Result } from '../model/problem.ts';
import { sources } from '../sources.ts';
import { acrossText } from '../trials/words.ts';
import { groupNames } from './groupNames.ts';
import { againstUsual, type AgainstUsual } from './againstUsual.ts';
import type { Asked } from './asked.ts';
import type { PlotRow, Question, QuestionPage } from './question.ts';
import { betweenText, manyText, meanRadiusOf, meanRadiusOfMany, pText, tableOf, unanswered } from './texts.ts';

/** More rows than this are no picture; the table has them all. */
const MOST_DRAWN = 24;
const ASK = 'Is it tighter or wider than before?';
const TEXT =
  'The spread of this group over that of the group beside it, or of the archer’s earlier groups shot alike. Spreads are told apart slowly: six arrows against six find only a group of about a quarter of the width, and an unchanged bow shows one a fifth tighter in 25 of 100 comparisons. Two groups are decided by a test that keeps its level for ovals and heavy tails.';

interface Compared {
  readonly than: string;
  readonly ratio: number;
  readonly interval: readonly [low: number, high: number | null];
  readonly p: number;
  readonly verdict: 'tighter' | 'looser' | 'cannot tell';
  readonly finds: number | null;
  readonly arrows: number | null;
  readonly two: Tighter | null;
}

const ofTwo = (than: string, two: Tighter): Compared => ({ ...two, than, two });
const ofMany = (count: number, value: AgainstUsual): Compared => ({
  ...value,
  than: `${count} earlier groups`,
  arrows: null,
  two: null,
});

/** Of all that may be spoken of: a day is no name where another group has it too. */
const namesFor = ({ group, beside, others }: Asked) => groupNames([...others, ...(beside === null ? [] : [beside]), group]);

/** Against the group beside it when that was shot at the same thing; else against the history, or the last group of it. */
function compare({ group, beside, shots, history, usual }: Asked, names: ReadonlyMap<string, string>): Result<Compared> {
  const alike = beside !== null && beside.fletching === group.fletching && sameDistance(beside, group);
  const last = history.at(-1);
  const map = (name: string, other: ShotGroup): Result<Compared> => {
    // The later one is the new one, whichever is asked about; the sentence speaks of the group that is asked about.
    const found = tighterGroup(counted(other), shots);
    return found.ok ? { ok: true, value: ofTwo(name, found.value) } : found;
  };
  if (alike) return map('the group beside it', beside);
  if (usual.ok) {
    const found = againstUsual(shots, usual.value);
    return found.ok ? { ok: true, value: ofMany(history.length, found.value) } : found;
  }
  if (last !== undefined) return map(`the group of ${names.get(last.id) ?? ''}`, last);
  return refuse(
    'nothing-before',
    'There is no earlier group of these arrows, this form and this distance: put one beside it, or shoot on.',
  );
}

/**
 * Whether a group is tighter or wider than the one beside it, or than the archer's earlier ones.
 *
 * @equation tighterGroup against the group beside it; else againstUsual; else tighterGroup against the last one shot alike
 * @param asked - the group made ready [record]
 * @returns the question with its answer and its power [record]
 * @validity as those
 * @source levene-1960; smyth-2004
 * @example tighterQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "cannot tell"
 */
export function tighterQuestion(asked: Asked): Question {
  const names = namesFor(asked);
  const found = compare(asked, names);
  if (!found.ok) return unanswered('tighter', ASK, found.problem, TEXT);
  const value = found.value;
  const high = value.interval[1];
  const range = `${value.interval[0].toFixed(2)} to ${high === null ? 'any' : high.toFixed(2)}`;
  const times = `${value.ratio.toFixed(2)} times the spread of ${value.than} (${range})`;
  const base = { id: 'tighter', ask: ASK, page: () => tighterPage(asked, value, range, names) } as const;
  if (value.verdict === 'tighter')
    return { ...base, answer: `Tighter: ${times}.`, state: 'yes', standing: 'figure', tells: null };
  if (value.verdict === 'looser') return { ...base, answer: `Wider: ${times}.`, state: 'yes', standing: 'act', tells: null };
  const power =
    value.finds === null ? '' : `${manyText(asked.shots.length, 'shot')} show only ${value.finds.toFixed(2)} times or less. `;
  return {
    ...base,
    answer: `Cannot tell: ${times}.`,
    state: 'cannot tell',
    standing: 'open',
    tells:
      `${power}${value.arrows === null ? '' : `About ${manyText(value.arrows, 'arrow')} in each group would settle what is seen.`}`.trim() ||
      null,
  };
}

function tighterPage(asked: Asked, value: Compared, range: string, names: ReadonlyMap<string, string>): QuestionPage {
  const { units, history, group, beside } = asked;
  const listed = [...history, ...(beside !== null && value.than === 'the group beside it' ? [beside] : []), group];
  const rows = [...new Map(listed.map((one) => [one.id, one])).values()].flatMap((one): (PlotRow & { shots: number })[] => {
    const shots = counted(one);
    const measured = inOneHole(shots) ? null : groupMeasures(shots);
    if (measured?.ok !== true) return [];
    const size = meanRadiusOfMany(measured.value);
    const name = one.id === group.id ? 'this group' : one.id === beside?.id ? 'beside it' : (names.get(one.id) ?? '');
    return [{ name, value: size.value, interval: size.interval, strong: one.id === group.id, shots: shots.length }];
  });
  const usual = asked.usual.ok ? meanRadiusOf({ value: Math.sqrt(asked.usual.value.variance), interval: [0, 0] }).value : null;
  return {
    tables: [
      tableOf(
        ['', 'shots', 'mean radius of many', '95 %'],
        rows.map((row) => [
          row.name,
          String(row.shots),
          acrossText(row.value, units),
          betweenText(row.interval ?? [row.value, row.value], units),
        ]),
        ['this group'],
      ),
    ],
    notes: [
      `${value.ratio.toFixed(2)} times ${value.than}, ${range}, p ${pText(value.p)}.`,
      ...(value.two === null
        ? []
        : [
            `By the standard deviations, which trust the shots to be round and normal: ${value.two.roundRatio.toFixed(2)} times, ${ends(value.two.roundInterval)}. An unchanged bow shows a ratio this far off in ${Math.round(100 * value.two.chance)} of 100.`,
          ]),
      ...(usual === null ? [] : [`The usual mean radius of the earlier groups is ${acrossText(usual, units)}.`]),
    ],
    plot: {
      kind: 'rows',
      sentence: `Mean radius of ${manyText(rows.length, 'group')} with 95 % bars, oldest first${usual === null ? '' : `; usual ${acrossText(usual, units)}`}.`,
      of: 'length',
      panels: [{ title: 'mean radius', rows: rows.slice(-MOST_DRAWN), against: usual }],
    },
    why: {
      title: ASK,
      text: TEXT,
      equation: value.two === null ? 'F = s² / s₀² ~ F(2 (n − 1), ν₀)' : 't of the Helmert lengths of both groups',
      symbols: [
        { symbol: 's/s₀', name: 'spread over that before', value: value.ratio.toFixed(2) },
        { symbol: 'p', name: 'chance alone, both ways', value: pText(value.p) },
        ...(value.finds === null
          ? []
          : [{ symbol: '', name: 'found four times in five: so many times or less', value: value.finds.toFixed(2) }]),
      ],
      source: value.two === null ? sources['smyth-2004'] : sources['levene-1960'],
    },
  };
}

const ends = ([low, high]: Interval): string => `${low.toFixed(2)} to ${high.toFixed(2)}`;
