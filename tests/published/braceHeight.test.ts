import { describe, expect, it } from 'vitest';
import { braceHeightRange } from '../../core/bow/index.ts';
import type { BowKind } from '../../core/model/index.ts';

const inch = 0.0254;

const rangeIn = (bowKind: BowKind, lengthIn: number | null) => {
  const range = braceHeightRange({
    bowKind,
    length: lengthIn === null ? null : lengthIn * inch,
    braceLow: null,
    braceHigh: null,
  });
  return range === null ? null : { low: range.low / inch, high: range.high / inch, from: range.from };
};

describe('brace height by kind and length of bow', () => {
  // Common practice of the trade, in inches and again in the millimetres that the same trade prints.
  const rows: readonly {
    kind: BowKind;
    lengthsIn: readonly number[];
    low: number;
    high: number;
    mm: readonly [number, number];
  }[] = [
    { kind: 'take-down recurve', lengthsIn: [62, 63, 64], low: 7.5, high: 8.5, mm: [190, 216] },
    { kind: 'take-down recurve', lengthsIn: [66, 67, 68], low: 8, high: 9, mm: [203, 229] },
    { kind: 'one-piece recurve', lengthsIn: [70, 71, 72], low: 8.75, high: 9.5, mm: [222, 241] },
  ];

  it('has rows to check', () => {
    expect(rows.length).toBe(3);
  });

  it.each(rows)(
    'puts a $kind of $lengthsIn in between $low and $high in [common practice]',
    ({ kind, lengthsIn, low, high, mm }) => {
      for (const lengthIn of lengthsIn) {
        const range = rangeIn(kind, lengthIn);
        expect(range?.low).toBeCloseTo(low, 9);
        expect(range?.high).toBeCloseTo(high, 9);
        expect(range?.from).toBe('common practice');
        expect(Math.abs(low * 25.4 - mm[0])).toBeLessThan(1);
        expect(Math.abs(high * 25.4 - mm[1])).toBeLessThan(1);
      }
    },
  );

  it.each([48, 58, 61, 73, 76])('puts a recurve of %s in among all recurves, 8 to 10 in [common practice]', (lengthIn) => {
    const range = rangeIn('take-down recurve', lengthIn);
    expect(range?.low).toBeCloseTo(8, 9);
    expect(range?.high).toBeCloseTo(10, 9);
  });

  it('puts a longbow at a fist and thumb, 6 to 7 in, about 170 mm [common practice]', () => {
    const range = rangeIn('longbow', 68);
    expect(range).toMatchObject({ from: 'common practice' });
    expect(range?.low).toBeCloseTo(6, 9);
    expect(range?.high).toBeCloseTo(7, 9);
  });

  it('puts a self bow at 5 3/4 to 6 1/4 in [common practice]', () => {
    const range = rangeIn('self bow', null);
    expect(range?.low).toBeCloseTo(5.75, 9);
    expect(range?.high).toBeCloseTo(6.25, 9);
  });

  it('puts a flatbow at 6 1/2 to 7 1/2 in and says that this is from memory [from memory]', () => {
    const range = rangeIn('flatbow', 66);
    expect(range?.low).toBeCloseTo(6.5, 9);
    expect(range?.high).toBeCloseTo(7.5, 9);
    expect(range?.from).toBe('from memory');
  });
});
