import type { TrialPlot, TrialReading } from '../../../core/trials/index.ts';

/** What the marks of a picture mean: there is no legend. */
export function pictureNote(plot: TrialPlot): string {
  switch (plot.kind) {
    case 'shifts':
      return 'The dashed oval holds the second centre, as seen from the first, with 95 %. Right is right, up is up; all on one scale.';
    case 'tears':
      return `Each tear from the hole of its point.${plot.mean === null ? '' : ' The heavy oval holds the mean with 95 %.'} Inside the grey band a tear to the side can come from a tuned bow.`;
    case 'walk-back':
      return `Open dots are shots, the farther the lower, as they stand on the butt.${plot.line.length > 0 ? ' The line is the straight one with its 95 % band.' : ''}${plot.curve.length > 0 ? ' Dashed: the best bent one.' : ''}`;
    case 'sizes':
      return plot.sizes.some(({ amongBest }) => amongBest !== null)
        ? 'Bars are 95 %. Full dots are not told from the tightest, grey ones are wider.'
        : 'Bars are 95 %. No spread is told from the others.';
    case 'heights':
      return `Bars are 95 %.${plot.level === null ? '' : ' The band is where both would strike level, 95 %.'}`;
    case 'clearance':
      return 'A triangle is a mark in the powder, a ring is none.';
  }
}

/** The picture for those who hear it: the finding with its figures. */
export const pictureSentence = ({ headline, figures }: Pick<TrialReading, 'headline' | 'figures'>): string =>
  `${headline}. ${figures.map(({ name, value, interval }) => `${name}: ${value}${interval === '' ? '' : `, ${interval}`}`).join('; ')}.`;
