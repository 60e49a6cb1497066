import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import { archerFields, arrowFields, bowFields, formFields, settingFields, type Field } from './fields.ts';

/** One field that is not as it was, ready to print. */
export interface DiffRow {
  /** record.field, as everywhere. */
  readonly key: string;
  readonly name: string;
  readonly then: string;
  readonly now: string;
  /** Signed, with its unit; empty where the difference is no figure. */
  readonly difference: string;
}

type Value = string | number | boolean | null;
type Row = readonly [key: string, field: Field, then: Value, now: Value];

/**
 * What is not as it was between two states of a set-up, and how many fields are.
 *
 * @equation every field of settings, form, arrows, bow, archer and the set-up's name; figures differ when they read otherwise or by more than can be read again
 * @param then - the earlier state [record]
 * @param now - the later state [record]
 * @param units - the person's choice of units [record]
 * @returns the fields that differ, settings first, and the count of those that do not [record]
 * @validity look-overs are left out: they say what somebody saw on a day, not how the bow is set
 * @source own derivation
 * @example diffSnapshots(exampleBundle, { ...exampleBundle, setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, tiller: 0.005 } } }, defaultPreferences.units).differ[0].difference // "+2 mm"
 */
export function diffSnapshots(
  then: Bundle,
  now: Bundle,
  units: UnitChoice,
): { readonly differ: readonly DiffRow[]; readonly same: number } {
  const rows: readonly Row[] = [
    ...rowsOf('settings', settingFields, then.setup.settings, now.setup.settings),
    ...rowsOf('form', formFields, then.setup.form, now.setup.form),
    ...rowsOf('arrowSet', arrowFields, then.arrowSet, now.arrowSet),
    ...rowsOf('bow', bowFields, then.bow, now.bow),
    ...rowsOf('archer', archerFields, then.archer, now.archer),
    ...rowsOf('setup', [nameField], then.setup, now.setup),
  ];
  const differ = rows.filter((row) => differs(row, units)).map((row) => shown(row, units));
  return { differ, same: rows.length - differ.length };
}

const nameField: Field<'name'> = { key: 'name', name: 'Set-up', use: null, resolution: 0 };

function rowsOf<K extends string>(
  record: string,
  fields: readonly Field<K>[],
  then: Readonly<Record<K, unknown>>,
  now: Readonly<Record<K, unknown>>,
): Row[] {
  return fields.map((field): Row => [`${record}.${field.key}`, field, then[field.key] as Value, now[field.key] as Value]);
}

function differs([, field, then, now]: Row, units: UnitChoice): boolean {
  if (typeof then !== 'number' || typeof now !== 'number') return then !== now;
  return Math.abs(now - then) > field.resolution || textOf(field, then, units) !== textOf(field, now, units);
}

function shown([key, field, then, now]: Row, units: UnitChoice): DiffRow {
  const figures = typeof then === 'number' && typeof now === 'number' && field.use !== null;
  return {
    key,
    name: field.name,
    then: textOf(field, then, units),
    now: textOf(field, now, units),
    difference: figures ? textQuantity(now - then, field.use, units, { signed: true }) : '',
  };
}

function textOf(field: Field, value: Value, units: UnitChoice): string {
  if (value === null) return 'not noted';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' && field.use !== null ? textQuantity(value, field.use, units) : String(value);
}
