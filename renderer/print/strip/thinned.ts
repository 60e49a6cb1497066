import type { PlacedRow } from './places.ts';

/** Every how many metres or yards a line may stand, finest first; 0: every row, whole distances or not. None by twos: among figures by fives they cannot be counted. */
const steps = [0, 1, 5, 10, 20, 50, 100] as const;

const isOn = (row: PlacedRow, step: number): boolean => {
  const figure = Number(row.label);
  return step === 0 || (Number.isInteger(figure) && figure % step === 0);
};

/** The tens that a row stands between. */
const tensOf = (row: PlacedRow): number => Math.floor(Number(row.label) / 10);

/**
 * Where rows stand nearer to each other than they may [mm], between one ten and the next only every fifth or tenth is left, the same
 * all the way, so that they can be counted.
 */
export function thinned(rows: readonly PlacedRow[], least: number): PlacedRow[] {
  const clear = (above: PlacedRow | undefined, row: PlacedRow): boolean => above === undefined || row.at - above.at >= least;
  const kept: PlacedRow[] = [];
  for (const ten of new Set(rows.map(tensOf))) {
    const inside = rows.filter((row) => tensOf(row) === ten);
    const next = rows.find((row) => tensOf(row) > ten);
    const step =
      steps.find((every) => {
        const chosen = inside.filter((row) => isOn(row, every));
        const all = [...kept.slice(-1), ...chosen, ...(next === undefined ? [] : [next])];
        return chosen.length > 0 && all.every((row, i) => clear(all[i - 1], row));
      }) ?? 10;
    for (const row of inside) if (isOn(row, step) && clear(kept.at(-1), row)) kept.push(row);
  }
  return kept;
}
