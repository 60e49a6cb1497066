import type { StringMaterial } from '../../model/index.ts';
import { poundForce as lb } from '../../units/exact.ts';

/** Rough counts of polyester strands by draw weight, from memory: up to so many pounds, so many strands. */
const polyester: readonly (readonly [upTo: number, strands: number])[] = [
  [25, 8],
  [35, 10],
  [45, 12],
  [55, 14],
  [Infinity, 16],
];

/**
 * How many strands are usual for a draw weight.
 *
 * @equation polyester 8 to 25 lb, 10 to 35, 12 to 45, 14 to 55, 16 beyond, from two fewer to four more; HMPE, alone or with LCP, 14 to 20 whatever the weight
 * @param material - of the string [choice]
 * @param weight - F, draw weight [N]
 * @returns low and high [-]; null for a fibre without a usual count [record]
 * @validity counts from memory, two fewer to four more after a federation's coaching notes; the bow maker's own range and the thread's thickness come first
 * @source from memory
 * @example usualStrands('polyester', 180).low // 10
 */
export function usualStrands(
  material: StringMaterial,
  weight: number,
): { readonly low: number; readonly usual: number; readonly high: number } | null {
  if (material === 'HMPE' || material === 'HMPE and LCP') return { low: 14, usual: 18, high: 20 };
  if (material !== 'polyester') return null;
  // Forty-five pounds on the scale are forty-five and a bit as often as not.
  const row = polyester.find(([upTo]) => weight <= (upTo + 0.5) * lb);
  const usual = row?.[1] ?? 16;
  return { low: usual - 2, usual, high: usual + 4 };
}
