import {
  angleAcross,
  angleAt,
  c4,
  covarianceEllipse,
  drawnSpread,
  expectedMeanRadius,
  groupCircles,
  groupMeasures,
  type Ellipse,
  type GroupCircles,
  type GroupMeasures,
  type Length,
  type Point,
} from '../group/index.ts';
import { sources } from '../sources.ts';
import { wholeCount } from '../units/index.ts';
import { acrossText } from '../trials/words.ts';
import type { Asked } from './asked.ts';
import type { Question, QuestionPage } from './question.ts';
import { angleText, betweenText, lengthText, manyText, meanRadiusOf, meanRadiusOfMany, tableOf, unanswered } from './texts.ts';

const ASK = 'How big is it?';
/** Half of round normal shots lie within √1.386 of their spread: -2 ln ½. */
const HALF = -2 * Math.log(0.5);
const TEXT =
  'The circles say where many such shots would lie, freed of the pull that few shots have on their own centre; the intervals hold for round groups and shrink with the root of the number of shots. The widest two apart grows with every shot and wastes most of what the others tell: it is shown for those who wrote down nothing else.';

/**
 * The oval that half of many such shots fall into.
 *
 * @equation half axes √(-2 ln ½ λ)/c4(2 (n - 1)) along the axes of the group's own oval
 * @param measures - the figures of the group [record]
 * @returns half axes and direction; null below three shots, which always lie on a line [record]
 * @validity normal shots; as drawn from few shots it looks more oval than it is
 * @source johnson-wichern-2007
 * @example halfEllipse({ n: 2, covariance: { xx: 1, xy: 0, yy: 1 } }) // null
 */
export function halfEllipse({ n, covariance }: Pick<GroupMeasures, 'n' | 'covariance'>): Ellipse | null {
  return n < 3 ? null : covarianceEllipse(covariance, HALF / c4(2 * (n - 1)) ** 2);
}

/**
 * How big a group is: mean radius, circles, widest apart, oval.
 *
 * @equation groupCircles, with each figure as a length and as an angle at the archer
 * @param asked - the group made ready [record]
 * @returns the question with its answer [record]
 * @validity as groupCircles
 * @source grubbs-1964
 * @example sizeQuestion(asked({ group: exampleFletched, beside: null, others: [], bundle: exampleBundle, shaftRadius: 0.0029, units: defaultPreferences.units })).standing // "figure"
 */
export function sizeQuestion(asked: Asked): Question {
  const { shots, units } = asked;
  const measured = groupMeasures(shots);
  if (!measured.ok) return unanswered('size', ASK, measured.problem, TEXT);
  const { centre } = measured.value;
  const many = meanRadiusOfMany(measured.value);
  const page = (): QuestionPage => {
    const circles = groupCircles(shots);
    return circles.ok
      ? sizePage(asked, circles.value, measured.value, centre)
      : unanswered('size', ASK, circles.problem, TEXT).page();
  };
  return {
    id: 'size',
    ask: ASK,
    answer: `Mean radius of many such shots ${lengthText(many, units)}.`,
    state: 'yes',
    standing: 'figure',
    tells: null,
    page,
  };
}

