import type { Why } from '../findings/finding.ts';
import type { Shift } from '../group/index.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { sources } from '../sources.ts';
import { acrossText, plusMinusText } from './words.ts';

/**
 * What opens behind Why for a shift between two groups.
 *
 * @equation F = |d|²/(2 (v₁ + v₂)) ~ F(1/c, ν), with today's figures
 * @param shift - the shift [record]
 * @param units - the person's choice of units [record]
 * @param alpha - false alarms that the shift was asked with, 0.05 when left out [-]
 * @returns the record that the screens open [record]
 * @validity as shiftOfGroups
 * @source brunner-dette-munk-1997
 * @example shiftWhy(shiftOfGroups(exampleFletched.shots, exampleBare.shots, {}).value, defaultPreferences.units).symbols[0].value // "6 and 4"
 */
export function shiftWhy(shift: Shift, units: UnitChoice, alpha = 0.05): Why {
  const { n, dx, dy, size, radius, half, p, f, df, shape, matters, hotelling } = shift;
  const line = (symbol: string, name: string, value: string) => ({ symbol, name, value });
  return {
    title: 'Is the shift real?',
    text: `The distance of the two centres against what chance alone would put between them, given how each group scatters and how oval the groups are. Real: chance alone would do it less than once in ${Math.round(1 / alpha)}. No sign: even the far edge of the circle is nearer than what matters. Otherwise it cannot be told yet. A side or a height is called real only when the whole shift is.`,
    equation: 'F = |d|\u00b2 / (2 (v\u2081 + v\u2082)) ~ F(1/c, \u03bd)',
    symbols: [
      line('n', 'arrows', `${n[0]} and ${n[1]}`),
      line('dx', 'to the right', plusMinusText(dx, half.x, units)),
      line('dy', 'upwards', plusMinusText(dy, half.y, units)),
      line(
        '|d|',
        `distance, with the ${100 * (1 - alpha)} % circle about it`,
        `${acrossText(size, units)}, circle ${acrossText(radius, units)}`,
      ),
      line('F', 'test figure', f.toPrecision(3)),
      line('1/c, \u03bd', 'degrees of freedom', `${df[0].toFixed(2)}, ${df[1].toFixed(1)}`),
      line('c', 'shape, \u00bd round to 1 a line', shape.toFixed(2)),
      line('p', 'chance alone', p < 1e-4 ? 'below 0.0001' : p.toPrecision(2)),
      line('', 'what matters', acrossText(matters, units)),
      ...(hotelling === null
        ? []
        : [
            line(
              'T\u00b2',
              'Hotelling, unequal spreads, beside it',
              `${hotelling.t2.toPrecision(3)}, p ${hotelling.p < 1e-4 ? 'below 0.0001' : hotelling.p.toPrecision(2)}`,
            ),
          ]),
    ],
    source: sources['brunner-dette-munk-1997'],
  };
}

/**
 * What opens behind Why when two groups give no verdict.
 *
 * @equation the rule: two groups of one distance and one form, two or more arrows each
 * @param sentence - why there is none [text]
 * @returns the record that the screens open [record]
 * @validity any sentence
 * @source common practice
 * @example emptyWhy('One distance was expected.').symbols // []
 */
export function emptyWhy(sentence: string): Why {
  return {
    title: 'Why there is no verdict',
    text: `${sentence} Two groups are compared only when they were shot at one distance and in one form, with two or more arrows each; bare and fletched must each be a group.`,
    equation: null,
    symbols: [],
    source: 'common practice',
  };
}
