import { describe, expect, it } from 'vitest';
import { given } from '../../../core/model/given.ts';

describe('the figures that a computation cannot do without', () => {
  it('are handed on when all are there and believable', () => {
    expect(given('a test', { drawLength: 0.7, braceHeight: 0.2 })).toEqual({
      ok: true,
      value: { drawLength: 0.7, braceHeight: 0.2 },
    });
  });

  it('are asked for together, in the words of the records', () => {
    const refused = given('the power stroke', { drawLength: null, braceHeight: null });
    expect(refused).toEqual({
      ok: false,
      problem: {
        code: 'missing',
        sentence: 'For the power stroke, enter a draw length and a brace height.',
        field: 'drawLength',
      },
    });
  });

  it.each([
    [Number.NaN, 'not a number'],
    [Number.POSITIVE_INFINITY, 'not a number'],
    [-1, 'out of limits'],
    [0, 'out of limits'],
    [12, 'out of limits'],
  ])('are refused at %s', (value, code) => {
    const refused = given('a test', { braceHeight: value });
    expect(refused.ok ? '' : refused.problem.code).toBe(code);
  });

  it('may stand on their limits', () => {
    expect(given('a test', { braceHeight: 14 * 0.0254 }).ok).toBe(true);
  });
});
