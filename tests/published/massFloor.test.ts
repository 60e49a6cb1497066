import { describe, expect, it } from 'vitest';
import type { BowKind } from '../../core/model/index.ts';
import { massPerWeightCheck } from '../../core/safety/index.ts';

const grain = 6.479891e-5;
const pound = 4.4482216152605;

const levelAt = (bowKind: BowKind, grPerLb: number) => {
  const weight = 40 * pound;
  const mass = grPerLb * 40 * grain;
  const band = { value: weight, low: weight, high: weight };
  return massPerWeightCheck({ bowKind, leastMassPerWeight: null }, mass, band).level;
};

describe('floors of arrow mass where the bow maker says nothing', () => {
  // Common practice, in grains per pound: target recurve 6 to 7, glass longbow and flatbow 8 to 9, self bow 9 to 10.
  const rows: readonly { kind: BowKind; stop: number; caution: number }[] = [
    { kind: 'take-down recurve', stop: 6, caution: 7 },
    { kind: 'longbow', stop: 8, caution: 9 },
    { kind: 'flatbow', stop: 8, caution: 9 },
    { kind: 'self bow', stop: 9, caution: 10 },
  ];

  it('has rows to check', () => {
    expect(rows.length).toBe(4);
  });

  it.each(rows)('stops a $kind below $stop gr/lb and cautions below $caution [common practice]', ({ kind, stop, caution }) => {
    expect(levelAt(kind, stop - 0.01)).toBe('stop');
    expect(levelAt(kind, stop)).toBe('caution');
    expect(levelAt(kind, caution - 0.01)).toBe('caution');
    expect(levelAt(kind, caution)).toBe('in range');
  });

  it('never takes the 5 gr/lb of the speed rating, a test condition, for a licence [ATA BOW-105]', () => {
    for (const grPerLb of [4, 5, 6, 12]) expect(levelAt('compound', grPerLb)).toBe('unknown');
  });
});
