import { inch } from '../../../core/units/exact.ts';

/** A place on the bow [m]: how far from the string toward the target, and how far above the arrow's rest. */
export type Place = readonly [u: number, v: number];

/** A table of places written in inches, as bows are. */
export const inInches = (rows: readonly Place[]): readonly Place[] => rows.map(([u, v]) => [u * inch, v * inch]);

/** A polyline through places by Catmull-Rom, so many steps between each two. */
export function smooth(places: readonly Place[], steps = 8): readonly Place[] {
  const at = (i: number): Place => places[Math.max(0, Math.min(places.length - 1, i))] as Place;
  const out: Place[] = [];
  for (let i = 0; i < places.length - 1; i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    for (let s = 0; s < steps; s++) {
      const t = s / steps;
      const weigh = (p: number, q: number, r: number, w: number) =>
        0.5 * (2 * q + (r - p) * t + (2 * p - 5 * q + 4 * r - w) * t * t + (3 * q - p - 3 * r + w) * t * t * t);
      out.push([weigh(a[0], b[0], c[0], d[0]), weigh(a[1], b[1], c[1], d[1])]);
    }
  }
  out.push(at(places.length - 1));
  return out;
}

/** The line that runs beside another at a thickness that may change along it; to the target's side of a line that climbs. */
export function beside(line: readonly Place[], thickness: (share: number, place: Place) => number): readonly Place[] {
  return line.map((place, i): Place => {
    const [a, b] = [line[Math.max(0, i - 1)] as Place, line[Math.min(line.length - 1, i + 1)] as Place];
    const [du, dv] = [b[0] - a[0], b[1] - a[1]];
    const long = Math.hypot(du, dv) || 1;
    const thick = thickness(i / (line.length - 1), place);
    return [place[0] + (dv / long) * thick, place[1] - (du / long) * thick];
  });
}

/** Straight between the rows of a table [x, y]; the ends hold beyond it. */
export function between(rows: readonly Place[], x: number): number {
  const first = rows[0] as Place;
  if (x <= first[0]) return first[1];
  for (let i = 1; i < rows.length; i++) {
    const [a, b] = [rows[i - 1] as Place, rows[i] as Place];
    if (x <= b[0]) return a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]);
  }
  return (rows.at(-1) as Place)[1];
}

/** Length along a polyline [m]. */
export const lengthOf = (line: readonly Place[]): number =>
  line.reduce(
    (sum, [u, v], i) => (i === 0 ? 0 : sum + Math.hypot(u - (line[i - 1] as Place)[0], v - (line[i - 1] as Place)[1])),
    0,
  );

export const flipped = (line: readonly Place[]): readonly Place[] => line.toReversed();
