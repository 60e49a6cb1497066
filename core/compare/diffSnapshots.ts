import { tillerOf } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { NumberedArrow } from '../model/numberedArrow.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { FlightSpeed, ForceReading, SpeedReading } from '../model/readings.ts';
import { textQuantity } from '../units/index.ts';
import { archerFields, arrowFields, bowFields, formFields, settingFields, setupFields, type Field } from './fields.ts';
import { arrowsListed, flightSpeedsListed, readingsListed, speedsListed, type Listed } from './lists.ts';

/** One field that is not as it was, ready to print. */
export interface DiffRow {
  /** record.field, as everywhere. */
  readonly key: string;
  readonly name: string;
  readonly then: string;
  readonly now: string;
  /** Signed, with its unit; of two equally long lists, how many entries read otherwise; empty where the difference is no figure. */
  readonly difference: string;
}

type Value = string | number | boolean | null | Listed;
type Row<V = Value> = readonly [key: string, field: Field, then: V, now: V];

/**
 * What is not as it was between two states of a set-up, and how many fields are.
 *
 * @equation every field of settings, form, arrows, bow, archer and the set-up's own; figures differ when they read otherwise or by more than can be read again, lists when their entries do, in whatever order
 * @param then - the earlier state [record]
 * @param now - the later state [record]
 * @param units - the person's choice of units [record]
 * @returns the fields that differ, settings first, and the count of those that do not [record]
 * @validity look-overs and dry fires are left out: they say what somebody saw on a day, not how the bow is set
 * @source own derivation
 * @example diffSnapshots(exampleBundle, { ...exampleBundle, setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, tiller: 0.005 } } }, defaultPreferences.units).differ[0].difference // "+2 mm"
 */
export function diffSnapshots(
  then: Bundle,
  now: Bundle,
  units: UnitChoice,
): { readonly differ: readonly DiffRow[]; readonly same: number } {
  const rows = [
    ...rowsOf('settings', settingFields, read(then), read(now)),
    ...rowsOf('form', formFields, then.setup.form, now.setup.form),
    ...rowsOf('arrowSet', arrowFields, then.arrowSet, now.arrowSet),
    ...rowsOf('bow', bowFields, then.bow, now.bow),
    ...rowsOf('archer', archerFields, then.archer, now.archer),
    ...rowsOf('setup', setupFields, then.setup, now.setup),
  ].map((row) => inWords(row, units));
  const differ = rows.filter((row) => differs(row, units)).map((row) => shown(row, units));
  return { differ, same: rows.length - differ.length };
}

const read = ({ setup }: Bundle) => ({ ...setup.settings, tiller: tillerOf(setup.settings) });

function rowsOf<K extends string>(
  record: string,
  fields: readonly Field<K>[],
  then: Readonly<Record<K, unknown>>,
  now: Readonly<Record<K, unknown>>,
): Row<unknown>[] {
  return fields.map((field) => [`${record}.${field.key}`, field, then[field.key], now[field.key]]);
}

/** Lists are told by what they come to, not entry by entry. */
function inWords([key, field, then, now]: Row<unknown>, units: UnitChoice): Row {
  const words = (value: unknown): Value => {
    if (!Array.isArray(value)) return value as Value;
    if (key === 'bow.forceDraw') return readingsListed(value as readonly ForceReading[], units);
    if (key === 'setup.flightSpeeds') return flightSpeedsListed(value as readonly FlightSpeed[], units);
    return key === 'setup.chronograph'
      ? speedsListed(value as readonly SpeedReading[], units)
      : arrowsListed(value as readonly NumberedArrow[], units);
  };
  return [key, field, words(then), words(now)];
}

function differs([, field, then, now]: Row, units: UnitChoice): boolean {
  if (isListed(then) && isListed(now)) return then.entries.length !== now.entries.length || otherwise(then, now) > 0;
  if (typeof then !== 'number' || typeof now !== 'number') return then !== now;
  return Math.abs(now - then) > field.resolution || textOf(field, then, units) !== textOf(field, now, units);
}

const isListed = (value: Value): value is Listed => typeof value === 'object' && value !== null && 'entries' in value;

/** How many entries of the later list are not in the earlier one. */
function otherwise(then: Listed, now: Listed): number {
  const left = [...then.entries];
  return now.entries.filter((entry) => {
    const at = left.indexOf(entry);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  }).length;
}

function shown([key, field, then, now]: Row, units: UnitChoice): DiffRow {
  const row = { key, name: field.name, then: textOf(field, then, units), now: textOf(field, now, units), difference: '' };
  if (isListed(then) && isListed(now) && then.entries.length === now.entries.length)
    return { ...row, difference: `${otherwise(then, now)} otherwise` };
  const figures = typeof then === 'number' && typeof now === 'number' && field.use !== null;
  return figures ? { ...row, difference: textQuantity(now - then, field.use, units, { signed: true }) } : row;
}

function textOf(field: Field, value: Value, units: UnitChoice): string {
  if (value === null) return 'not noted';
  if (isListed(value)) return value.text;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' && field.use !== null ? textQuantity(value, field.use, units) : String(value);
}
