import { describe, expect, it } from 'vitest';
import { setupSpeed } from '../../core/bow/index.ts';
import { exampleBundle } from '../../core/model/example.ts';
import type { BenchRecord } from '../../core/model/records.ts';
import type { Setup } from '../../core/model/setup.ts';
import { settingsWith, timedAnew, timedWith } from '../../renderer/state/timed.ts';

const grain = 6.479891e-5;
const { arrowSet, setup } = exampleBundle;
const records = new Map<string, BenchRecord>([
  [arrowSet.id, arrowSet],
  [setup.id, setup],
]);
const timed = { ...setup, settings: settingsWith(setup, { arrowSpeed: 55 }, records) };

describe('a measured arrow speed', () => {
  it('keeps the whole arrow and the brace height that it was measured with, and drops them with itself', () => {
    expect(timed.settings).toMatchObject({ arrowSpeed: 55, speedMass: arrowSet.weighed, speedBrace: setup.settings.braceHeight });
    expect(settingsWith(timed, { arrowSpeed: null }, records)).toMatchObject({ speedMass: null, speedBrace: null });
    expect(timedWith(55, undefined, { braceHeight: null })).toEqual({ arrowSpeed: 55, speedMass: null, speedBrace: null });
  });

  it('stays as it was noted when another setting is typed, and takes the first brace height that is noted after it', () => {
    expect(settingsWith(timed, { braceHeight: 0.2 }, records)).toEqual({ ...timed.settings, braceHeight: 0.2 });
    const unbraced = { ...timed, settings: { ...timed.settings, braceHeight: null, speedBrace: null } };
    expect(settingsWith(unbraced, { braceHeight: 0.2 }, records).speedBrace).toBe(0.2);
  });

  it('goes along with an arrow that becomes better known, and not with one that becomes another', () => {
    const parts = { ...arrowSet, weighed: null, nockMass: null };
    const before = { ...timed, settings: { ...timed.settings, ...timedWith(55, parts, timed.settings) } };
    const [edit] = timedAnew(parts, { nockMass: 8 * grain }, [before]);
    const after = (edit?.after as Setup | undefined)?.settings.speedMass ?? 0;
    expect(after - (before.settings.speedMass ?? 0)).toBeCloseTo(8 * grain, 12);
    expect(timedAnew(parts, { pointMass: 150 * grain }, [before])).toEqual([]);
    const unknown = { ...before, settings: { ...before.settings, speedMass: null } };
    expect(timedAnew({ ...parts, linearDensity: null }, { weighed: 0.021 }, [unknown])[0]?.after).toMatchObject({
      settings: { speedMass: 0.021 },
    });
    expect(timedAnew(parts, { nockMass: 8 * grain }, [{ ...before, arrowSetId: setup.id }])).toEqual([]);
  });

  it('is carried over once the arrow is another, and measured again once it is typed', () => {
    const heavier = { ...arrowSet, weighed: (arrowSet.weighed ?? 0) + 40 * grain };
    const bundle = { ...exampleBundle, arrowSet: heavier, setup: timed };
    expect(setupSpeed(bundle)).toMatchObject({ ok: true, value: { from: 'carried' } });
    const again = settingsWith(timed, { arrowSpeed: 53 }, new Map([[arrowSet.id, heavier]]));
    expect(setupSpeed({ ...bundle, setup: { ...timed, settings: again } })).toMatchObject({
      ok: true,
      value: { from: 'measured', value: 53 },
    });
  });
});
