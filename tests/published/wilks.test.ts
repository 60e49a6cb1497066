import { describe, expect, it } from 'vitest';
import { wilksTest } from '../../core/group/index.ts';
import published from '../../fixtures/published/wilks.json';
import { millimetres } from '../core/group/shots.ts';

describe("Wilks' test of three groups (Johnson and Wichern, 6th edition, example 6.9; the book prints .0385 and 8.19)", () => {
  it('Λ, F with 4 and 8 degrees of freedom, and p', () => {
    const { groups, computed, printed } = published;
    expect(groups).toHaveLength(3);
    const test = wilksTest(groups.map(millimetres));
    expect(test?.lambda.toFixed(4)).toBe(printed.lambda.toFixed(4));
    expect(Math.abs((test?.f ?? NaN) - printed.f)).toBeLessThan(0.01);
    expect(test?.lambda).toBeCloseTo(computed.lambda, 8);
    expect(test?.f).toBeCloseTo(computed.f, 8);
    expect(test?.df).toEqual(computed.df);
    expect(test?.p).toBeCloseTo(computed.p, 9);
  });
});
