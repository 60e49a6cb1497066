import { describe, expect, it } from 'vitest';
import { archerFields, arrowFields, bowFields, diffSnapshots, formFields, settingFields } from '../../../core/compare/index.ts';
import {
  Archer,
  ArrowSet,
  Bow,
  defaultPreferences,
  exampleBundle,
  Form,
  Settings,
  type Snapshot,
  type Stamp,
} from '../../../core/model/index.ts';
import { demoRecords, plantedTruths } from '../../../fixtures/demo/index.ts';
import { setUp } from '../trials/build.ts';

const { units } = defaultPreferences;

describe('what differs between two states of a set-up', () => {
  it('is asked of every field that the records have, but for names of records and look-overs', () => {
    const housekeeping = ['id', 'kind', 'revision', 'born', 'archivedAt', 'lookedOver', 'form'];
    const missing = (shape: object, fields: readonly { readonly key: string }[]) =>
      Object.keys(shape).filter((key) => !housekeeping.includes(key) && !fields.some((field) => field.key === key));
    expect(missing(Settings.shape, settingFields)).toEqual([]);
    expect(missing(Form.shape, formFields)).toEqual([]);
    expect(missing(Archer.shape, archerFields)).toEqual([]);
    expect(missing(Bow.shape, bowFields)).toEqual([]);
    expect(missing(ArrowSet.shape, arrowFields)).toEqual([]);
  });

  it('is nothing between a state and itself, and counts what is the same', () => {
    const { differ, same } = diffSnapshots(exampleBundle, setUp(), units);
    expect(differ).toEqual([]);
    expect(same).toBe(settingFields.length + formFields.length + arrowFields.length + bowFields.length + archerFields.length + 1);
  });

  it('tells figures then and now with a signed difference in the person\u2019s unit', () => {
    const now = setUp({ settings: { braceHeight: 8.25 * 0.0254, nockingPoint: 0.0044, buttonTurns: 3.5 } });
    expect(diffSnapshots(exampleBundle, now, units).differ).toEqual([
      { key: 'settings.braceHeight', name: 'Brace height', then: '8 1/2 in', now: '8 1/4 in', difference: '\u22121/4 in' },
      { key: 'settings.nockingPoint', name: 'Nocking point', then: '6 mm', now: '4.4 mm', difference: '\u22121.6 mm' },
      { key: 'settings.buttonTurns', name: 'Button', then: '3 turns', now: '3 1/2 turns', difference: '+1/2 turn' },
    ]);
    expect(diffSnapshots(exampleBundle, now, { ...units, length: 'mm' }).differ[0]).toMatchObject({
      then: '216 mm',
      now: '210 mm',
    });
  });

  it('tells words, and figures that came or went, without a difference', () => {
    const now = setUp({ form: { hook: 'three under' }, archer: { clicker: false }, settings: { tiller: null } });
    expect(diffSnapshots(exampleBundle, now, units).differ).toEqual([
      { key: 'settings.tiller', name: 'Tiller', then: '3 mm', now: 'not noted', difference: '' },
      { key: 'form.hook', name: 'Hook', then: 'split', now: 'three under', difference: '' },
      { key: 'archer.clicker', name: 'Clicker', then: 'yes', now: 'no', difference: '' },
    ]);
  });

  it('shows no row that reads the same on both sides', () => {
    const now = setUp({ settings: { braceHeight: 8.5 * 0.0254 + 1e-6 } });
    expect(diffSnapshots(exampleBundle, now, units).differ).toEqual([]);
  });

  it('finds in the demo just the settings that were planted between the snapshots', () => {
    const at: Stamp = { at: '2026-06-20T17:45:00.000Z', offsetMinutes: 60 };
    const records = demoRecords(at);
    const { snapshotIds, changed } = plantedTruths.history;
    const [spring, string] = snapshotIds.map((id) =>
      records.find((record): record is Snapshot => record.kind === 'snapshot' && record.id === id),
    );
    if (spring === undefined || string === undefined) throw new Error('Two snapshots were expected.');
    expect(diffSnapshots(spring.state, string.state, units).differ.map(({ key }) => key)).toEqual(
      changed.map((key) => `settings.${key}`),
    );
  });
});
