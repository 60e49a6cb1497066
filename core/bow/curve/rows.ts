import type { ForceReading } from '../../model/index.ts';

/** All that was read at one draw. */
export interface ReadPoint {
  /** AMO draw [m]. */
  readonly draw: number;
  /** Mean of what was read there [N]. */
  readonly force: number;
  readonly least: number;
  readonly most: number;
  /** Which of the bow's readings. */
  readonly rows: readonly number[];
}

/** Draws nearer than this were meant to be the same one [m]. */
const SAME_PLACE = 0.0005;

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Readings of one way in order of their draws, those of one draw together.
 *
 * @equation left out at or below the brace height; the mean where one draw was read more than once
 * @param readings - the bow's readings, AMO draws [m] and forces [N], in any order [list]
 * @param way - drawing or letting down [choice]
 * @param brace - the AMO draw at the brace height [m]
 * @returns the points, and the rows that are left out [record]
 * @validity finite readings, which the callers see to; draws within half a millimetre are one
 * @source own derivation
 * @example pointsRead([{ draw: 0.6, force: 100, way: 'draw' }], 'draw', 0.26).points[0].force // 100
 */
export function pointsRead(
  readings: readonly ForceReading[],
  way: ForceReading['way'],
  brace: number,
): { readonly points: readonly ReadPoint[]; readonly leftOut: readonly number[] } {
  const beyond: number[] = [];
  const leftOut: number[] = [];
  const drawAt = (row: number) => readings[row]?.draw ?? 0;
  const forceAt = (row: number) => readings[row]?.force ?? 0;
  for (let row = 0; row < readings.length; row++)
    if (readings[row]?.way === way) (drawAt(row) > brace + SAME_PLACE ? beyond : leftOut).push(row);
  // Sorted by force as well, so that the order in which they were noted changes nothing, down to the last digit of a mean.
  const inOrder = (a: number, b: number) => drawAt(a) - drawAt(b) || forceAt(a) - forceAt(b);
  beyond.sort(inOrder);
  const points: ReadPoint[] = [];
  for (let from = 0; from < beyond.length;) {
    const first = drawAt(beyond[from] ?? 0);
    let to = from + 1;
    while (to < beyond.length && drawAt(beyond[to] ?? 0) - first <= SAME_PLACE) to++;
    points.push(pointOf(readings, beyond.slice(from, to)));
    from = to;
  }
  return { points, leftOut: leftOut.sort(inOrder) };
}

function pointOf(readings: readonly ForceReading[], rows: readonly number[]): ReadPoint {
  const only = rows.length === 1 ? readings[rows[0] ?? 0] : undefined;
  if (only !== undefined) return { draw: only.draw, force: only.force, least: only.force, most: only.force, rows };
  const forces = rows.map((row) => readings[row]?.force ?? 0).sort((a, b) => a - b);
  const [least, most] = [forces[0] ?? 0, forces.at(-1) ?? 0];
  return {
    draw: mean(rows.map((row) => readings[row]?.draw ?? 0)),
    force: least === most ? least : mean(forces),
    least,
    most,
    rows,
  };
}
