import { describe, expect, it } from 'vitest';
import { braceHeightCheck, braceHeightRange } from '../../../core/bow/index.ts';
import type { Bow } from '../../../core/model/index.ts';

const inch = 0.0254;
type Braced = Pick<Bow, 'bowKind' | 'length' | 'braceLow' | 'braceHigh'>;
const recurve: Braced = { bowKind: 'take-down recurve', length: 66 * inch, braceLow: null, braceHigh: null };

describe('range of a brace height', () => {
  it('is the bow maker’s own when both ends are there, for a compound too', () => {
    const own = { braceLow: 8.25 * inch, braceHigh: 9.25 * inch };
    expect(braceHeightRange({ ...recurve, ...own })).toMatchObject({ low: 8.25 * inch, high: 9.25 * inch, from: 'maker' });
    expect(braceHeightRange({ ...recurve, bowKind: 'compound', ...own })?.from).toBe('maker');
  });

  it('takes the maker’s ends in either order', () => {
    const swapped = braceHeightRange({ ...recurve, braceLow: 9.25 * inch, braceHigh: 8.25 * inch });
    expect(swapped).toMatchObject({ low: 8.25 * inch, high: 9.25 * inch, from: 'maker' });
  });

  it('does not take one end alone, or two equal ends, for a range', () => {
    for (const braceHigh of [null, 8.25 * inch])
      expect(braceHeightRange({ ...recurve, braceLow: 8.25 * inch, braceHigh })?.from).toBe('common practice');
    expect(braceHeightRange({ ...recurve, braceHigh: 9 * inch })?.from).toBe('common practice');
  });

  it('holds both neighbours and is less sure for a length between two rows', () => {
    const between = braceHeightRange({ ...recurve, length: 65 * inch });
    expect(between?.low).toBeCloseTo(7.5 * inch, 9);
    expect(between?.high).toBeCloseTo(9 * inch, 9);
    expect(between?.sureness).toBe('medium');
    const upper = braceHeightRange({ ...recurve, length: 69 * inch });
    expect(upper?.low).toBeCloseTo(8 * inch, 9);
    expect(upper?.high).toBeCloseTo(9.5 * inch, 9);
  });

  it('counts a recurve of unknown length among all recurves, unsurely', () => {
    expect(braceHeightRange({ ...recurve, length: null })?.sureness).toBe('low');
    expect(braceHeightRange({ ...recurve, length: Number.NaN })?.sureness).toBe('low');
  });

  it('puts 66 in typed as 167.6 cm into the row that begins at 66 in', () => {
    expect(braceHeightRange({ ...recurve, length: 1.676 })?.sureness).toBe('high');
  });

  it('has none for a compound without its maker’s', () => {
    expect(braceHeightRange({ ...recurve, bowKind: 'compound' })).toBeNull();
  });
});

describe('check of a brace height', () => {
  const range = { low: 8 * inch, high: 9 * inch };

  it('is in range on both ends, however they were typed', () => {
    expect(braceHeightCheck(8 * inch, range).verdict).toBe('in range');
    expect(braceHeightCheck(0.2286, range)).toEqual({ verdict: 'in range', distance: 0 });
  });

  it('says low and high with the distance to the range', () => {
    const low = braceHeightCheck(7.5 * inch, range);
    expect(low.verdict).toBe('low');
    expect(low.distance).toBeCloseTo(0.5 * inch, 12);
    const high = braceHeightCheck(9.25 * inch, range);
    expect(high.verdict).toBe('high');
    expect(high.distance).toBeCloseTo(0.25 * inch, 12);
  });

  it.each([Number.NaN, 0, -0.2])('throws a RangeError for %s', (bad) => {
    expect(() => braceHeightCheck(bad, range)).toThrow(RangeError);
    expect(() => braceHeightCheck(0.2, { low: bad, high: Number.NaN })).toThrow(RangeError);
  });
});
