import type { StripPaper, StripRow } from '../papers.ts';

export interface PlacedRow extends StripRow {
  readonly reading: NonNullable<StripRow['reading']>;
  /** Where the pin stands, down along the bar from the scale's nought [mm]. */
  readonly at: number;
  /** The end of its interval that is higher up on the bar, and the lower one [mm]. */
  readonly upper: number;
  readonly lower: number;
}

export interface StripPlaces {
  /** From the top of the bar down. */
  readonly placed: readonly PlacedRow[];
  /** The bar ends before it. */
  readonly off: readonly PlacedRow[];
  /** So near that the pin comes down again: their lines would stand among those of farther distances. */
  readonly turned: readonly PlacedRow[];
  /** The arrow does not carry so far. */
  readonly beyond: readonly StripRow[];
}

/** A reading as a place on the bar [mm]. */
export const placeOf = (reading: number, { unit, grows }: Pick<StripPaper, 'unit' | 'grows'>): number =>
  (grows === 'down' ? 1 : -1) * reading * unit * 1000;

/** Every distance in its place on the bar, or the reason why it has none there. */
export function stripPlaces(paper: StripPaper): StripPlaces {
  const { rows, lowest = -Infinity, highest = Infinity } = paper;
  const sorted = [...rows].sort((a, b) => a.distance - b.distance);
  const reached = sorted.flatMap((row): readonly PlacedRow[] => {
    if (row.reading === null) return [];
    const [upper, lower] = [placeOf(row.reading.low, paper), placeOf(row.reading.high, paper)].sort((a, b) => a - b);
    const at = placeOf(row.reading.value, paper);
    return [{ ...row, reading: row.reading, at, upper: upper ?? at, lower: lower ?? at }];
  });
  const top = reached.reduce((highestYet, row, i) => (row.at < (reached[highestYet]?.at ?? Infinity) ? i : highestYet), 0);
  const placed: PlacedRow[] = [];
  const off: PlacedRow[] = [];
  const turned: PlacedRow[] = [];
  let last = -Infinity;
  for (const [i, row] of reached.entries()) {
    if (row.reading.value < lowest || row.reading.value > highest) off.push(row);
    else if (i < top || row.at <= last) turned.push(row);
    else {
      placed.push(row);
      last = row.at;
    }
  }
  return { placed, off, turned, beyond: sorted.filter(({ reading }) => reading === null) };
}
