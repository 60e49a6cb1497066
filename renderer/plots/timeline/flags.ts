import { textWidth } from '../textWidth.ts';
import { timelineSize, type Label, type Time, type TimelineData } from './data.ts';

/** How far a trial's pennant reaches before its staff [px]. */
const pennant = 10;
/** More rows of names than this would push the drawing off the page. */
const MOST_ROWS = 5;

interface Standing {
  readonly id: string;
  readonly at: number;
  /** The cloth hangs in this row; the staff begins there and runs down through all that is below. */
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly name: Span | null;
}
interface Span {
  readonly from: number;
  readonly to: number;
}

const crosses = (x: number, { from, to }: Span): boolean => x > from - 5 && x < to + 5;
const meets = (a: Span, b: Span): boolean => a.from < b.to + 4 && b.from < a.to + 4;

/** Whether two flags leave each other alone: no cloth or name in the same row touches, no staff runs through the other's name. */
function apart(a: Standing, b: Standing): boolean {
  const names = [a, b].flatMap(({ name }) => (name === null ? [] : [name]));
  if (a.row === b.row) {
    // Two cloths of one moment may lie on each other; a name may lie on neither.
    const [one, two] = [a.name === null ? null : a.name, b.name === null ? null : b.name];
    return (
      (one === null || !meets(one, b)) && (two === null || !meets(two, a)) && (one === null || two === null || !meets(one, two))
    );
  }
  if (names.length === 0) return true;
  const [upper, lower] = a.row < b.row ? [a, b] : [b, a];
  return lower.name === null || !crosses(upper.at, lower.name);
}

/**
 * The chosen flags are named first, then the newest; each hangs in the highest row in which its name, right or left of its staff, stands clear.
 * One that finds no room for its name hangs in the shelf without it.
 */
export function placeFlags(flags: TimelineData['flags'], x: Time, left: number, right: number) {
  const standing: Standing[] = [];
  const labels = new Map<string, Label>();
  const inBounds = ({ from, to }: Span) => from >= left - 100 && to <= right + timelineSize.now;
  for (const flag of [...flags].sort((a, b) => Number(b.chosen) - Number(a.chosen) || b.at - a.at)) {
    const at = x(flag.at);
    const wide = textWidth(flag.name, 13, 'name');
    const hung = { id: flag.id, at, from: at - (flag.trial === true ? pennant : 9), to: at + 2 };
    const rows = Array.from({ length: MOST_ROWS }, (_, row) => row);
    const named = rows.flatMap((row) =>
      ([1, -1] as const).map((side) => {
        const clear = side === -1 ? (flag.trial === true ? pennant : 9) + 5 : 9;
        const from = side === 1 ? at + clear : at - clear - wide;
        return { side, clear, spot: { ...hung, row, name: { from, to: from + wide } } };
      }),
    );
    const free = (spot: Standing) => (spot.name === null || inBounds(spot.name)) && standing.every((one) => apart(spot, one));
    const found = named.find(({ spot }) => free(spot));
    if (found === undefined) {
      // Without a name it need only keep its staff and its cloth off the names of the others; below all names there is room.
      const bare = [...rows, MOST_ROWS].map((row): Standing => ({ ...hung, row, name: null }));
      standing.push(bare.find(free) ?? { ...hung, row: MOST_ROWS, name: null });
      continue;
    }
    standing.push(found.spot);
    const { side, clear, spot } = found;
    labels.set(flag.id, {
      x: at + side * clear,
      y: 12 + spot.row * timelineSize.flagRow,
      text: flag.name,
      anchor: side === 1 ? 'start' : 'end',
    });
  }
  return {
    rows: standing.reduce((most, { row }) => Math.max(most, row + 1), 0),
    flags: flags.map((flag) => ({
      id: flag.id,
      x: x(flag.at),
      y: (standing.find(({ id }) => id === flag.id)?.row ?? 0) * timelineSize.flagRow,
      chosen: flag.chosen,
      trial: flag.trial === true,
      label: labels.get(flag.id) ?? null,
    })),
  };
}
