import type { Why } from '../../findings/finding.ts';
import type { WalkBack } from '../../group/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { sources } from '../../sources.ts';
import { textQuantity } from '../../units/index.ts';
import { placeFigure } from './figures.ts';

/**
 * What opens behind Why for a walk-back.
 *
 * @equation x = a + b z by weights 1/z²; bend by the t of z², with today's figures
 * @param line - from walkBack [record]
 * @param units - the person's choice of units [record]
 * @returns the record that the screens open [record]
 * @validity as walkBack
 * @source draper-smith-1998
 * @example walkBackWhy(walkBack([5, 10, 20, 30].map((distance) => ({ distance, offsets: [0, 0.001 * distance] }))).value, defaultPreferences.units).symbols.length // 5
 */
export function walkBackWhy(line: WalkBack, units: UnitChoice): Why {
  const far = Math.max(...line.drawn.map(({ distance }) => distance));
  const at = textQuantity(far, 'distance', units);
  const p = (value: number) => (value < 1e-4 ? 'below 0.0001' : value.toPrecision(2));
  const slope = Math.tan(line.angle) * far;
  const half = ((Math.tan(line.angleInterval[1]) - Math.tan(line.angleInterval[0])) / 2) * far;
  const slant = placeFigure('', slope, half, units);
  const row = (symbol: string, name: string, value: string) => ({ symbol, name, value });
  return {
    title: 'Does the line slant or bend?',
    text: 'A straight line through the arrows\u2019 places beside the plumb line, each weighed by its distance since scatter grows with it; then a parabola, whose bend is tested first. Bends: chance alone would do it less than once in 20. Slants: the same of the straight line. Upright: even the far end of its interval lies within one arrow\u2019s scatter. Which cause a line has is disputed, and the line does not tell it.',
    equation: 'x = a + b z + c z\u00b2, weights 1 / z\u00b2',
    symbols: [
      row('N', 'arrows', `${line.arrows} from ${line.distances} distances`),
      row('b z', `slant to the right at ${at}`, `${slant.value} ${slant.interval}`),
      row('p of b', 'chance alone', p(line.angleP)),
      row('p of c', 'chance alone', p(line.bend.p)),
      row('s z', `one arrow\u2019s scatter at ${at}`, placeFigure('', line.scatter * far, 0, units).value.replace('+', '')),
    ],
    source: sources['draper-smith-1998'],
  };
}
