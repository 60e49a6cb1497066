import { describe, expect, it } from 'vitest';
import { idFor, normalPair, randomFrom } from '../../fixtures/random.ts';

describe('the generator of the demo', () => {
  it('gives numbers in [0, 1) that fill it evenly', () => {
    const random = randomFrom(7);
    const numbers = Array.from({ length: 20_000 }, random);
    expect(numbers.every((number) => number >= 0 && number < 1)).toBe(true);
    const tenths = Array.from({ length: 10 }, (_, index) => numbers.filter((number) => Math.floor(number * 10) === index).length);
    // Chi-square with 9 degrees of freedom: 27.88 is passed once in a thousand (any table).
    expect(tenths.reduce((sum, count) => sum + (count - 2000) ** 2 / 2000, 0)).toBeLessThan(27.88);
  });

  it('gives standard normal pairs: mean 0, variance 1, no correlation, 95 % of radii within 2.447747', () => {
    const random = randomFrom(11);
    const pairs = Array.from({ length: 20_000 }, () => normalPair(random));
    const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
    expect(Math.abs(mean(pairs.map(([a]) => a)))).toBeLessThan(0.03);
    expect(Math.abs(mean(pairs.map(([a]) => a * a)) - 1)).toBeLessThan(0.04);
    expect(Math.abs(mean(pairs.map(([, b]) => b * b)) - 1)).toBeLessThan(0.04);
    expect(Math.abs(mean(pairs.map(([a, b]) => a * b)))).toBeLessThan(0.03);
    // R95 of the round normal: sqrt(-2 ln 0.05).
    expect(Math.abs(mean(pairs.map(([a, b]) => Number(Math.hypot(a, b) <= 2.447747))) - 0.95)).toBeLessThan(0.006);
  });

  it('gives identities in the form of RFC 9562 version 4, one to a name', () => {
    const form = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
    const names = Array.from({ length: 2000 }, (_, index) => `name ${index}`);
    expect(names.every((name) => form.test(idFor(name)))).toBe(true);
    expect(new Set(names.map(idFor)).size).toBe(names.length);
    expect(idFor('name 1')).toBe(idFor('name 1'));
  });
});
