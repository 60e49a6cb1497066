import { randomFrom, seedOf, type Random } from '../../fixtures/random.ts';

/** Where a figure has to lie, both ends included. */
export type Bound = readonly [low: number, high: number];

/** One figure of the calibration: a share or a mean over draws from a known truth. */
export interface Row {
  /** What is counted, and in which case: two parts with a colon between them. */
  readonly name: string;
  readonly value: number;
  /** Draws behind the value. */
  readonly n: number;
  readonly standardError: number;
  /** Null where no bound was set beforehand. */
  readonly bound: Bound | null;
  /** Whether the value as drawn lies within the bound, nothing allowed for luck. */
  readonly holds: boolean | null;
}

/** Some figures that come from the same draws. */
export interface Figure {
  readonly name: string;
  /** Draws of a full run. */
  readonly draws: number;
  readonly rows: (random: Random, draws: number) => Row[];
}

const within = (value: number, bound: Bound | null): boolean | null =>
  bound === null ? null : value >= bound[0] && value <= bound[1];

export function shareRow(name: string, hits: number, n: number, bound: Bound | null = null): Row {
  const value = hits / n;
  return { name, value, n, standardError: Math.sqrt((value * (1 - value)) / n), bound, holds: within(value, bound) };
}

export function meanRow(name: string, values: readonly number[], bound: Bound | null = null): Row {
  const n = values.length;
  const value = values.reduce((sum, each) => sum + each, 0) / n;
  const squares = values.reduce((sum, each) => sum + (each - value) ** 2, 0);
  return { name, value, n, standardError: Math.sqrt(squares / (n - 1) / n), bound, holds: within(value, bound) };
}

/** A share of draws in which something happens. */
export function share(name: string, draws: number, bound: Bound | null, happens: (random: Random) => boolean): Figure {
  return {
    name,
    draws,
    rows: (random, count) => {
      let hits = 0;
      for (let i = 0; i < count; i++) if (happens(random)) hits++;
      return [shareRow(name, hits, count, bound)];
    },
  };
}

/** Several shares of the same draws, each told by its name. */
export function shares(
  name: string,
  draws: number,
  bounds: Readonly<Record<string, Bound | null>>,
  happens: (random: Random) => Readonly<Record<string, boolean>>,
): Figure {
  const what = Object.keys(bounds);
  return {
    name,
    draws,
    rows: (random, count) => {
      const hits = new Map(what.map((each) => [each, 0]));
      for (let i = 0; i < count; i++) {
        const seen = happens(random);
        for (const each of what) if (seen[each] === true) hits.set(each, (hits.get(each) ?? 0) + 1);
      }
      return what.map((each) => shareRow(each, hits.get(each) ?? 0, count, bounds[each] ?? null));
    },
  };
}

/** A tenth and less of the draws, for looking while one works. */
const QUICK = 0.05;
const FEWEST = 40;

/** Each figure has a seed of its own, so that neither order nor company changes it. */
export function rowsOf(figure: Figure, seed: number, quick: boolean): Row[] {
  const draws = quick ? Math.max(FEWEST, Math.round(figure.draws * QUICK)) : figure.draws;
  return figure.rows(randomFrom(seedOf(`${seed} ${figure.name}`)), draws);
}

/** The worst of some rows as a row of its own, which says where it was found. */
export function worstRow(name: string, rows: readonly Row[], bound: Bound | null, badness: (row: Row) => number): Row | null {
  const worst = [...rows].sort((a, b) => badness(b) - badness(a))[0];
  if (worst === undefined) return null;
  return {
    ...worst,
    name: `${name}: ${worst.name.slice(worst.name.indexOf(': ') + 2)}`,
    bound,
    holds: within(worst.value, bound),
  };
}
