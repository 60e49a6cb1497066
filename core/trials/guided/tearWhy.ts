import type { Why } from '../../findings/finding.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { usualTearText } from './disputed.ts';
import { placeFigure } from './figures.ts';
import type { TearEvidence } from './tears.ts';

/**
 * What opens behind Why for tears in paper.
 *
 * @equation the mean tear with its t interval, and the rules of height and side
 * @param evidence - from tearEvidence [record]
 * @param units - the person's choice of units [record]
 * @returns the record that the screens open [record]
 * @validity as tearEvidence
 * @source common practice
 * @example tearWhy(tearEvidence([0.02, 0.022, 0.021].map((up) => ({ distance: 2, across: 0, up, fletching: 'fletched' })), exampleBundle.arrowSet), defaultPreferences.units).symbols.length // 3
 */
export function tearWhy({ n, across, up }: TearEvidence, units: UnitChoice): Why {
  const row = (symbol: string, name: string, mean: TearEvidence['up']) => {
    const { value, interval } = placeFigure(name, mean.value, mean.high - mean.value, units);
    return { symbol, name, value: `${value} ${interval}` };
  };
  return {
    title: 'What a tear says',
    text: `A tear runs from the hole of the point to that of the nock. Nock high: the nocking point is high; nock low: it is low, or the shaft bounces off the rest. To the side a finger-released arrow is flexing as it passes, so up to ${usualTearText(units)} can come from a tuned bow, and only more than that is read, as a gross error and not as a setting. A height counts when its 95 % interval leaves out nought and it is longer than the shaft is thick.`,
    equation: 'x\u0304 \u00b1 t\u2080.\u2089\u2087\u2085(n \u2212 1) s / \u221an',
    symbols: [
      { symbol: 'n', name: 'tears', value: String(n) },
      row('x', 'nock to the right', across),
      row('y', 'nock upwards', up),
    ],
    source: 'common practice',
  };
}
