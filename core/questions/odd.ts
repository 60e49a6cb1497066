import { fQuantileUpper, looseArrows, oddArrows, type EndShot, type LooseArrows, type OddArrows } from '../group/index.ts';
import { sources } from '../sources.ts';
import { acrossText, mainParts, whereWords } from '../trials/words.ts';
import { refuse, type Problem } from '../model/problem.ts';
import { wholeCount } from '../units/index.ts';
import type { Asked } from './asked.ts';
import { endShots } from './ends.ts';
import type { Question, QuestionPage } from './question.ts';
import { manyText, pText, tableOf, unanswered } from './texts.ts';

const ASK = 'Is one arrow odd?';
/** The last ends of about so many shots: what an arrow did a thousand shots ago it may not do today, and a fit for each arrow takes its time. */
const MOST_SHOTS = 1200;
const TEXT =
  'Each arrow’s mean place against the mean of the others, freed of where each end lay. Only the worst is tested; if it is odd it leaves the comparison and the next worst is tested against the rest, so that a bad arrow accuses no good one. Loose means that an arrow scatters more than the others; it needs more ends still.';

/**
 * Whether one arrow of a numbered set strikes apart, or scatters more than the others.
 *
 * @equation oddArrows and looseArrows over the shots that have their end
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as oddArrows and looseArrows; of more than about 1,200 shots the last whole ends
 * @source own derivation
 * @example oddQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).state // "cannot tell"
 */
export function oddQuestion({ shots, units }: Asked): Question {
  const missing = missingOf(shots);
  if (missing !== null) return unanswered('odd', ASK, missing, TEXT);
  // A shot without a number is no evidence for or against any arrow.
  const numbered = shots.filter(({ arrow }) => arrow !== null);
  const unnumbered = shots.length - numbered.length;
  const all = endShots(numbered);
  const known = lastEnds(all);
  const found = oddArrows(known);
  if (!found.ok) return unanswered('odd', ASK, found.problem, TEXT);
  const value = found.value;
  const scatter = looseArrows(known);
  const loose = scatter.ok ? scatter.value : null;
  const last = known.length < all.length;
  const page = (): QuestionPage => oddPage(value, loose, { last, unnumbered }, units);
  const base = { id: 'odd', ask: ASK, page } as const;
  const slack = loose?.loose ?? null;
  const apart = value.odd.map(({ arrow, offset }) => {
    return `arrow ${arrow} strikes ${whereWords(offset.x, offset.y, mainParts(offset.x, offset.y), 'the others', units)}`;
  });
  const wide = slack === null ? [] : [`arrow ${slack.arrow} scatters ${slack.ratio.toFixed(1)} times as wide as the others`];
  if (apart.length + wide.length > 0)
    return {
      ...base,
      answer: `Yes: ${[...apart, ...wide].join('; ')}.`,
      state: 'yes',
      standing: 'act',
      tells: wide.length > 0 ? 'One fluffed loose looks like a loose arrow: shoot the set again before blaming it.' : null,
    };
  const worst = value.offsets[0];
  const seen =
    worst === undefined
      ? ''
      : `: arrow ${worst.arrow} lies farthest, ${acrossText(worst.size, units)} from the others, p ${pText(worst.p)}`;
  const more =
    value.next === null
      ? ''
      : `About ${manyText(value.next.ends, 'more end')} would show arrow ${value.next.arrow}, if it stays so far off. `;
  const twice = loose?.endsForTwice ?? null;
  return {
    ...base,
    answer: `None shown in ${manyText(value.ends, 'end')} of ${value.arrows} numbered arrows${seen}.`,
    state: 'cannot tell',
    standing: 'open',
    tells:
      `${more}${twice === null ? '' : `A loose one, twice as wide, shows in ${manyText(twice, 'end')}. `}${unnumbered === 0 ? '' : `${withoutText(unnumbered)}: write it on the arrow and note it.`}`.trim() ||
      null,
  };
}

const withoutText = (count: number): string => `${wholeCount(count)} ${count === 1 ? 'shot has' : 'shots have'} no number`;

