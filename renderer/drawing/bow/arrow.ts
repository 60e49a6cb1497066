import { inch } from '../../../core/units/exact.ts';
import type { DrawnBow } from './figures.ts';
import type { Place } from './points.ts';
import type { BowShape } from './shape.ts';

/** The nocked arrow as places on the bow: it lies on the rest, and its underside is above square at the string by the nocking point. */
export interface NockedArrow {
  readonly shaft: readonly Place[];
  readonly nock: readonly Place[];
  readonly point: readonly Place[];
  readonly vanes: readonly (readonly Place[])[];
  /** The end of the shaft, where its length is read to. */
  readonly end: Place;
  /** The middle of the shaft at the string. */
  readonly throat: Place;
  readonly tip: number;
}

/** A field point stands so far beyond the shaft [m]. */
export const POINT = 0.95 * inch;
const NOCK = 0.42 * inch;

export function nockedArrow(bow: DrawnBow, { rest }: Pick<BowShape, 'rest'>): NockedArrow {
  const radius = bow.shaft / 2;
  const slope = -bow.nocking / rest[0];
  const at = (along: number, aside: number): Place => [along, bow.nocking + radius + slope * along + aside];
  const both = (rows: readonly Place[]): readonly Place[] => [
    ...rows.map(([along, aside]) => at(along, aside)),
    ...rows.toReversed().map(([along, aside]) => at(along, -aside)),
  ];
  const { arrow: long, vane, vaneFrom: from } = bow;
  const fin = 0.42 * inch;
  const vaneLine = (side: 1 | -1): readonly Place[] => [
    at(from, side * radius),
    at(from + 0.12 * vane, side * (radius + fin * 0.86)),
    at(from + 0.36 * vane, side * (radius + fin)),
    at(from + 0.72 * vane, side * (radius + fin * 0.52)),
    at(from + vane, side * radius),
  ];
  return {
    shaft: both([
      [NOCK, radius],
      [long, radius],
    ]),
    nock: both([
      [-0.1 * inch, radius * 1.15],
      [NOCK, radius],
    ]),
    point: both([
      [long, radius * 1.05],
      [long + 0.45 * POINT, radius * 1.05],
      [long + POINT, 0.0001],
    ]),
    vanes: [vaneLine(1), vaneLine(-1)],
    end: at(long, 0),
    throat: at(0, 0),
    tip: long + POINT,
  };
}
