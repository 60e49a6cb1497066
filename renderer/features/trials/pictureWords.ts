import { shiftsRunOut } from '../../plots/trial/shifts.ts';
import type { TrialPlot, TrialReading } from '../../../core/trials/index.ts';

/** Before anything was shot there is nothing to draw. */
export function drawsNothing(plot: TrialPlot): boolean {
  switch (plot.kind) {
    case 'shifts':
    case 'heights':
      return plot.points.length === 0;
    case 'tears':
      return plot.tears.length === 0;
    case 'walk-back':
    case 'clearance':
      return plot.shots.length === 0;
    case 'sizes':
      return plot.sizes.length === 0 && plot.speeds.length === 0;
  }
}

/** What the marks of a picture mean: there is no legend. */
export function pictureNote(plot: TrialPlot, between = false): string {
  switch (plot.kind) {
    case 'shifts': {
      const [first, second] = between
        ? ['A\u2019s', 'B\u2019s centre']
        : ['that of the fletched', 'the centre of the bare shafts'];
      const wide = shiftsRunOut(plot.points) ? ', and is wider than the picture where its edge is not seen' : '';
      return `The dashed oval holds ${second}, as seen from ${first}, with 95 %${wide}.${plot.points.length > 1 ? ' All on one scale.' : ''}`;
    }
    case 'tears':
      return `Each tear from the hole of its point.${plot.mean === null ? '' : ' The heavy oval holds the mean with 95 %.'} Inside the grey band a tear to the side can come from a tuned bow.`;
    case 'walk-back':
      return `Open dots are shots, the farther the lower, as they stand on the butt.${plot.line.length > 0 ? ' The line is the straight one with its 95 % band.' : ''}${plot.curve.length > 0 ? ' Dashed: the best bent one.' : ''}`;
    case 'sizes':
      return plot.sizes.some(({ amongBest }) => amongBest !== null)
        ? `Bars are 95 %. Full dots are not told from the tightest, grey ones are wider. ${SPREAD}`
        : `Bars are 95 %. ${plot.sizes.length > 0 ? `No spread is told from the others. ${SPREAD}` : ''}`.trimEnd();
    case 'heights':
      return `Bars are 95 %.${plot.level === null ? '' : ' The band is where both would strike level, 95 %.'}`;
    case 'clearance':
      return 'A triangle is a mark in the powder, a ring is none.';
  }
}

const SPREAD = 'Two arrows of three strike within one spread to the side, and two of three in height.';

/** The picture for those who hear it: the finding with its figures. */
export const pictureSentence = ({ headline, figures }: Pick<TrialReading, 'headline' | 'figures'>): string =>
  `${headline}. ${figures.map(({ name, value, interval }) => `${name}: ${value}${interval === '' ? '' : `, ${interval}`}`).join('; ')}.`;
