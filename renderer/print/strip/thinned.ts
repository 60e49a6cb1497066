import type { PlacedRow } from './places.ts';

/** Every how many metres or yards a line may stand, finest first; 0: every row, whole distances or not. */
const steps = [0, 1, 2, 5, 10, 20, 50, 100] as const;

const isOn = (row: PlacedRow, step: number): boolean => {
  const figure = Number(row.label);
  return step === 0 || (Number.isInteger(figure) && figure % step === 0);
};

/** How far what is drawn of a row reaches, up and down the bar [mm]. */
export type Reach = (row: PlacedRow) => { readonly upper: number; readonly lower: number };

/** The tens that a row stands between. */
const tensOf = (row: PlacedRow): number => Math.floor(Number(row.label) / 10);

export interface Thinned {
  readonly rows: readonly PlacedRow[];
  /** Of each ten, every how many are left. */
  readonly stepOf: ReadonlyMap<number, number>;
}

/**
 * Where rows crowd, between one ten and the next only every second, fifth or tenth is left, the same all the way, so that they can be
 * counted. `among` says how fine the lines are that labels must stand at.
 */
export function thinned(rows: readonly PlacedRow[], reach: Reach, among?: ReadonlyMap<number, number>): Thinned {
  const clear = (above: PlacedRow | undefined, row: PlacedRow): boolean =>
    above === undefined || reach(row).upper - reach(above).lower >= 0;
  const stepOf = new Map<number, number>();
  const kept: PlacedRow[] = [];
  for (const ten of new Set(rows.map(tensOf))) {
    const inside = rows.filter((row) => tensOf(row) === ten);
    const next = rows.find((row) => tensOf(row) > ten);
    const lines = among?.get(ten) ?? 0;
    const step =
      steps
        .filter((every) => lines === 0 || (every !== 0 && every % lines === 0))
        .find((every) => {
          const chosen = inside.filter((row) => isOn(row, every));
          const all = [...kept.slice(-1), ...chosen, ...(next === undefined ? [] : [next])];
          return chosen.length > 0 && all.every((row, i) => clear(all[i - 1], row));
        }) ?? 10;
    stepOf.set(ten, step);
    for (const row of inside) if (isOn(row, step) && clear(kept.at(-1), row)) kept.push(row);
  }
  return { rows: kept, stepOf };
}
