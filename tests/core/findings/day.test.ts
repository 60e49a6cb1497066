import { describe, expect, it } from 'vitest';
import { dayText } from '../../../core/findings/index.ts';
import { countWord, together } from '../../../core/model/index.ts';

const at = (instant: string, offsetMinutes = 0) => ({ at: instant, offsetMinutes });

describe('the day of an instant', () => {
  it('is the one on the calendar of the place, whatever the day was in Greenwich', () => {
    expect(dayText(at('2026-11-12T23:30:00Z', 60))).toBe('13 Nov 2026');
    expect(dayText(at('2027-01-01T04:00:00Z', -300))).toBe('31 Dec 2026');
  });

  it('is "today" on that day, and has its year only in another year', () => {
    const today = at('2026-11-25T12:00:00Z');
    expect(dayText(at('2026-11-25T00:10:00Z'), today)).toBe('today');
    expect(dayText(at('2026-11-24T23:50:00Z'), today)).toBe('24 Nov');
    expect(dayText(at('2026-11-24T23:50:00Z', 60), today)).toBe('today');
    expect(dayText(at('2025-11-25T12:00:00Z'), today)).toBe('25 Nov 2025');
  });
});

describe('words of a sentence', () => {
  it('put things together with commas and one "and"', () => {
    expect([[], ['A'], ['A', 'B'], ['A', 'B', 'C']].map((parts) => together(parts))).toEqual(['', 'A', 'A and B', 'A, B and C']);
  });

  it('count in words to twelve and in figures after', () => {
    expect([0, 1, 12, 13].map(countWord)).toEqual(['no', 'one', 'twelve', '13']);
  });
});
