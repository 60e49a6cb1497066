import type { ArrowSet } from '../model/index.ts';

/** Where a part lies along the arrow, from the throat of the nock [m]. */
export interface Place {
  readonly from: number;
  readonly to: number;
  /** Its centre of mass. */
  readonly at: number;
  readonly placed: 'measured' | 'assumed';
}

/** The parts of an arrow, from its nock on. */
export type PartName = 'nock' | 'pin' | 'wrap' | 'fletching' | 'shaft' | 'insert' | 'point';

/** A target point stands about this far ahead of its shaft [m]: from memory, since the record does not hold it. */
export const pointBeyondShaft = 0.02;

/** Ordinary places and lengths of what nobody measures [m]: from memory. */
const usual = {
  nock: { from: -0.007, to: 0.013, at: 0.003 },
  pin: { from: 0.005, to: 0.03, at: 0.0175 },
  wrap: { from: 0.012, beyondFletching: 0.01 },
  insert: 0.02,
  /** Its shank in the shaft weighs about as much as its head: the mass lies about the shaft's end. */
  pointInside: 0.025,
  vaneFromThroat: 0.025,
  vaneLength: { carbon: 0.045, aluminium: 0.05, wood: 0.1, other: 0.075 },
} as const;

/**
 * Where the parts of an arrow lie along it, from the throat of its nock.
 *
 * @equation as measured; else the nock about 3 mm ahead of its throat, fletching from 25 mm on (45 mm long on carbon, 50 on aluminium, 100 on wood), insert in the last 20 mm of the shaft, a point 20 mm beyond and 25 mm inside the shaft with its mass at the shaft's end
 * @param arrowSet - material, and where the fletching was measured [m] [record]
 * @param length - L, throat of the nock to end of shaft [m]
 * @returns for each part the ends it lies between, its centre of mass [m] and whether it was measured [record]
 * @validity any length that an arrow has; the shaft counts from the throat on, as its mass per length times the arrow's length does
 * @source from memory
 * @example partPlaces(exampleBundle.arrowSet, 0.7).point.to // 0.72
 */
export function partPlaces(
  arrowSet: Pick<ArrowSet, 'material' | 'vaneFromThroat' | 'vaneLength'>,
  length: number,
): Readonly<Record<PartName, Place>> {
  const { material, vaneFromThroat, vaneLength } = arrowSet;
  const back = vaneFromThroat ?? usual.vaneFromThroat;
  const front = back + (vaneLength ?? usual.vaneLength[material]);
  const between = (from: number, to: number, placed: Place['placed'] = 'assumed'): Place => ({
    from,
    to,
    at: (from + to) / 2,
    placed,
  });
  return {
    nock: { ...usual.nock, placed: 'assumed' },
    pin: { ...usual.pin, placed: 'assumed' },
    wrap: between(usual.wrap.from, front + usual.wrap.beyondFletching),
    fletching: between(back, front, vaneFromThroat !== null && vaneLength !== null ? 'measured' : 'assumed'),
    shaft: between(0, length, 'measured'),
    insert: between(length - usual.insert, length),
    point: { from: length - usual.pointInside, to: length + pointBeyondShaft, at: length, placed: 'assumed' },
  };
}
