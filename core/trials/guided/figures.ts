import type { UnitChoice } from '../../model/preferences.ts';
import { showQuantity, textQuantity, unitOf } from '../../units/index.ts';
import { leftOutText } from './places.ts';
import type { TrialFigure, TrialInput } from './types.ts';

const decimals = (units: UnitChoice): number => (units.setting === 'mm' ? 0 : 1);

/**
 * A place on the face as a row of figures.
 *
 * @equation signed value; ± half width of its 95 % interval
 * @param name - what it is [text]
 * @param value - the value [m]
 * @param half - half width of the interval [m]
 * @param units - the person's choice of units [record]
 * @returns the row [record]
 * @validity finite lengths
 * @source own derivation
 * @example placeFigure('Side', 0.0412, 0.02, defaultPreferences.units).interval // "± 20 mm"
 */
export function placeFigure(name: string, value: number, half: number, units: UnitChoice): TrialFigure {
  const digits = decimals(units);
  return {
    name,
    value: textQuantity(value, 'setting', units, { digits, signed: true }),
    interval: `\u00b1 ${textQuantity(half, 'setting', units, { digits })}`,
  };
}

/**
 * A place on the face as a row of figures that says to which side it lies, instead of a sign.
 *
 * @equation the first way from nought up, the second below; the size; ± half width of its 95 % interval
 * @param ways - what it is on its one side and on the other [list]
 * @param value - the value [m]
 * @param half - half width of the interval [m]
 * @param units - the person's choice of units [record]
 * @returns the row [record]
 * @validity finite lengths
 * @source own derivation
 * @example wayFigure(['To the right', 'To the left'], -0.022, 0.02, defaultPreferences.units).name // "To the left"
 */
export function wayFigure(ways: readonly [string, string], value: number, half: number, units: UnitChoice): TrialFigure {
  const digits = decimals(units);
  return {
    ...placeFigure(ways[value < 0 ? 1 : 0], value, half, units),
    value: textQuantity(Math.abs(value), 'setting', units, { digits }),
  };
}

/**
 * A length on the face that has no sign, as a row of figures.
 *
 * @equation value; low end to high end of its 95 % interval
 * @param name - what it is [text]
 * @param value - the value [m]
 * @param low - low end [m]
 * @param high - high end [m]
 * @param units - the person's choice of units [record]
 * @returns the row [record]
 * @validity finite lengths
 * @source own derivation
 * @example sizeFigure('Spread', 0.02, 0.015, 0.03, defaultPreferences.units).interval // "15 to 30 mm"
 */
export function sizeFigure(name: string, value: number, low: number, high: number, units: UnitChoice): TrialFigure {
  const digits = decimals(units);
  const figure = (si: number) => showQuantity(si, 'setting', units, { digits }).figure;
  return {
    name,
    value: `${figure(value)} ${unitOf('setting', units)}`,
    interval: `${figure(low)} to ${figure(high)} ${unitOf('setting', units)}`,
  };
}

/**
 * How many arrows a trial rests on, and which were left out of it.
 *
 * @equation one row for the arrows, one for those left out where there are some
 * @param input - the trial with its groups [record]
 * @param arrows - the arrows that count, in words [text]
 * @returns the rows [list]
 * @validity any trial
 * @source own derivation
 * @example countFigures(exampleTrialInput, '6 and 4')[0].value // "6 and 4"
 */
export function countFigures(input: Pick<TrialInput, 'trial' | 'groups'>, arrows: string): readonly TrialFigure[] {
  const out = leftOutText(input);
  return [
    { name: 'Arrows', value: arrows, interval: '' },
    ...(out === null ? [] : [{ name: 'Left out', value: out, interval: '' }]),
  ];
}
