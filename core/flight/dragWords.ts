import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { DragAlong } from './dragAlong.ts';

const ordinals = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];
const nth = (index: number) => (ordinals[index] === undefined ? `Reading ${index + 1}` : `The ${ordinals[index]} reading`);
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/**
 * What speeds along a flight say of themselves: which one does not fit, and what would settle it.
 *
 * @equation the doubt that dragAlong found, in words, with its figures
 * @param along - what the speeds say [record]
 * @param units - the person's choice of units [record]
 * @returns sentences, ready to read; none where more than two readings agree [list]
 * @validity any answer of dragAlong
 * @source own derivation
 * @example alongNotes({ readings: [1, 2], doubt: null, stretches: null }, defaultPreferences.units).length // 1
 */
export function alongNotes(
  along: Pick<DragAlong, 'readings' | 'inconsistent' | 'doubt' | 'stretches' | 'scatter'>,
  units: UnitChoice,
): string[] {
  const { readings, doubt, stretches, scatter } = along;
  const speed = (si: number) => textQuantity(si, 'speed', units);
  const apart =
    stretches === null || stretches < 1.5 ? '' : ` From stretch to stretch the drag differs ${stretches.toFixed(1)} times.`;
  if (doubt === 'one') {
    const index = along.inconsistent ?? 0;
    const odd = readings[index];
    if (odd === undefined) return [];
    const others = odd.expected === null ? '' : `: the others say ${speed(odd.expected)} there`;
    return [
      `${nth(index)}, ${speed(odd.speed)} at ${textQuantity(odd.distance, 'distance', units)}, does not fit${others}.${apart} Read it again or take it out; until then no drag is taken from these speeds.`,
    ];
  }
  if (doubt === 'one of three')
    return [
      `One of the three speeds does not fit the other two, and it cannot be told which.${apart} Read a fourth, or all again; until then no drag is taken from them.`,
    ];
  if (doubt === 'scatter')
    return [
      `These speeds scatter by ${percent(scatter ?? 0)} about one curve, and one arrow’s do by less than 1 %.${apart} Read them again, one arrow in still air; until then no drag is taken from them.`,
    ];
  return readings.length === 2 ? ['Two speeds give a drag and nothing to check it by: a third, between them, would.'] : [];
}
