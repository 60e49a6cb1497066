import { touches, type Box } from '../../plots/boxes.ts';
import type { Label } from '../../plots/labels.ts';
import { stripLabels } from './labels.ts';
import type { PlacedRow } from './places.ts';
import { thinned } from './thinned.ts';
import type { StripWidth } from './widths.ts';

/** Above the first line, for the arrow and the unit, and below the last [mm]. */
const HEAD = 9;
const TAIL = 5;
/** Lines nearer to each other than this cannot be told apart [mm]. */
const LEAST_LINES = 0.6;
/** Half as wide as what stands at a marker, and the white over and under an interval [mm]. */
const HALF = 0.8;
const AIR = 0.35;

export interface StripLine {
  readonly row: PlacedRow;
  readonly y: number;
  readonly labelled: boolean;
}

export interface StripInterval {
  readonly y: number;
  readonly from: number;
  readonly to: number;
  /** Whether an end runs off the strip and has no cross-line. */
  readonly open: { readonly top: boolean; readonly bottom: boolean };
}

/** One strip, from its own upper left corner [mm]. */
export interface StripMarks {
  readonly place: StripWidth;
  readonly height: number;
  readonly lines: readonly StripLine[];
  readonly labels: readonly Label[];
  /** Filled: shot and entered. */
  readonly known: readonly number[];
  readonly weak: readonly StripInterval[];
}

/** A strip of a width, `factor` times true size. */
export function stripMarks(placed: readonly PlacedRow[], place: StripWidth, factor: number): StripMarks {
  const first = placed[0]?.at ?? 0;
  const yOf = (at: number) => HEAD + factor * (at - first);
  const height = yOf(placed.at(-1)?.at ?? 0) + TAIL;
  const labels = stripLabels(placed, place, yOf);
  const known = placed.filter((row) => row.known);
  // A label and a dot stand at lines of their own; of the others none so near that it would run into one of these.
  const owed = new Set([...labels.keys(), ...known]);
  const least = LEAST_LINES / factor;
  const free = (row: PlacedRow) => [...owed].every((other) => Math.abs(other.at - row.at) >= least);
  const fine = new Set(thinned(placed, least).filter(free));
  return {
    place,
    height,
    lines: placed
      .filter((row) => owed.has(row) || fine.has(row))
      .map((row) => ({ row, y: yOf(row.at), labelled: labels.has(row) })),
    labels: placed.flatMap((row) => labels.get(row) ?? []),
    known: known.map(({ at }) => yOf(at)),
    weak: intervals([...labels.keys()], known, place, yOf, height),
  };
}

/** Of what is labelled and weak, its interval where it has room: best first, and over no dot but its own. */
function intervals(
  labelled: readonly PlacedRow[],
  known: readonly PlacedRow[],
  { marker }: StripWidth,
  yOf: (at: number) => number,
  height: number,
): StripInterval[] {
  const boxOf = (top: number, bottom: number): Box => ({ left: marker - HALF, right: marker + HALF, top, bottom });
  const taken = known.map((row) => ({ row, box: boxOf(yOf(row.at) - HALF, yOf(row.at) + HALF) }));
  return labelled.flatMap((row) => {
    if (!row.weak) return [];
    const [from, to] = [Math.max(0, yOf(row.upper)), Math.min(height, yOf(row.lower))];
    const box = boxOf(from - AIR, to + AIR);
    if (taken.some((other) => other.row !== row && touches(box, other.box))) return [];
    taken.push({ row, box });
    return [{ y: yOf(row.at), from, to, open: { top: yOf(row.upper) < 0, bottom: yOf(row.lower) > height } }];
  });
}
