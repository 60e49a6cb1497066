import type { CompareRow } from '../../../core/compare/index.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { readsNought, showQuantity, unitOf } from '../../../core/units/index.ts';

interface RowText {
  readonly unit: string;
  readonly reference: string;
  readonly other: string;
  readonly difference: string;
  /** What would tell, where the difference cannot be told. */
  readonly would: string | null;
  /** What the figures rest on. */
  readonly note: string;
}

const DASH = '–';

/** Figures of a shaft on a bow, or of its flight: not shown of a set-up that may not be shot. */
const restsOnShooting = ({ key, section }: CompareRow): boolean => section === 'Far off' || key === 'margin';

/** A row's figures as they are printed, with their decimals below each other. */
export function rowText(row: CompareRow, units: UnitChoice, stopped: readonly boolean[]): RowText {
  const heldBack = restsOnShooting(row) ? stopped : [];
  const sides = [row.reference, row.other].map((side, index) => (heldBack[index] === true ? null : side));
  const plain = sides.map((side) => (side === null ? DASH : showQuantity(side.value, row.use, units).figure));
  const aligned = plain.some((text) => text.includes('/')) ? null : Math.max(...plain.map(decimalsIn));
  const [reference = DASH, other = DASH] = sides.map((side, index) =>
    side === null || aligned === null ? plain[index] : showQuantity(side.value, row.use, units, { digits: aligned }).figure,
  );
  const would = heldBack.includes(true) ? 'Held back until the stop is answered.' : row.verdict === 'unknown' ? row.note : null;
  return {
    unit: unitOf(row.use, units),
    reference,
    other,
    difference:
      row.verdict === 'same'
        ? 'same'
        : row.difference === null
          ? ''
          : signed(row.difference, row.use, units, aligned ?? 0, [reference, other]),
    would,
    note: would === null ? row.note : '',
  };
}

/** So many decimals more are spent on a difference before it may read as nought. */
const FINER = 2;

/** In the unit of its column, with at least as many decimals as the figures it comes from. */
function signed(
  difference: number,
  use: CompareRow['use'],
  units: UnitChoice,
  digits: number,
  shown: readonly [string, string],
): string {
  const own = showQuantity(difference, use, units, { signed: true });
  if (own.figure.includes('/')) return own.figure;
  const least = Math.max(digits, own.unit === unitOf(use, units) ? decimalsIn(own.figure) : 0);
  const withDecimals = (decimals: number) => showQuantity(difference, use, units, { signed: true, digits: decimals }).figure;
  const asShown = least === digits ? apart(shown, digits) : null;
  if (asShown !== null && !readsNought(asShown)) return asShown;
  const tried = Array.from({ length: FINER + 1 }, (_, more) => withDecimals(least + more));
  return tried.find((text) => !readsNought(text)) ?? withDecimals(least);
}

/** The difference of two figures as they are printed, so that the three agree; null where one of them is no plain number. */
function apart([reference, other]: readonly [string, string], digits: number): string | null {
  const difference = Number(other.replace('−', '-')) - Number(reference.replace('−', '-'));
  if (!Number.isFinite(difference)) return null;
  return `${difference < 0 ? '−' : '+'}${Math.abs(difference).toFixed(digits)}`;
}

const decimalsIn = (text: string): number => (/\.(\d+)$/.exec(text)?.[1] ?? '').length;

/** The rows by section, in the order in which they come. */
export function sectionsOf(rows: readonly CompareRow[]): readonly { section: string; rows: readonly CompareRow[] }[] {
  const sections = new Map<string, CompareRow[]>();
  for (const row of rows) sections.set(row.section, [...(sections.get(row.section) ?? []), row]);
  return [...sections].map(([section, within]) => ({ section, rows: within }));
}