function sizePage(
  { group, shots, units, usual }: Asked,
  circles: GroupCircles,
  measures: GroupMeasures,
  centre: Point,
): QuestionPage {
  const at = group.context.distance;
  const row = (name: string, length: Length): string[] => [
    name,
    acrossText(length.value, units),
    betweenText(length.interval, units),
    angleText(angleAt(length.value, at), units),
  ];
  const { extremeSpread: widest, figureOfMerit: merit, oval } = circles;
  const ellipse = halfEllipse(measures);
  const drawn = usual.ok ? drawnSpread(shots, usual.value) : usual;
  const across = (value: number) => [acrossText(value, units), '', angleText(angleAcross(value, at), units)];
  const implied = widest === null ? null : { value: widest.spread, interval: widest.spreadInterval };
  return {
    tables: [
      tableOf(
        ['', 'figure', '95 %', 'angle'],
        [
          row('mean radius of many', circles.meanRadius.ofMany),
          row('half within, R50', circles.r50),
          row('95 in 100 within, R95', circles.r95),
          ...(oval === null ? [] : [row('R50, oval as it shows', oval.r50), row('R95, oval as it shows', oval.r95)]),
          row('spread of one axis', { value: measures.spread, interval: measures.spreadInterval }),
          [`mean radius of these ${wholeCount(measures.n)}`, acrossText(circles.meanRadius.measured, units), '', ''],
          ['widest two apart', ...across(measures.extremeSpread)],
          ...(implied === null ? [] : [row('spread by the widest two', implied)]),
          ...(merit === null ? [] : [['mean of width and height', ...across(merit.measured)]]),
          ...(ellipse === null
            ? []
            : [['oval that holds half', `${acrossText(ellipse.long, units)} by ${acrossText(ellipse.short, units)}`, '', '']]),
        ],
        ['mean radius of many'],
      ),
      ...(drawn.ok
        ? [
            tableOf(
              ['drawn toward the history', 'mean radius', '95 %', 'worth'],
              [
                [
                  'earlier groups alone',
                  ...shares(meanRadiusOf(drawn.value.prior), units),
                  weight(drawn.value.degreesOfFreedom.prior),
                ],
                ...(drawn.value.shots === null
                  ? []
                  : [
                      [
                        'these shots alone',
                        ...shares(meanRadiusOf(drawn.value.shots), units),
                        weight(drawn.value.degreesOfFreedom.shots),
                      ],
                    ]),
                [
                  'both together',
                  ...shares(meanRadiusOf(drawn.value.together), units),
                  weight(drawn.value.degreesOfFreedom.together),
                ],
              ],
              [],
            ),
          ]
        : []),
    ],
    notes: [
      `Mean radius, R50 and R95 all come from the spread of one axis, in the same ratio for every group. ${wholeCount(measures.n)} shots of this spread have a mean radius of ${acrossText(measures.spread * expectedMeanRadius(measures.n), units)} about their own centre on average; these have ${acrossText(circles.meanRadius.measured, units)}: a lone far shot makes theirs the smaller.`,
      drawn.ok
        ? `The next arrow lands within ${acrossText(drawn.value.nextArrow, units)} of this centre 95 times in 100, by shots and history together.`
        : drawn.problem.sentence,
    ],
    plot:
      ellipse === null
        ? null
        : {
            kind: 'face',
            sentence: `The shots on the face with the circles that hold half and 95 in 100 of many such, ${acrossText(circles.r50.value, units)} and ${acrossText(circles.r95.value, units)}, and the oval that holds half.`,
            centre,
            ellipse,
            circles: [
              { name: 'half', radius: circles.r50.value },
              { name: '95 in 100', radius: circles.r95.value },
            ],
          },
    why: {
      title: ASK,
      text: TEXT,
      equation: 'R = k s / c4(ν), k50 = 1.177, k95 = 2.448, mean radius k = 1.253',
      symbols: [
        { symbol: 'n', name: 'shots', value: String(measures.n) },
        { symbol: 's/c4', name: 'spread of one axis, freed of the bias of few shots', value: acrossText(measures.spread, units) },
        { symbol: 'ν', name: 'degrees of freedom, 2 (n − 1)', value: String(measures.degreesOfFreedom) },
      ],
      source: sources['grubbs-1964'],
    },
  };
}

const shares = (length: Length, units: Asked['units']): [string, string] => [
  acrossText(length.value, units),
  betweenText(length.interval, units),
];
/** Degrees of freedom as shots: a round group of n has 2 (n - 1). */
const weight = (degreesOfFreedom: number): string => manyText(Math.round(degreesOfFreedom / 2 + 1), 'shot');
