import type { PlacedRow } from './places.ts';

/** Every how many metres or yards a line may stand, finest first; 0: every row, whole distances or not. */
const steps = [0, 1, 2, 5, 10, 20, 50, 100] as const;

const isOn = (row: PlacedRow, step: number): boolean => {
  const figure = Number(row.label);
  return step === 0 || (Number.isInteger(figure) && figure % step === 0);
};

const apart = (rows: readonly PlacedRow[], least: number): boolean =>
  rows.every((row, i) => i === 0 || row.at - (rows[i - 1]?.at ?? -Infinity) >= least);

/** The tens that a row stands between. */
const tensOf = (row: PlacedRow): number => Math.floor(Number(row.label) / 10);

export interface Thinned {
  readonly rows: readonly PlacedRow[];
  /** Of each ten, every how many are left. */
  readonly stepOf: ReadonlyMap<number, number>;
}

/**
 * Where lines crowd, between one ten and the next only every second, fifth or tenth is left, the same all the way, so that they can be
 * counted. `coarser` says how fine the lines are that these must be among.
 */
export function thinned(rows: readonly PlacedRow[], least: number, among?: ReadonlyMap<number, number>): Thinned {
  const tens = [...new Set(rows.map(tensOf))];
  const stepOf = new Map<number, number>();
  const kept: PlacedRow[] = [];
  for (const ten of tens) {
    const inside = rows.filter((row) => tensOf(row) === ten);
    const next = rows.find((row) => tensOf(row) > ten);
    const lines = among?.get(ten) ?? 0;
    const allowed = steps.filter((step) => (lines === 0 ? true : step !== 0 && step % lines === 0));
    const step =
      allowed.find((every) => {
        const chosen = inside.filter((row) => isOn(row, every));
        return chosen.length > 0 && apart([...kept.slice(-1), ...chosen, ...(next === undefined ? [] : [next])], least);
      }) ?? 10;
    stepOf.set(ten, step);
    for (const row of inside) if (isOn(row, step) && row.at - (kept.at(-1)?.at ?? -Infinity) >= least) kept.push(row);
  }
  return { rows: kept, stepOf };
}
