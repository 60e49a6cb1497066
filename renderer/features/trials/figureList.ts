import { limits, type Measure } from '../../../core/model/limits.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../core/model/problem.ts';
import { readMeasure, showQuantity, textQuantity, unitOf } from '../../../core/units/index.ts';

/** "10, 18 m": the unit once, behind the last. */
export function listText(values: readonly number[], measure: Measure, units: UnitChoice): string {
  const { use } = limits[measure];
  return values
    .map((value, i) => (i === values.length - 1 ? textQuantity(value, use, units) : showQuantity(value, use, units).figure))
    .join(', ');
}

/** As the usual plans are: a figure typed again is the same place. */
const toMicrometre = (si: number): number => Math.round(si * 1e6) / 1e6;

/** The figures of such a list, lowest first and each once. A unit behind the last holds for those that have none of their own. */
export function readList(text: string, measure: Measure, units: UnitChoice, most: number): Result<number[]> {
  const parts = text
    .split(/\s*(?:;|,(?!\d)|,(?=\d+\s*,)|\band\b)\s*|,\s+/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const unit = /[a-z"'′″]+\.?$/iu.exec(parts.at(-1) ?? '')?.[0] ?? '';
  const values: number[] = [];
  for (const part of parts) {
    const read = readMeasure(measure, /[a-z"'′″]$/iu.test(part) ? part : `${part} ${unit}`.trim(), units);
    if (!read.ok) return read;
    if (read.value === null) continue;
    const value = toMicrometre(read.value);
    if (!values.includes(value)) values.push(value);
  }
  if (values.length === 0 || values.length > most) {
    const such = `as in 10, 18 ${unitOf(limits[measure].use, units)}`;
    return refuse('no-list', `1 to ${most} figures were expected, parted by commas, ${such}.`, measure);
  }
  return ok(values.sort((a, b) => a - b));
}
