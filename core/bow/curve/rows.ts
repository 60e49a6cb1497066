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
  // Sorted by force as well, so that the order in which they were noted changes nothing, down to the last digit of a mean.
  const sorted = readings
    .map(({ draw, force, way: read }, index) => ({ draw, force, read, index }))
    .filter(({ read }) => read === way)
    .sort((a, b) => a.draw - b.draw || a.force - b.force);
  const beyond = sorted.filter(({ draw }) => draw > brace + SAME_PLACE);
  const together: (typeof beyond)[] = [];
  for (const reading of beyond) {
    const here = together.at(-1);
    if (here?.[0] !== undefined && reading.draw - here[0].draw <= SAME_PLACE) here.push(reading);
    else together.push([reading]);
  }
  const points = together.map((rows): ReadPoint => {
    const forces = rows.map(({ force }) => force).sort((a, b) => a - b);
    const [least, most] = [forces[0] ?? 0, forces.at(-1) ?? 0];
    return {
      draw: mean(rows.map(({ draw }) => draw)),
      force: least === most ? least : mean(forces),
      least,
      most,
      rows: rows.map(({ index }) => index),
    };
  });
  return { points, leftOut: sorted.filter(({ draw }) => draw <= brace + SAME_PLACE).map(({ index }) => index) };
}
