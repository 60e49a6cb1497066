import { grain, inch, poundForce, standardGravity } from '../units/exact.ts';

/** What the trade's unit is worth in the other that people think in. */
const pairs = {
  lb: { other: 'kg', factor: poundForce / standardGravity },
  in: { other: 'cm', factor: inch / 0.01 },
  gr: { other: 'g', factor: grain / 0.001 },
} as const;

/**
 * The domain of a rule that the trade speaks of in its own units, said in both.
 *
 * @equation from "to" to in the trade's unit, and in brackets the same in kg, cm or g to one decimal
 * @param range - from and to, in the trade's unit [record]
 * @param unit - the trade's unit [choice]
 * @returns for instance "30 to 60 lb (13.6 to 27.2 kg)" [text]
 * @validity any finite range
 * @source nist-sp811
 * @example inBothUnits({ from: 27, to: 31 }, 'in') // "27 to 31 in (68.6 to 78.7 cm)"
 */
export function inBothUnits({ from, to }: { readonly from: number; readonly to: number }, unit: keyof typeof pairs): string {
  const { other, factor } = pairs[unit];
  return `${from} to ${to} ${unit} (${(from * factor).toFixed(1)} to ${(to * factor).toFixed(1)} ${other})`;
}
