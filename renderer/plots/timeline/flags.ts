import { textWidth } from '../textWidth.ts';
import { timelineSize, type Label, type Time, type TimelineData } from './data.ts';

/** How far a trial's pennant reaches before its staff [px]. */
const pennant = 10;

/** The chosen flags are named first; each name takes the upper or the lower row, right or left of its staff, or stays in the shelf. */
export function placeFlags(flags: TimelineData['flags'], x: Time, left: number, right: number) {
  const taken: { row: number; from: number; to: number }[] = flags.map((flag) => ({
    row: 0,
    from: x(flag.at) - (flag.trial === true ? pennant : 6),
    to: x(flag.at) + 6,
  }));
  const labels = new Map<string, Label & { row: number }>();
  const free = (row: number, from: number, to: number) =>
    from >= left - 100 &&
    to <= right + timelineSize.now &&
    taken.every((one) => one.row !== row || to < one.from || from > one.to);
  for (const flag of [...flags].sort((a, b) => Number(b.chosen) - Number(a.chosen) || b.at - a.at)) {
    const at = x(flag.at);
    const wide = textWidth(flag.name, 13, 'name');
    for (const [row, side] of [
      [0, 1],
      [0, -1],
      [1, 1],
      [1, -1],
    ] as const) {
      const clear = side === -1 && flag.trial === true ? pennant + 5 : 9;
      const from = side === 1 ? at + clear : at - clear - wide;
      if (!free(row, from, from + wide)) continue;
      taken.push({ row, from: from - 4, to: from + wide + 4 });
      labels.set(flag.id, { row, x: at + side * clear, y: 0, text: flag.name, anchor: side === 1 ? 'start' : 'end' });
      break;
    }
  }
  const rows = flags.length === 0 ? 0 : [...labels.values()].some((label) => label.row === 1) ? 2 : 1;
  return {
    rows,
    flags: flags.map((flag) => {
      const label = labels.get(flag.id);
      return {
        id: flag.id,
        x: x(flag.at),
        chosen: flag.chosen,
        trial: flag.trial === true,
        label:
          label === undefined
            ? null
            : { x: label.x, y: 12 + label.row * timelineSize.flagRow, text: label.text, anchor: label.anchor },
      };
    }),
  };
}