function missingOf(shots: Asked['shots']): Problem | null {
  const say = (code: string, sentence: string): Problem => refuse(code, sentence).problem;
  if (shots.every(({ arrow }) => arrow === null))
    return say('no-numbers', 'Write a number on each arrow, note it with its hole, and shoot the set in six ends or more.');
  return shots.every(({ arrow, end }) => arrow === null || end === null)
    ? say('no-ends', 'Note which end each numbered shot belongs to: with two ends or more of the same arrows it can be asked.')
    : null;
}

/** Whole ends from the last one back, so that no arrow is missing from one. */
function lastEnds(shots: readonly EndShot[]): readonly EndShot[] {
  if (shots.length <= MOST_SHOTS) return shots;
  const ends = new Map<number, number>();
  for (const { end } of shots) ends.set(end, (ends.get(end) ?? 0) + 1);
  let count = 0;
  const kept = new Set<number>();
  for (const [end, size] of [...ends].sort(([a], [b]) => b - a)) {
    if (count + size > MOST_SHOTS && kept.size > 1) break;
    kept.add(end);
    count += size;
  }
  return shots.filter(({ end }) => kept.has(end));
}

function oddPage(
  value: OddArrows,
  loose: LooseArrows | null,
  { last, unnumbered }: { last: boolean; unnumbered: number },
  units: Asked['units'],
): QuestionPage {
  const ratios = new Map((loose?.arrows ?? []).map((arrow) => [arrow.arrow, arrow]));
  const odd = new Set([...value.odd.map(({ arrow }) => arrow), ...(loose?.loose == null ? [] : [loose.loose.arrow])]);
  const offsets = [...value.offsets].sort((a, b) => a.arrow - b.arrow);
  // The circle about an arrow's mean, as the test takes it where every arrow is in every end.
  const [k, m] = [value.arrows, value.ends];
  const f = fQuantileUpper(0.05, 2, Math.max(1, 2 * (k - 1) * (m - 1)));
  const radius = value.spread * Math.sqrt((2 * f * k) / (m * (k - 1)));
  return {
    tables: [
      tableOf(
        ['arrow', 'from the others', 'p', 'scatter', 'p'],
        offsets.map(({ arrow, size, p }) => {
          const ratio = ratios.get(arrow);
          return [
            String(arrow),
            acrossText(size, units),
            pText(p),
            ratio === undefined ? '–' : `× ${ratio.ratio.toFixed(1)}`,
            ratio === undefined ? '' : pText(ratio.p),
          ];
        }),
        [...odd].map(String),
      ),
    ],
    notes: [
      `Whether the arrows differ at all: p ${pText(value.differ.p)}. Scatter is that of each arrow over that of the others.`,
      ...(last ? [`The last ${manyText(value.ends, 'end')} are taken; what was long before may be another arrow by now.`] : []),
      ...(unnumbered > 0 ? [`${withoutText(unnumbered)}: ${unnumbered === 1 ? 'it says' : 'they say'} nothing here.`] : []),
    ],
    plot: {
      kind: 'places',
      sentence: `Where each of ${value.arrows} arrows strikes from the mean of the others over ${value.ends} ends, with 95 % circles.`,
      origin: 'the others',
      places: offsets.map(({ arrow, offset }) => ({
        name: String(arrow),
        at: offset,
        radius,
        strong: odd.has(arrow),
      })),
    },
    why: {
      title: ASK,
      text: TEXT,
      equation: 'F_i = m (k − 1)/k · |d_i|² / (2 s²), odd when p < 0.05/k',
      symbols: [
        { symbol: 'k', name: 'arrows', value: String(value.arrows) },
        { symbol: 'm', name: 'ends', value: String(value.ends) },
        { symbol: 's', name: 'spread of one axis about arrows and ends', value: acrossText(value.spread, units) },
        { symbol: '0.05/k', name: 'chance below which an arrow is odd', value: pText(0.05 / value.arrows) },
      ],
      source: sources['johnson-wichern-2007'],
    },
  };
}
