import { touches, type Box } from '../../plots/boxes.ts';
import { label, type Label } from '../../plots/labels.ts';
import type { PlacedRow } from './places.ts';
import { type Reach, thinned } from './thinned.ts';

/** Where things stand across a strip [mm]. */
export interface StripWidth {
  readonly width: number;
  /** Lines of labelled distances and of the others, in from the left edge; from the right edge `mirrored` times as far. */
  readonly long: number;
  readonly short: number;
  readonly mirrored: number;
  readonly marker: number;
  /** The middle of the labels. */
  readonly label: number;
  /** The baseline of the words up its side; null where there is no room for them. */
  readonly side: number | null;
}

/** For a broad bar, a usual one and a narrow one. */
export const stripWidths: readonly StripWidth[] = [
  { width: 22, long: 5, short: 2.6, mirrored: 1, marker: 6.6, label: 10.8, side: 15.5 },
  { width: 14, long: 3, short: 1.7, mirrored: 1, marker: 4.4, label: 8, side: null },
  { width: 10, long: 2.2, short: 1.3, mirrored: 0.5, marker: 3.1, label: 6.3, side: null },
];

/** Above the first line, for the arrow and the unit, and below the last [mm]. */
const HEAD = 9;
const TAIL = 5;
/** Lines nearer to each other than this cannot be told apart [mm]. */
const LEAST_LINES = 0.6;
const TYPE = 2.9;
/** White between one label and the next [mm]. */
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

/** A row's worth to whoever shoots by the strip: what was shot in, then the round distances. */
function rank({ known, label: text }: PlacedRow): number {
  if (known) return 0;
  const figure = Number(text);
  return 1 + (([50, 10, 5, 2, 1].findIndex((step) => figure % step === 0) + 6) % 6);
}

const around =
  (high: number): Reach =>
  ({ at }) => ({ upper: at - high / 2, lower: at + high / 2 });

/** A label, and of a weak row its interval. */
function lettered(factor: number): Reach {
  const label = around((TYPE + AIR) / factor);
  return (row) => {
    const { upper, lower } = label(row);
    const air = AIR / factor;
    return row.weak ? { upper: Math.min(upper, row.upper - air), lower: Math.max(lower, row.lower + air) } : { upper, lower };
  };
}

/** A strip of a width, `factor` times true size. */
export function stripMarks(placed: readonly PlacedRow[], place: StripWidth, factor: number): StripMarks {
  const first = placed[0]?.at ?? 0;
  const y = (at: number) => HEAD + factor * (at - first);
  const height = y(placed.at(-1)?.at ?? 0) + TAIL;
  const known = new Set(placed.filter((row) => row.known).map(({ distance }) => distance));
  const fine = thinned(placed, around(LEAST_LINES / factor));
  const ruled = new Set([...known, ...fine.rows.map(({ distance }) => distance)]);
  const named = new Set([...known, ...thinned(placed, lettered(factor), fine.stepOf).rows.map(({ distance }) => distance)]);

  const labels: Label[] = [];
  const weak: StripInterval[] = [];
  const labelled = new Set<number>();
  const taken: Box[] = [];
  const inOrder = placed
    .filter(({ distance }) => named.has(distance))
    .sort((a, b) => rank(a) - rank(b) || a.distance - b.distance);
  for (const row of inOrder) {
    const at = y(row.at);
    const text = label(row.label, place.label, at + 0.35 * TYPE, 'middle', row.known ? 'strong' : 'text', TYPE);
    const [from, to] = [Math.max(0, y(row.upper)), Math.min(height, y(row.lower))];
    const boxes: Box[] = [
      { ...text.box, top: text.box.top - AIR / 2, bottom: text.box.bottom + AIR / 2 },
      ...(row.weak ? [{ left: place.marker - 0.8, right: place.marker + 0.8, top: from - AIR, bottom: to + AIR }] : []),
    ];
    if (boxes.some((box) => taken.some((other) => touches(box, other)))) continue;
    taken.push(...boxes);
    labels.push(text);
    labelled.add(row.distance);
    if (row.weak) weak.push({ y: at, from, to, open: { top: y(row.upper) < 0, bottom: y(row.lower) > height } });
  }
  return {
    place,
    height,
    lines: placed
      .filter(({ distance }) => ruled.has(distance))
      .map((row) => ({ row, y: y(row.at), labelled: labelled.has(row.distance) })),
    labels,
    known: placed.filter((row) => row.known && !row.weak).map((row) => y(row.at)),
    weak,
  };
}
