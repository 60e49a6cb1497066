import { describe, expect, it } from 'vitest';
import { priorFromGroups } from '../../core/group/index.ts';
import published from '../../fixtures/published/usualSpread.json';
import { valueOf } from '../core/group/shots.ts';

describe('the usual spread by the method of Smyth 2004 (computed independently)', () => {
  it('has two sets of past groups', () => expect(published.rows).toHaveLength(2));

  it.each(published.rows)('s0² $variance', ({ variances, degreesOfFreedom, variance, weight }) => {
    const prior = valueOf(
      priorFromGroups(variances.map((value, i) => ({ variance: value, degreesOfFreedom: degreesOfFreedom[i] ?? NaN }))),
    );
    expect(prior.variance).toBeCloseTo(variance, 6);
    // Groups that differ no more than chance give an endless weight, which is held at 24.
    expect(prior.degreesOfFreedom).toBeCloseTo(weight ?? 24, 8);
    expect(prior.capped).toBe(weight === null);
  });
});
