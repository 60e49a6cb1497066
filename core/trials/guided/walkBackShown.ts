import { weightedFit, type WalkBack, type WalkBackDistance } from '../../group/index.ts';
import { textQuantity } from '../../units/index.ts';
import { countFigures, wayFigure } from './figures.ts';
import type { TrialPlot } from './plot.ts';
import type { TrialFigure, TrialInput } from './types.ts';

/**
 * The figures of a walk-back.
 *
 * @equation slant at the farthest distance, start at the bow and bulge, each with its 95 % interval
 * @param input - the trial with its records [record]
 * @param readings - the arrows of each distance [list]
 * @param line - from walkBack [record]
 * @returns rows [list]
 * @validity as walkBack
 * @source draper-smith-1998
 * @example walkBackFigures(exampleTrialInput, [{ distance: 30, offsets: [] }], walkBack([5, 10, 20, 30].map((distance) => ({ distance, offsets: [0, 0.001 * distance] }))).value)[0].name // "Slant to the right at 30 m"
 */
export function walkBackFigures(
  input: TrialInput,
  readings: readonly WalkBackDistance[],
  line: WalkBack,
): readonly TrialFigure[] {
  const { units } = input;
  const far = Math.max(...readings.map(({ distance }) => distance));
  const at = textQuantity(far, 'distance', units);
  const half = (Math.tan(line.angleInterval[1]) - Math.tan(line.angleInterval[0])) / 2;
  const bow = line.bend;
  const grow = Math.abs(bow.curvature) > 0 ? bow.bow / Math.abs(bow.curvature) : 0;
  return [
    wayFigure([`Slant to the right at ${at}`, `Slant to the left at ${at}`], Math.tan(line.angle) * far, half * far, units),
    wayFigure(
      ['Start at the bow, to the right', 'Start at the bow, to the left'],
      line.start,
      (line.startInterval[1] - line.startInterval[0]) / 2,
      units,
    ),
    wayFigure(
      ['Bulge to the left', 'Bulge to the right'],
      bow.curvature * grow,
      ((bow.interval[1] - bow.interval[0]) / 2) * grow,
      units,
    ),
    ...countFigures(input, `${line.arrows} from ${line.distances} distances`),
  ];
}

/**
 * The numbers of a walk-back's picture.
 *
 * @equation the arrows, the straight line with its half width, and where it bends the parabola at two dozen places between nearest and farthest
 * @param readings - the arrows of each distance [list]
 * @param line - from walkBack; null when it could not be fitted [record]
 * @returns the plot [record]
 * @validity as walkBack
 * @source draper-smith-1998
 * @example walkBackPlot([{ distance: 10, offsets: [0.01] }], null).shots // [{"distance": 10, "offset": 0.01}]
 */
export function walkBackPlot(
  readings: readonly WalkBackDistance[],
  line: WalkBack | null,
): Extract<TrialPlot, { kind: 'walk-back' }> {
  const shots = readings.flatMap(({ distance, offsets }) => offsets.map((offset) => ({ distance, offset })));
  const fit =
    line === null
      ? null
      : weightedFit(
          shots.map(({ distance: x, offset: y }) => ({ x, y, weight: x ** -2 })),
          2,
        );
  const curve =
    fit === null || !fit.ok || line?.line !== 'bends'
      ? []
      : along(line).map((distance) => ({
          distance,
          offset: fit.value.coefficients.reduceRight((sum, b) => sum * distance + b, 0),
        }));
  return { kind: 'walk-back', shots, line: line?.drawn ?? [], curve };
}

/** Two dozen places from the nearest distance to the farthest, for the bent line. */
function along({ drawn }: WalkBack): number[] {
  const ends = drawn.map(({ distance }) => distance);
  const [near, far] = [Math.min(...ends), Math.max(...ends)];
  return Array.from({ length: 25 }, (_, i) => near + ((far - near) * i) / 24);
}
