import {
  drawnSpread,
  expectedScore,
  expectedScoreOfGroup,
  face,
  scoreGroup,
  type Face,
  type GroupExpectation,
  type Length,
} from '../group/index.ts';
import type { FaceId } from '../model/group.ts';
import { sources } from '../sources.ts';
import { textQuantity } from '../units/index.ts';
import type { Asked } from './asked.ts';
import type { PlotRow, Question, QuestionPage } from './question.ts';
import { tableOf, unanswered } from './texts.ts';

const ASK = 'What would it score?';
const TEXT =
  'The points of one arrow on average, when many are shot that scatter like these and a shaft that touches a line scores the higher zone. The interval is that of the spread alone. At other distances the spread is taken as one of angle: farther out wind and unlike arrows add to it, so that the figure is a best case there.';

/** Rounds that are commonly shot: a distance with its face. */
const rounds: readonly (readonly [distance: number, face: FaceId])[] = [
  [18, '40'],
  [25, '60'],
  [30, '80'],
  [50, '122'],
  [60, '122'],
  [70, '122'],
];

/**
 * What a scatter scores at the distances and faces that are commonly shot.
 *
 * @equation expectedScore of the spread and of both its ends, times askedAt/shotAt, about the middle of the face
 * @param spread - of one axis, with its 95 % interval [record]
 * @param shotAt - the distance it was shot at [m]
 * @param shaftRadius - half the shaft's diameter [m]
 * @returns distance, face and points of one arrow with their interval, each [list]
 * @validity round normal shots, sight set right
 * @source wa-rules; common practice
 * @example scoresElsewhere({ value: 0.00001, interval: [0.00001, 0.00001] }, 18, 0.003)[0].points // 10
 */
export function scoresElsewhere(
  spread: Length,
  shotAt: number,
  shaftRadius: number,
): readonly { distance: number; face: Face; points: number; interval: readonly [number, number] }[] {
  return rounds.map(([distance, id]) => {
    const target = face(id);
    const at = (sigma: number): number => {
      const there = (sigma * distance) / shotAt;
      return expectedScore({ spread: [there, there], offset: { x: 0, y: 0 } }, shaftRadius, target).points;
    };
    const [low, high] = spread.interval;
    return { distance, face: target, points: at(spread.value), interval: [at(high), at(low)] };
  });
}

/**
 * What a group would score here and elsewhere.
 *
 * @equation expectedScoreOfGroup as it lies and with the sight set right
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as expectedScoreOfGroup
 * @source wa-rules; own derivation
 * @example scoreQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).standing // "figure"
 */
export function scoreQuestion(asked: Asked): Question {
  const { shots, group, shaftRadius } = asked;
  const target = face(group.context.face);
  const here = expectedScoreOfGroup(shots, shaftRadius, target);
  const centred = expectedScoreOfGroup(shots, shaftRadius, target, { centred: true });
  if (!here.ok || !centred.ok) return unanswered('score', ASK, here.ok ? { code: '', sentence: '' } : here.problem, TEXT);
  const gains = centred.value.points - here.value.points >= 0.1;
  return {
    id: 'score',
    ask: ASK,
    answer: `${points(here.value)} points an arrow on this face (${range(here.value)})${gains ? `, ${points(centred.value)} with the sight set right` : ''}.`,
    state: 'yes',
    standing: 'figure',
    tells: null,
    page: () => scorePage(asked, target, here.value, centred.value),
  };
}

const points = ({ points: value }: { readonly points: number }): string => value.toFixed(1);
const range = ({ interval: [low, high] }: { readonly interval: readonly [number, number] }): string =>
  `${low.toFixed(1)} to ${high.toFixed(1)}`;

function scorePage(asked: Asked, target: Face, here: GroupExpectation, centred: GroupExpectation): QuestionPage {
  const { shots, group, shaftRadius, units, usual } = asked;
  const shotAt = group.context.distance;
  const at = (distance: number) => textQuantity(distance, 'distance', units);
  const elsewhere = rounds.map(([distance, id]) => {
    const there = face(id);
    const found = expectedScoreOfGroup(shots, shaftRadius, there, { shotAt, askedAt: distance, centred: true });
    return { name: `${at(distance)}, ${there.name.split(',')[0] ?? ''}`, found: found.ok ? found.value : null };
  });
  const drawn = usual.ok ? drawnSpread(shots, usual.value) : usual;
  const toward = drawn.ok ? scoresElsewhere(drawn.value.together, shotAt, shaftRadius) : null;
  const made = scoreGroup(shots, shaftRadius, target);
  const rows: PlotRow[] = [
    { name: 'here, as it lies', value: here.points, interval: here.interval, strong: true },
    { name: 'here, sight right', value: centred.points, interval: centred.interval, strong: false },
    ...elsewhere.flatMap(({ name, found }): PlotRow[] =>
      found === null ? [] : [{ name, value: found.points, interval: found.interval, strong: false }],
    ),
  ];
  return {
    tables: [
      tableOf(
        ['', 'an arrow', '95 %', ...(toward === null ? [] : ['with the history'])],
        rows.map((row, i) => [
          row.name,
          row.value.toFixed(2),
          range({ interval: row.interval ?? [row.value, row.value] }),
          ...(toward === null ? [] : [i < 2 ? '' : (toward[i - 2]?.points.toFixed(2) ?? '')]),
        ]),
        ['here, as it lies'],
      ),
    ],
    notes: [
      `These ${shots.length} made ${made.total}, ${(made.total / Math.max(1, shots.length)).toFixed(2)} an arrow. A ten in ${Math.round(100 * here.tenChance)} of 100, a miss in ${Math.round(100 * here.missChance)}; one arrow strays by ${here.deviation.toFixed(1)}.`,
      'Elsewhere: sight set right, spread as one of angle; farther out a best case.',
      ...(toward === null ? [] : ['With the history: the spread drawn toward the archer’s earlier groups, taken as round.']),
    ],
    plot: {
      kind: 'rows',
      sentence: 'Points an arrow here and at the distances and faces that are commonly shot, with 95 % bars.',
      of: 'points',
      panels: [{ title: 'points an arrow', rows, against: null }],
    },
    why: {
      title: ASK,
      text: TEXT,
      equation: 'E = Σ (points of a ring − those of the ring outside it) P(centre within ring + shaft)',
      symbols: [
        {
          symbol: 'σ',
          name: 'spreads along the oval’s axes',
          value: here.scatter.spread.map((s) => textQuantity(s, 'setting', units)).join(', '),
        },
        { symbol: '', name: 'half the shaft', value: textQuantity(shaftRadius, 'setting', units) },
        { symbol: '', name: 'face', value: target.name },
      ],
      source: sources['wa-rules'],
    },
  };
}
