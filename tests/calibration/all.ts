import { demoFigures } from './demo.ts';
import { COVERAGE, COVERAGE_BESIDE, intervalFigures } from './intervals.ts';
import { MARKS_COVERAGE, marksFigures } from './marks.ts';
import { ACCUSED, oddFigures } from './odd.ts';
import { powerFigures } from './power.ts';
import { rowsOf, worstRow, type Bound, type Figure, type Row } from './row.ts';
import { FALSE_SHIFT, FALSE_SHIFT_BEYOND, shiftFigures } from './shift.ts';
import { FALSE_STOP, stoppingFigures } from './stopping.ts';

export { renewed, tableOf } from './table.ts';

export const figures: readonly Figure[] = [
  ...shiftFigures,
  ...intervalFigures,
  ...stoppingFigures,
  ...oddFigures,
  ...powerFigures,
  ...marksFigures,
  ...demoFigures,
];

/** The rows of one figure by its place in the list. */
export const rowsAt = (index: number, seed: number, quick: boolean): Row[] => {
  const figure = figures[index];
  return figure === undefined ? [] : rowsOf(figure, seed, quick);
};

const high = ({ value }: Row): number => value;
const off95 = ({ value }: Row): number => Math.abs(value - 0.95);

/** Of each section that has a bound or a worst to be named. */
const worst: readonly (readonly [section: string, bound: Bound | null, badness: (row: Row) => number])[] = [
  [FALSE_SHIFT, [0, 0.07], high],
  [FALSE_SHIFT_BEYOND, [0, 0.07], high],
  ['Several centres, false alarms', [0, 0.07], high],
  [COVERAGE, [0.94, 0.975], off95],
  [COVERAGE_BESIDE, null, off95],
  ['Tighter, false alarms', null, high],
  ['Tighter, false alarms by F', null, high],
  [FALSE_STOP, [0, 0.05], high],
  [ACCUSED, [0, 0.08], high],
  [MARKS_COVERAGE, [0.93, 0.98], off95],
];

/** The worst rows, named, from all rows of a run. */
export const worstRows = (rows: readonly Row[]): Row[] =>
  worst.flatMap(([section, bound, badness]) => {
    const inSection = rows.filter(({ name }) => name.startsWith(`${section}: `));
    // Where rows of a section have no bound of their own they stand beside it only.
    const judged = bound === null ? inSection : inSection.filter((row) => row.bound !== null);
    const found = worstRow(`Worst of ${section.toLowerCase()}`, judged, bound, badness);
    return found === null ? [] : [found];
  });
