import { squareText } from '../../findings/nockingPoint.ts';
import type { Why } from '../../findings/finding.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { sources } from '../../sources.ts';
import { showQuantity, textQuantity } from '../../units/index.ts';
import { countFigures, wayFigure } from './figures.ts';
import type { HeightsAlong } from './heightsAlong.ts';
import { NOCKING_STEP } from './levelStep.ts';
import type { Spanned } from './plot.ts';
import type { TrialInput, TrialReading } from './types.ts';

/**
 * The figures of a nocking-point trial.
 *
 * @equation height at each place, height for one step, level place, each with its 95 % interval
 * @param input - the trial with its records [record]
 * @param along - from heightsAlong [record]
 * @returns rows [list]
 * @validity as heightsAlong
 * @source fieller-1954
 * @example levelFigures(exampleTrialInput, heightsAlong([]))[0].name // "Arrows"
 */
export function levelFigures(input: TrialInput, { points, line, arrows }: HeightsAlong): TrialReading['figures'] {
  const { units } = input;
  const each = textQuantity(NOCKING_STEP, 'setting', units);
  return [
    ...points.map(({ setting, value, high }) => {
      const at = textQuantity(setting, 'setting', units);
      return wayFigure([`Bare above fletched at ${at}`, `Bare below fletched at ${at}`], value, high - value, units);
    }),
    ...(line === null
      ? []
      : [
          wayFigure(
            [`Bare higher for each ${each} higher`, `Bare lower for each ${each} higher`],
            line.slope.value * NOCKING_STEP,
            ((line.slope.high - line.slope.low) / 2) * NOCKING_STEP,
            units,
          ),
        ]),
    ...(line?.level == null || line.slope.value > 0
      ? []
      : [
          {
            name: 'Level, above square',
            value: textQuantity(line.level.value, 'setting', units),
            interval: `${showQuantity(line.level.low, 'setting', units).figure} to ${textQuantity(line.level.high, 'setting', units)}`,
          },
        ]),
    ...countFigures(input, `${arrows[0]} fletched and ${arrows[1]} bare`),
  ];
}

/**
 * The ends of the level place's interval in words.
 *
 * @equation both ends; `square` is said once where both lie on one side of it
 * @param level - the level place with its interval [record]
 * @param units - the person's choice of units [record]
 * @returns for instance "5 and 7 mm above square" [text]
 * @validity finite lengths
 * @source own derivation
 * @example levelEnds({ value: 0.006, low: 0.005, high: 0.007 }, defaultPreferences.units) // "5 and 7 mm above square"
 */
export function levelEnds({ low, high }: Spanned, units: UnitChoice): string {
  return low > 0
    ? `${showQuantity(low, 'setting', units).figure} and ${squareText(high, units)}`
    : `${squareText(low, units)} and ${squareText(high, units)}`;
}

/**
 * The numbers of a nocking-point trial's picture.
 *
 * @equation heights with their intervals, the line between the places tried, and where it crosses nought
 * @param along - from heightsAlong [record]
 * @param tried - the nocking points tried [list]
 * @returns the plot [record]
 * @validity as heightsAlong
 * @source fieller-1954
 * @example levelPlot(heightsAlong([]), []).kind // "heights"
 */
export function levelPlot({ points, line }: HeightsAlong, tried: readonly number[]): NonNullable<TrialReading['plot']> {
  const ends = [Math.min(...tried), Math.max(...tried)];
  return {
    kind: 'heights',
    points,
    line: line === null ? [] : ends.map((setting) => ({ setting, height: line.middle + line.slope.value * (setting - line.at) })),
    level: line === null || line.slope.value > 0 ? null : line.level,
  };
}

/** What opens behind Why for the level place. */
export const whyLevel: Why = {
  title: 'Where do they strike level?',
  text: 'How far the bare shafts strike above the fletched at each nocking point, a straight line through these by their doubt, and the place where it crosses nought. Its interval has ends only when the line is told from level; before that nothing is read.',
  equation: '(a + b u)\u00b2 = t\u00b2 (V\u2090 + u\u00b2 V\u1d66)',
  symbols: [],
  source: sources['fieller-1954'],
};
