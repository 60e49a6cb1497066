import { keepShooting, sameDistance, type Stopping } from '../group/index.ts';
import { counted } from '../model/group.ts';
import { refuse } from '../model/problem.ts';
import { sources } from '../sources.ts';
import { acrossText, countText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import { endPairs, endsOf, endsTogether } from './ends.ts';
import type { Question, QuestionPage } from './question.ts';
import { manyText, tableOf, unanswered } from './texts.ts';

const ASK = 'Keep shooting, or stop?';
const MOST_ROWS = 20;
const TEXT =
  'Looking after every end and stopping when 5 % is reached gives 16 false alarms in 100 by the sixth look. This figure stays valid however often one looks: it stops with a shift when the evidence is 20 to 1, and without one when even the far edge of what fits is less than what matters.';

/**
 * Whether two groups side by side settle their shift, or more ends are to be shot.
 *
 * @equation keepShooting over the ends of both groups
 * @param asked - the group made ready, with the group beside it [record]
 * @returns the question with its answer [record]
 * @validity as keepShooting; two groups of one distance
 * @source perez-ortiz-2024
 * @example stoppingQuestion(asked({ group: exampleFletched, beside: exampleBare, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).id // "stopping"
 */
export function stoppingQuestion({ group, beside, shots, units }: Asked): Question {
  if (beside === null)
    return unanswered('stopping', ASK, refuse('alone', 'Put a second group beside it: bare, or before a change.').problem, TEXT);
  if (!sameDistance(group, beside))
    return unanswered('stopping', ASK, refuse('distance', 'The group beside it was shot at another distance.').problem, TEXT);
  const pairs = endPairs(shots, counted(beside));
  const found = keepShooting(pairs);
  if (!found.ok) return unanswered('stopping', ASK, found.problem, TEXT);
  const value = found.value;
  const last = value.looks.at(-1);
  const size = acrossText(last?.size ?? 0, units);
  const within = last?.radius == null ? '' : ` \u00b1 ${acrossText(last.radius, units)}`;
  const page = (): QuestionPage => {
    const both = [...shots, ...counted(beside)];
    return stoppingPage(value, pairs.length, endsTogether(endsOf(both).length, both.length), units);
  };
  const base = { id: 'stopping', ask: ASK, page } as const;
  if (value.stop === 'real')
    return {
      ...base,
      answer: `Stop: the two lie ${size}${within} apart, however often one looked.`,
      state: 'yes',
      standing: 'figure',
      tells: null,
    };
  if (value.stop === 'give up')
    return {
      ...base,
      answer: `Stop: no shift of ${acrossText(value.matters, units)} or more, however often one looked.`,
      state: 'yes',
      standing: 'clear',
      tells: null,
    };
  const share = Math.round(100 * Math.max(0, last?.share ?? 0));
  return {
    ...base,
    answer: `Keep shooting: ${size}${within} apart, with ${share} of 100 parts of the evidence that settles it.`,
    state: 'cannot tell',
    standing: 'open',
    tells:
      value.ends === null
        ? 'More than a thousand ends like these would be needed: the shift is too small to matter, or the scatter too wide.'
        : pairs.length === 1
          ? `About ${manyText(value.ends * (last?.n[0] ?? 0), 'more shot')} here and ${countText(value.ends * (last?.n[1] ?? 0))} in the other would settle it, if size and spread stay as seen.`
          : `About ${manyText(value.ends, 'more end')} like the last would settle it, if size and spread stay as seen.`,
  };
}

function stoppingPage(value: Stopping, looks: number, together: number, units: Asked['units']): QuestionPage {
  const from = Math.max(0, looks - MOST_ROWS);
  return {
    tables: [
      tableOf(
        ['look', 'shots', 'apart', 'give or take', 'evidence'],
        value.looks
          .slice(from)
          .map(({ n, size, radius, share }, i) => [
            String(from + i + 1),
            `${n[0]} and ${n[1]}`,
            acrossText(size, units),
            radius === null ? '–' : acrossText(radius, units),
            `${Math.round(100 * Math.max(0, share))} %`,
          ]),
        value.at === null ? [] : [String(value.at)],
      ),
    ],
    notes: [
      looks === 1
        ? 'The ends are not noted for every shot of both groups, so that all of it is one look. It is as valid as many.'
        : 'The first look that settled it decides; shots after it change nothing.',
      ...(looks > 1 && together > 1
        ? [
            `With very many shots fewer looks are taken, each after ${together} ends. They are as valid; the answer may only come a few ends later.`,
          ]
        : []),
      'Evidence of 100 % stops. It holds for round shots of one spread, and in simulation for ovals and heavy tails.',
    ],
    plot: null,
    why: {
      title: ASK,
      text: TEXT,
      equation: 'E = ∫ of the densities with a shift over that without ≥ 20',
      symbols: [
        { symbol: 'E', name: 'share of what stops, ln E / ln 20', value: (value.looks.at(-1)?.share ?? 0).toFixed(2) },
        { symbol: '', name: 'what matters', value: acrossText(value.matters, units) },
        { symbol: '', name: 'looks', value: String(looks) },
      ],
      source: sources['perez-ortiz-2024'],
    },
  };
}
