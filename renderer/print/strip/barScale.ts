import type { XmlNode } from '../../export/xml.ts';
import { path, sizes, stroke, weights, written } from '../ink.ts';
import { niceStep } from '../niceStep.ts';

/** Figures and lines of the bar's own scale are at least so far apart [mm]. */
const LEAST_FIGURES = 6;
const LEAST_LINES = 0.9;

interface BarScale {
  readonly readings: readonly { readonly reading: number; readonly y: number; readonly figure: boolean }[];
}

/** The scale on the sight's own bar between two readings: held against the bar it shows at once whether unit and size are right. */
export function barScale(from: number, to: number, yOf: (reading: number) => number): BarScale {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const perUnit = Math.abs(yOf(high) - yOf(low)) / (high - low);
  const figures = niceStep(LEAST_FIGURES / perUnit);
  const lines = niceStep(LEAST_LINES / perUnit);
  // Every figure needs a line of its own.
  const between = Math.abs(figures / lines - Math.round(figures / lines)) < 1e-9 ? Math.round(figures / lines) : 5;
  const step = figures / between;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return {
    readings: Array.from({ length: Math.max(0, count) }, (_, i) => {
      const place = first + i;
      const reading = place * step;
      return { reading, y: yOf(reading), figure: place % between === 0 };
    }),
  };
}

/** Drawn to the left of a height, its figures left of its lines. */
export function drawBarScale({ readings }: BarScale, x: number): XmlNode[] {
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) return [];
  return [
    stroke(
      path('M', x, first.y, 'V', last.y, ...readings.flatMap(({ y, figure }) => ['M', x, y, 'H', x - (figure ? 2.2 : 1.2)])),
      weights.dimension,
    ),
    ...readings
      .filter(({ figure }) => figure)
      .map(({ reading, y }) =>
        written(String(Number(reading.toFixed(6))).replace('-', '\u2212'), x - 2.9, y + 0.8, 'note', sizes.small, 'end'),
      ),
  ];
}
