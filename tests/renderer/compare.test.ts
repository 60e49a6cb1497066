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
import { othersOf } from '../../renderer/features/compare/choices.ts';
import { heightsDrawn } from '../../renderer/features/compare/heights.ts';
import { overlayOf } from '../../renderer/features/compare/overlay.ts';
import { rowText } from '../../renderer/features/compare/rowText.ts';

const { units } = defaultPreferences;
const other: ShotBundle = {
  ...exampleBundle,
  setup: { ...exampleBundle.setup, id: '20000000-0000-4000-8000-000000000001', name: 'Other' },
};
const at = (group: ShotGroup, distance: number): ShotGroup => ({ ...group, context: { ...group.context, distance } });

describe('the heights of two arrows, drawn', () => {
  it('stand at the distances of the trade in the shown units, and their sentence carries the last one', () => {
    const fast: ShotBundle = {
      ...other,
      setup: { ...other.setup, settings: { ...other.setup.settings, arrowSpeed: 60 } },
    };
    const slow: ShotBundle = {
      ...exampleBundle,
      setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, arrowSpeed: 50 } },
    };
    for (const [inUnits, distances] of [
      [units, [18, 30, 40, 50, 60, 70]],
      [{ ...units, distance: 'yd' as const }, [20, 30, 40, 50, 60, 80]],
    ] as const) {
      const drawn = heightsDrawn(slow, fast, inUnits);
      expect(drawn.ok && drawn.value.data.samples.map(({ distance }) => distance)).toEqual(distances);
      expect(drawn.ok && drawn.value.data.unit).toBe(inUnits.distance === 'm' ? 'cm' : 'in');
      expect(drawn.ok && drawn.value.sentence).toMatch(
        /^With the sight mark of .+, .+ strikes [\d.]+ (cm|m|in|ft) higher at (70 m|80 yd), /,
      );
    }
  });

  it('wait, and say for which set-up, where one lacks a figure', () => {
    const bare = { ...other, arrowSet: { ...other.arrowSet, weighed: null, linearDensity: null } };
    const drawn = heightsDrawn(exampleBundle, bare, units);
    expect(!drawn.ok && drawn.problem.sentence).toContain('Other: ');
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

  it('agrees with the two figures beside it, as they are printed', () => {
    // 156.6 and 180.4 ft/s: 23.8 apart, but 157 and 180 stand there (computed independently).
    const foot = 0.3048;
    expect(text('speed', 156.6 * foot, 180.4 * foot)).toEqual(['ft/s', '157', '180', '+23']);
    expect(text('time', 0.8751, 0.8749)).toEqual(['s', '0.88', '0.87', '−0.01']);
  });

  it('keeps eighths of an inch beside eighths', () => {
    expect(text('length', 8.25 * 0.0254, 8.5 * 0.0254)).toEqual(['in', '8 1/4', '8 1/2', '+1/4']);
  });
});

describe('what a set-up is compared with unless somebody says otherwise', () => {
  const id = (last: number) => `30000000-0000-4000-8000-00000000000${last}`;
  const { archer, bow, arrowSet, setup } = exampleBundle;

  it('is another one of the same archer, even where a stranger shares bow and arrows', () => {
    const stranger = { ...archer, id: id(1) };
    const ownBow = { ...bow, id: id(2) };
    const ownArrows = { ...arrowSet, id: id(3) };
    const shared = { ...setup, id: id(4), name: 'Shared', archerId: stranger.id };
    const own = { ...setup, id: id(5), name: 'Own', bowId: ownBow.id, arrowSetId: ownArrows.id };
    const records = [archer, bow, arrowSet, setup, stranger, ownBow, ownArrows, shared, own];
    const others = othersOf(new Map(records.map((record) => [record.id, record])), setup.id);
    expect(others.map(({ name }) => name)).toEqual(['Own', 'Shared']);
  });
});
