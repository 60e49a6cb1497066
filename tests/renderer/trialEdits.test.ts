import { describe, expect, it } from 'vitest';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import type { BenchRecord } from '../../core/model/records.ts';
import type { Trial, TrialKind } from '../../core/model/trial.ts';
import { exampleTrial, sheet, type NextStep, type TrialRow } from '../../core/trials/index.ts';
import { acrossPlace } from '../../renderer/features/trials/acrossPlace.ts';
import { takeUp } from '../../renderer/features/trials/edits.ts';
import { triedNames } from '../../renderer/features/trials/groupNames.ts';
import { noteDone, takeOff } from '../../renderer/features/trials/notes.ts';
import type { Bench } from '../../renderer/state/bench.ts';

const { units } = defaultPreferences;

/** A bench in memory that keeps what a Change writes. */
function benchWith(trial: Trial, bow = exampleBundle.bow) {
  const { archer, arrowSet, setup } = exampleBundle;
  const records = new Map<string, BenchRecord>([archer, bow, arrowSet, setup, trial].map((record) => [record.id, record]));
  const state = {
    records,
    change: (_label: string, edits: (now: typeof records) => readonly { id: string; after: BenchRecord | null }[]) => {
      for (const { id, after } of edits(records)) if (after !== null) records.set(id, after);
      return Promise.resolve(true);
    },
  };
  const groups = () => [...records.values()].filter((record) => record.kind === 'group');
  const trialNow = () => {
    const found = records.get(trial.id);
    if (found?.kind !== 'trial') throw new Error('no trial');
    return found;
  };
  const setupNow = () => {
    const found = records.get(setup.id);
    if (found?.kind !== 'setup') throw new Error('no set-up');
    return found;
  };
  return { bench: { getState: () => state } as unknown as Bench, records, groups, trialNow, setupNow };
}

const begun = (kind: TrialKind, plan: Partial<Trial['plan']> = {}): Trial => {
  const { trial } = exampleTrial(kind);
  return { ...trial, plan: { ...trial.plan, ...plan } };
};
const rowsOf = (trial: Trial): readonly TrialRow[] =>
  sheet({ trial, groups: new Map(), units }).rows.filter(({ which }) => which !== 'speeds');

describe('a row that is taken up', () => {
  it('takes over the sheet of one that was begun and left without a shot, so that no empty group stays', async () => {
    const trial = begun('brace height');
    const { bench, groups, trialNow } = benchWith(trial);
    const [one, other] = rowsOf(trial);
    if (one === undefined || other === undefined) throw new Error('two rows were expected');
    await takeUp(bench, trial.id, one, '40');
    await takeUp(bench, trial.id, other, '40');
    expect(groups()).toHaveLength(1);
    expect(groups()[0]?.context.settings.braceHeight).toBe(other.place?.step);
    expect(trialNow().groups.map(({ step, first }) => [step, first])).toEqual([[other.place?.step, groups()[0]?.id]]);
    expect(triedNames([trialNow()], units).get(groups()[0]?.id ?? '')).toBe('8 3/8 in, brace-height trial');
  });

  it('is not put on the face at a brace height outside the range, whatever the plan says', async () => {
    const common = { ...exampleBundle.bow, braceLow: null, braceHigh: null };
    for (const [height, count] of [
      [5, 0],
      [8.5, 1],
      [13, 0],
    ] as const) {
      const trial = begun('brace height', { steps: [height * 0.0254] });
      const { bench, groups } = benchWith(trial, common);
      const [row] = rowsOf(trial);
      if (row === undefined) throw new Error('a row was expected');
      await takeUp(bench, trial.id, row, '40');
      expect([height, groups().length]).toEqual([height, count]);
    }
  });
});

describe('a change that was noted by mistake', () => {
  const step = { kind: 'change', title: 'Firm the button half a turn', patch: { buttonTurns: 3.5 } } as unknown as NextStep;

  it('is taken off with its setting, where the groups of the trial tell what it was', async () => {
    const trial = begun('bare shaft');
    const { bench, trialNow, setupNow } = benchWith(trial);
    const [row] = rowsOf(trial);
    if (row === undefined) throw new Error('a row was expected');
    await takeUp(bench, trial.id, row, '40');
    await noteDone(bench, trial.id, step);
    expect([trialNow().changes.length, setupNow().settings.buttonTurns]).toEqual([1, 3.5]);
    await takeOff(bench, trial.id);
    expect([trialNow().changes.length, setupNow().settings.buttonTurns]).toEqual([0, 3]);
  });

  it('leaves alone what was set anew since', async () => {
    const trial = begun('bare shaft');
    const { bench, records, setupNow } = benchWith(trial);
    await noteDone(bench, trial.id, step);
    const setup = setupNow();
    records.set(setup.id, { ...setup, settings: { ...setup.settings, buttonTurns: 4 } });
    await takeOff(bench, trial.id);
    expect(setupNow().settings.buttonTurns).toBe(4);
  });
});

describe('a place beside the plumb line', () => {
  const at = (text: string) => {
    const place = acrossPlace(text, units);
    return place.ok ? [place.value.x, place.value.y] : place.problem.code;
  };

  it('is one figure across, to the right unless a minus or an l says left; the height is not asked', () => {
    expect(['15', '15r', '12 l', '−12', '15 mm'].map(at)).toEqual([
      [0.015, 0],
      [0.015, 0],
      [-0.012, 0],
      [-0.012, 0],
      [0.015, 0],
    ]);
    expect(at('15 −40')).toEqual([0.015, -0.04]);
    expect(at('far off')).toBe('one-figure');
  });
});
