import { describe, expect, it } from 'vitest';
import { tillerOf, withTiller } from '../../../core/bow/index.ts';
import { unmeasured } from '../../../core/model/index.ts';

describe('tiller', () => {
  const { settings } = unmeasured;

  it('is top less bottom when both distances were measured, whatever was noted alone [common practice]', () => {
    expect(tillerOf({ ...settings, tiller: 0.009, tillerUpper: 0.173, tillerLower: 0.17 })).toBeCloseTo(0.003, 12);
    expect(tillerOf({ ...settings, tillerUpper: 0.17, tillerLower: 0.173 })).toBeCloseTo(-0.003, 12);
  });

  it('is as noted alone when a distance is missing, and unknown when nothing was measured', () => {
    expect(tillerOf({ ...settings, tiller: 0.004, tillerUpper: 0.173 })).toBe(0.004);
    expect(tillerOf({ ...settings, tillerUpper: 0.173 })).toBeNull();
    expect(tillerOf(settings)).toBeNull();
  });

  it('reads as it was set anew: the distances of before do not speak against it', () => {
    const before = { ...settings, tillerUpper: 0.18, tillerLower: 0.17 };
    expect(tillerOf({ ...before, ...withTiller(0.003) })).toBe(0.003);
    expect(tillerOf({ ...before, ...withTiller(null) })).toBeNull();
  });
});
