import { describe, expect, it } from 'vitest';
import {
  archerFields,
  arrowFields,
  arrowsListed,
  bowFields,
  diffSnapshots,
  formFields,
  readingsListed,
  settingFields,
  setupFields,
  speedsListed,
} from '../../../core/compare/index.ts';
import {
  Archer,
  ArrowSet,
  Bow,
  defaultPreferences,
  exampleBundle,
  Form,
  Settings,
  Setup,
  type ForceReading,
  type NumberedArrow,
  type Snapshot,
  type Stamp,
} from '../../../core/model/index.ts';
import { demoRecords, plantedTruths } from '../../../fixtures/demo/index.ts';
import { setUp } from '../trials/build.ts';

const { units } = defaultPreferences;

describe('what differs between two states of a set-up', () => {
  it('is asked of every field that the records have, but for what they point to, look-overs and dry fires', () => {
    const seen = ['lookedOver', 'lookOver', 'dryFired'];
    const housekeeping = ['id', 'kind', 'revision', 'born', 'archivedAt', ...seen, 'form'];
    const pointed = ['archerId', 'bowId', 'arrowSetId', 'settings'];
    const missing = (shape: object, fields: readonly { readonly key: string }[]) =>
      Object.keys(shape).filter((key) => !housekeeping.includes(key) && !fields.some((field) => field.key === key));
    expect(missing(Settings.shape, settingFields)).toEqual([]);
    expect(missing(Form.shape, formFields)).toEqual([]);
    expect(missing(Archer.shape, archerFields)).toEqual([]);
    expect(missing(Bow.shape, bowFields)).toEqual([]);
    expect(missing(ArrowSet.shape, arrowFields)).toEqual([]);
    expect(missing(Setup.shape, [...setupFields, ...pointed.map((key) => ({ key }))])).toEqual([]);
  });

  it('is nothing between a state and itself, and counts what is the same', () => {
    const { differ, same } = diffSnapshots(exampleBundle, setUp(), units);
    expect(differ).toEqual([]);
    const fields = [settingFields, formFields, arrowFields, bowFields, archerFields, setupFields];
    expect(same).toBe(fields.reduce((sum, { length }) => sum + length, 0));
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

  it('tells lists in words, and of equally long ones how many entries read otherwise, in whatever order they stand', () => {
    const read = (inches: number, pounds: number, way: ForceReading['way'] = 'draw'): ForceReading => ({
      draw: inches * 0.0254,
      force: pounds * 4.4482216152605,
      way,
    });
    const forceDraw = [read(10, 6), read(20, 22), read(28, 36)];
    const numbered = (number: number, patch: Partial<NumberedArrow> = {}): NumberedArrow => ({
      number,
      mass: 0.02,
      spines: [],
      straightness: null,
      lookOver: null,
      lookedOver: null,
      setAside: false,
      note: '',
      ...patch,
    });
    const arrows = [numbered(1), numbered(2)];
    const before = setUp({ bow: { forceDraw }, arrowSet: { arrows } });
    const rowsAfter = (bow: Partial<Bow>, arrowSet: Partial<ArrowSet> = {}) =>
      diffSnapshots(before, setUp({ bow: { forceDraw, ...bow }, arrowSet: { arrows, ...arrowSet } }), units).differ;
    expect(rowsAfter({ forceDraw: [...forceDraw].reverse() })).toEqual([]);
    expect(rowsAfter({ forceDraw: [read(10, 6), read(20, 23), read(28, 36)] })).toEqual([
      {
        key: 'bow.forceDraw',
        name: 'Readings off the scale',
        then: '3 readings, 10 to 28 in',
        now: '3 readings, 10 to 28 in',
        difference: '1 otherwise',
      },
    ]);
    expect(rowsAfter({ forceDraw: [...forceDraw, read(20, 21, 'let-down')] })[0]).toMatchObject({
      now: '3 readings and 1 let down, 10 to 28 in',
      difference: '',
    });
    expect(rowsAfter({}, { arrows: [numbered(1), numbered(2, { setAside: true })] })).toMatchObject([
      { key: 'arrowSet.arrows', then: '2 numbered arrows', now: '2 numbered arrows, 1 set aside', difference: '1 otherwise' },
    ]);
    const looked = { nock: 'sound', shaft: 'flaw', point: 'sound', fletching: 'sound' } as const;
    expect(rowsAfter({}, { arrows: [numbered(1), numbered(2, { lookOver: looked })] })).toEqual([]);
    expect([readingsListed([], units), speedsListed([], units), arrowsListed([], units)].map(({ text }) => text)).toEqual([
      'no readings',
      'no arrows timed',
      'no numbered arrows',
    ]);
    expect(speedsListed([{ mass: 0.02, speed: 55 }], units).text).toBe('1 arrow timed, 309 gr');
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
