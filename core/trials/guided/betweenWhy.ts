import type { Why } from '../../findings/finding.ts';
import type { Shift } from '../../group/index.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { shiftWhy } from '../shiftWhy.ts';
import { EACH_OF_TWO } from './eachOfTwo.ts';
import type { SizesCompared } from './sizes.ts';

/**
 * What opens behind Why for A against B: the shift, the sizes, and how the two share the false alarms.
 *
 * @equation shiftWhy at α/2, with the p of the spreads beside it; the chance of either is at most the sum of both, 5 %
 * @param shift - of B from A, at 2.5 % [record]
 * @param sizes - both spreads, at 2.5 %; null where they cannot be told [record]
 * @param units - the person's choice of units [record]
 * @returns the record that the screens open [record]
 * @validity as shiftOver and sizesCompared
 * @source brunner-dette-munk-1997
 * @example betweenWhy(shiftOfGroups(exampleFletched.shots, exampleBare.shots, { alpha: 0.025 }).value, null, defaultPreferences.units).title // "Is a difference real?"
 */
export function betweenWhy(shift: Shift, sizes: SizesCompared | null, units: UnitChoice): Why {
  const { text, symbols, ...why } = shiftWhy(shift, units, EACH_OF_TWO);
  const p = sizes?.p ?? null;
  const size = { symbol: 'p', name: 'chance alone, difference in size', value: p === null ? 'not asked' : chance(p) };
  return {
    ...why,
    title: 'Is a difference real?',
    text: `Two things are asked, whether the centre moves and whether the size changes, so each has half of the 5 % of false alarms, 2.5 %: with nothing between A and B the whole trial says something about once in 20, not once in 10. The intervals among the figures are 95 %, each by itself. ${text} The sizes are told apart by how far the shots lie about their own centres, with the same share.`,
    symbols: [...symbols, size],
  };
}

const chance = (p: number): string => (p < 1e-4 ? 'below 0.0001' : p.toPrecision(2));
