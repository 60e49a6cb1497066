import { flyersOf, type Flyers, type GroupMeasures } from '../group/index.ts';
import { sources } from '../sources.ts';
import { acrossText, countText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import { pastSpread } from './history.ts';
import type { Question, QuestionPage } from './question.ts';
import { betweenText, pText, shotName, tableOf, unanswered } from './texts.ts';

const ASK = 'Is there a flyer?';
/** More rows than this say nothing. */
const MOST_ROWS = 12;
const MOST_NAMED = 3;
/** Below this no scatter is known well enough for a figure. */
const RAREST = 1e-6;
const TEXT =
  'Each shot’s distance from the centre, against the spread of the archer’s earlier groups shot alike; the group’s own few shots judge only where there are fewer than three of those, and then badly: two flyers together hide each other. A shot stands out when chance puts the farthest of so many that far out in fewer than 1 of 20 groups. None is dropped: leaving one out takes a person and a reason.';

/**
 * Whether a shot stands out from the group.
 *
 * @equation flyersOf against the usual spread of the earlier groups, else against these shots
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as flyersOf
 * @source own derivation
 * @example flyerQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "no"
 */
export function flyerQuestion({ group, shots, usual, history, units }: Asked): Question {
  const found = flyersOf(shots, pastSpread(usual));
  if (!found.ok) return unanswered('flyer', ASK, found.problem, TEXT);
  const judged = found.value;
  const flyers = judged.shots.filter(({ flyer }) => flyer);
  const far = judged.shots.reduce((most, shot) => (shot.distance > most.distance ? shot : most));
  const name = (index: number): string => {
    const shot = shots[index];
    return shot === undefined ? '' : shotName(shot, group.shots);
  };
  const by = judged.by === 'history' ? `by ${history.length} earlier groups` : 'by these shots alone';
  const page = (): QuestionPage => flyerPage(judged, name, by, units);
  const base = { id: 'flyer', ask: ASK, page } as const;
  const at = `${acrossText(far.distance, units)} from the centre`;
  // Of n shots the farthest is this far out in about n p of the groups.
  const chance = Math.min(1, far.p * shots.length);
  const often =
    chance > 0.5
      ? 'Most groups have one so far out'
      : `Chance alone puts one so far out in ${chance < RAREST ? 'fewer than' : 'about'} 1 of ${countText(1 / Math.max(chance, RAREST))} such groups`;
  if (flyers.length > 0) {
    const named = flyers.slice(0, MOST_NAMED).map(({ index }) => ({ shot: shots[index]?.id ?? 0, name: name(index) }));
    const more = flyers.length > MOST_NAMED ? ` and ${countText(flyers.length - MOST_NAMED)} more` : '';
    const farthest = flyers.length > 1 ? 'the farthest ' : '';
    return {
      ...base,
      answer: `Yes, ${named.map((one) => one.name).join(', ')}${more}: ${farthest}${at}. ${often}, judged ${by}.`,
      state: 'yes',
      standing: 'act',
      tells: `${flyers.length > 1 ? 'They count' : 'It counts'} until somebody leaves ${flyers.length > 1 ? 'them' : 'it'} out with a reason; both figures are shown.`,
      named,
    };
  }
  return {
    ...base,
    answer: `None shown: ${name(far.index)} is farthest, ${at}. ${often}.`,
    state: 'no',
    standing: 'clear',
    tells:
      judged.by === 'history'
        ? null
        : 'Judged by these shots alone, which tell little of it: three earlier groups of the same arrows and distance would tell far more.',
  };
}

function flyerPage(judged: Flyers, name: (index: number) => string, by: string, units: Asked['units']): QuestionPage {
  const order = [...judged.shots].sort((a, b) => b.distance - a.distance).slice(0, MOST_ROWS);
  const own = new Map(judged.beside.map((shot) => [shot.index, shot]));
  const figures = (measures: GroupMeasures): string[] => [
    String(measures.n),
    acrossText(measures.meanRadiusOfMany, units),
    betweenText(measures.meanRadiusInterval, units),
  ];
  return {
    tables: [
      tableOf(
        ['', 'from centre', 'chance', ...(judged.by === 'history' ? ['by these alone'] : [])],
        order.map(({ index, distance, p }) => [
          name(index),
          acrossText(distance, units),
          pText(p),
          ...(judged.by === 'history' ? [pText(own.get(index)?.p ?? 1)] : []),
        ]),
        order.filter(({ flyer }) => flyer).map(({ index }) => name(index)),
      ),
      ...(judged.without === null
        ? []
        : [
            tableOf(
              ['', 'shots', 'mean radius of many', '95 %'],
              [
                ['with', ...figures(judged.all)],
                ['without', ...figures(judged.without)],
              ],
            ),
          ]),
    ],
    notes: [
      `Judged ${by}. A shot stands out below ${pText(0.05 / judged.shots.length)}.`,
      ...(judged.without === null
        ? []
        : ['“Without” is what leaving them out for lying far out would show: a spread that reads too small.']),
    ],
    plot: null,
    why: {
      title: ASK,
      text: TEXT,
      equation: judged.by === 'history' ? 'n/(n − 1) r² / (2 s₀²) ~ F(2, ν₀)' : 'n/(n − 1) r² / SS ~ Beta(1, n − 2)',
      symbols: [
        { symbol: 'n', name: 'shots', value: String(judged.shots.length) },
        { symbol: 'r', name: 'of the farthest, from the centre', value: acrossText(order[0]?.distance ?? 0, units) },
        { symbol: 'α/n', name: 'chance below which a shot stands out', value: pText(0.05 / judged.shots.length) },
      ],
      source: judged.by === 'history' ? sources['smyth-2004'] : 'own derivation',
    },
  };
}
