import { touches, type Box } from '../../plots/boxes.ts';
import { label, type Label } from '../../plots/labels.ts';
import { textWidth } from '../../plots/textWidth.ts';
import { sizes } from '../ink.ts';
import type { PlacedRow } from './places.ts';
import type { StripWidth } from './widths.ts';

const TYPE = 2.9;
/** White between one label and the next, and to either side [mm]. */
const AIR = 0.35;
/** Half of a dot and a little [mm]. */
const BESIDE = 0.7;

/** Who comes first where labels crowd; null: none. Fives and tens are what people look for; the ends say how far the strip goes. */
function rank(row: PlacedRow, first: PlacedRow | undefined, last: PlacedRow | undefined): number | null {
  const figure = Number(row.label);
  if (row === last) return 0;
  if (figure % 50 === 0) return 1;
  if (figure % 10 === 0) return 2;
  if (row === first) return 3;
  if (figure % 5 === 0) return 4;
  return row.known ? 5 : null;
}

/** A row's figure at a height, smaller where it would reach over its dot or the lines from the right. */
function labelOf(row: PlacedRow, { width, long, mirrored, marker, label: middle }: StripWidth, y: number): Label {
  const lettering = row.known ? 'strong' : 'text';
  const half = Math.min(middle - marker - BESIDE, width - long * mirrored - middle);
  const size = Math.min(TYPE, (TYPE * 2 * half) / textWidth(row.label, TYPE, lettering));
  return label(row.label, middle, y + 0.35 * size, 'middle', lettering, size);
}

/** The labels that have room, by the rows that they stand at, best first. */
export function stripLabels(
  placed: readonly PlacedRow[],
  place: StripWidth,
  yOf: (at: number) => number,
): ReadonlyMap<PlacedRow, Label> {
  const [first, last] = [placed[0], placed.at(-1)];
  const wanted = placed
    .flatMap((row) => {
      const order = rank(row, first, last);
      return order === null ? [] : [{ row, order }];
    })
    .sort((a, b) => a.order - b.order || a.row.distance - b.row.distance);
  const taken: Box[] = [];
  const labels = new Map<PlacedRow, Label>();
  for (const { row } of wanted) {
    const text = labelOf(row, place, yOf(row.at));
    const box = { ...text.box, top: text.box.top - AIR / 2, bottom: text.box.bottom + AIR / 2 };
    const legible = text.size >= sizes.small || row === last;
    if (!legible || taken.some((other) => touches(box, other))) continue;
    taken.push(box);
    labels.set(row, text);
  }
  return labels;
}
