import { describe, expect, it } from 'vitest';
import type { CompareRow } from '../../core/compare/index.ts';
import {
  defaultPreferences,
  exampleBare,
  exampleBundle,
  exampleFletched,
  type ShotBundle,
  type ShotGroup,
} from '../../core/model/index.ts';
import { heightsApart } from '../../renderer/features/compare/heights.ts';
import { overlayOf } from '../../renderer/features/compare/overlay.ts';
import { rowText } from '../../renderer/features/compare/rowText.ts';

const { units } = defaultPreferences;
const other: ShotBundle = {
  ...exampleBundle,
  setup: { ...exampleBundle.setup, id: '20000000-0000-4000-8000-000000000001', name: 'Other' },
};
const at = (group: ShotGroup, distance: number): ShotGroup => ({ ...group, context: { ...group.context, distance } });

describe('the height at which two arrows strike', () => {
  const measured = (bundle: ShotBundle, arrowSpeed: number): ShotBundle => ({
    ...bundle,
    setup: { ...bundle.setup, settings: { ...bundle.setup.settings, arrowSpeed } },
  });

  it('is the same for the same arrow', () => {
    const apart = heightsApart(exampleBundle, other, units);
    expect(apart.ok && apart.value.data.samples.length).toBe(6);
    if (!apart.ok) return;
    for (const sample of apart.value.data.samples) {
      expect(sample.value).toBeCloseTo(0, 4);
      expect(sample.low).toBeCloseTo(0, 4);
      expect(sample.high).toBeCloseTo(0, 4);
    }
  });

  it('follows the flat flight without air for a faster arrow: g x²/2 (1/v1² − 1/v2²), less a little for drag', () => {
    const [v1, v2] = [55, 57];
    const apart = heightsApart(measured(exampleBundle, v1), measured(other, v2), units);
    expect(apart.ok).toBe(true);
    if (!apart.ok) return;
    const near = apart.value.data.samples[0];
    // Computed independently: free fall over the two flight times; at 18 m drag changes it by a few per cent.
    const expectedCm = 100 * ((9.80665 * 18 ** 2) / 2) * (1 / v1 ** 2 - 1 / v2 ** 2);
    expect(near?.distance).toBe(18);
    expect((near?.value ?? 0) / expectedCm).toBeGreaterThan(0.97);
    expect((near?.value ?? 0) / expectedCm).toBeLessThan(1.08);
    for (const sample of apart.value.data.samples) {
      expect(sample.low).toBeLessThan(sample.value);
      expect(sample.high).toBeGreaterThan(sample.value);
    }
  });

  it('says which set-up lacks what', () => {
    const bare = { ...other, arrowSet: { ...other.arrowSet, weighed: null, linearDensity: null } };
    const apart = heightsApart(exampleBundle, bare, units);
    expect(apart.ok).toBe(false);
    expect(!apart.ok && apart.problem.sentence).toContain('Other');
  });
});

describe('the groups of two set-ups laid over each other', () => {
  it('are the bare shafts off their fletched centre where both have them', () => {
    const overlay = overlayOf(exampleBundle, other, units);
    expect(overlay.ok && overlay.value.kind).toBe('bare');
    expect(overlay.ok && overlay.value.data.rings).toEqual([]);
  });

  it('are the fletched groups on the face where only one has bare shafts', () => {
    const overlay = overlayOf(exampleBundle, { ...other, groups: [exampleFletched] }, units);
    expect(overlay.ok && overlay.value.kind).toBe('fletched');
    expect(overlay.ok && overlay.value.data.rings.length).toBeGreaterThan(5);
  });

  it('are never of two distances', () => {
    const overlay = overlayOf(exampleBundle, { ...other, groups: [at(exampleFletched, 30), at(exampleBare, 30)] }, units);
    expect(overlay.ok).toBe(false);
    expect(!overlay.ok && overlay.problem.sentence).toContain('one distance');
  });

  it('tell when something besides the equipment differed', () => {
    const form = { ...exampleFletched.context.form, hook: 'three under' as const };
    const fletched = { ...exampleFletched, context: { ...exampleFletched.context, form } };
    const overlay = overlayOf({ ...exampleBundle, groups: [exampleFletched] }, { ...other, groups: [fletched] }, units);
    expect(overlay.ok && overlay.value.told.join(' ')).toContain('not the equipment\u2019s alone');
  });

  it('leaves out groups that have no centre: one shot, or all in one hole', () => {
    const one = { ...exampleFletched, shots: exampleFletched.shots.slice(0, 1) };
    expect(overlayOf({ ...exampleBundle, groups: [one] }, other, units).ok).toBe(false);
  });
});

describe('a row of the comparison', () => {
  const row = (use: CompareRow['use'], one: number, another: number): CompareRow => ({
    key: 'any',
    name: 'Any',
    use,
    section: 'Build',
    reference: { value: one, half: null },
    other: { value: another, half: null },
    difference: another - one,
    noise: 0,
    verdict: 'real',
    note: '',
  });
  const text = (use: CompareRow['use'], one: number, another: number) => {
    const { unit, reference, other: second, difference } = rowText(row(use, one, another), units, [false, false]);
    return [unit, reference, second, difference];
  };

  it('has its difference in the unit of the column, never in a smaller one', () => {
    expect(text('time', 0.949, 0.928)).toEqual(['s', '0.95', '0.93', '−0.02']);
  });

  it('spends more decimals before a difference reads as nought', () => {
    expect(text('time', 0.949, 0.947)).toEqual(['s', '0.95', '0.95', '−0.002']);
    expect(text('speed', 54.9, 55.0)).toEqual(['ft/s', '180', '180', '+0.3']);
  });

  it('keeps eighths of an inch beside eighths', () => {
    expect(text('length', 8.25 * 0.0254, 8.5 * 0.0254)).toEqual(['in', '8 1/4', '8 1/2', '+1/4']);
  });
});
