import type { Band } from '../../../core/model/band.ts';
import type { XmlNode } from '../../export/xml.ts';
import type { Box } from '../../plots/boxes.ts';
import { sizes, written } from '../ink.ts';
import type { StripPaper } from '../papers.ts';
import { columnWidths, drawTable, type PrintedTable, widthOf } from '../table.ts';
import type { PlacedRow, StripPlaces } from './places.ts';

const size = { type: sizes.note, line: 3.7, gap: 2.2, headLines: 1 } as const;
const BETWEEN = 5;
const WARNING = 'Not proven: shoot each in before you rely on it.';

/** Half of an interval's width: what stands after a plus-or-minus sign. */
const halfWidth = ({ low, high }: Band): number => (high - low) / 2;

/** Coarser steps that a list may go by when every row has no room. */
const steps = [1, 2, 5, 10, 20, 50] as const;

/** Every distance with its reading and 95 %, in as many columns as there is room for; where they are too many, the known and the round ones. */
export function stripList(paper: StripPaper, { placed }: StripPlaces, room: Box): XmlNode[] {
  const { digits, distanceUnit, proven } = paper;
  const top = room.top + (proven ? 0 : size.line);
  const figure = (value: number) => value.toFixed(digits).replace('-', '\u2212');
  const tableOf = (rows: readonly PlacedRow[]): PrintedTable => ({
    head: [distanceUnit, 'mark', '95 %'],
    rows: rows.map(({ label, reading }) => [label, figure(reading.value), `± ${halfWidth(reading).toFixed(digits)}`]),
    strong: rows.map(({ known }) => known),
  });
  const columns = columnWidths(tableOf(placed), size);
  const wide = widthOf(columns, size);
  const across = Math.max(1, Math.floor((room.right - room.left + BETWEEN) / (wide + BETWEEN)));
  const down = Math.floor((room.bottom - top) / size.line) - 2;
  const lists = steps.map((step) => placed.filter((row) => row.known || step === 1 || Number(row.label) % step === 0));
  const rows = lists.find((list) => list.length <= across * down);
  if (rows === undefined || down < 2) return [];
  const each = Math.ceil(rows.length / Math.min(across, Math.max(1, Math.ceil(rows.length / down))));
  const tables = Array.from({ length: Math.ceil(rows.length / each) }, (_, i) =>
    drawTable(tableOf(rows.slice(i * each, (i + 1) * each)), size, columns, room.left + i * (wide + BETWEEN), top),
  ).flat();
  return proven ? tables : [written(WARNING, room.left, room.top + 1.4, 'strong', sizes.note), ...tables];
}
