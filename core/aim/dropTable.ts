import type { Band } from '../model/band.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { yard } from '../units/exact.ts';
import { atCorners, bandOver, type Corners } from './bands.ts';
import type { SetSight } from './lineOfSight.ts';

/** The arrow at one distance, with the sight set once. */
export interface DropRow {
  readonly distance: number;
  /** Above the line of sight [m]; below it when negative. */
  readonly height: Band;
  /** Below the line the arrow left along [m]. */
  readonly drop: Band;
  /** Since it left [s]. */
  readonly time: Band;
  /** Speed left [m/s]. */
  readonly speed: Band;
  /** Of the path above the horizontal [rad]; negative when falling. */
  readonly angle: Band;
}

/**
 * Where the arrow is at chosen distances, with the sight set once.
 *
 * @equation height = y − line of sight; drop = line of departure − y; speed = |v|; angle = atan(v_y / v_x)
 * @param sights - the sight set for one distance with every launch of a band, from `setSight` [record]
 * @param distances - from the eye [m]
 * @returns one row a distance, in the order given, every figure with its band; or a refusal for a distance past the end of the flights [list]
 * @validity level ground, still air
 * @source own derivation
 * @example dropTable({ value: setSight({ speed: 50, k: 0, eyeHeight: 0 }, 30, 50).value, corners: [] }, [30]).value[0].speed.value.toFixed(4) // "50.0000"
 */
export function dropTable(sights: Corners<SetSight>, distances: readonly number[]): Result<DropRow[]> {
  const rows: DropRow[] = [];
  for (const distance of distances) {
    const there = atCorners(sights, (sight) => figuresAt(sight, distance));
    if (!there.ok) return there;
    const band = (key: keyof Figures) => bandOver(there.value, (figures) => figures[key]);
    rows.push({
      distance,
      height: band('height'),
      drop: band('drop'),
      time: band('time'),
      speed: band('speed'),
      angle: band('angle'),
    });
  }
  return ok(rows);
}

type Figures = Record<Exclude<keyof DropRow, 'distance'>, number>;

function figuresAt(sight: SetSight, distance: number): Result<Figures> {
  const point = sight.flight.at(distance - sight.start.x);
  const height = sight.heightOverLine(distance);
  if (!point || height === null)
    return refuse(
      'past-the-flight',
      `A distance within this flight was expected: it does not reach ${distance.toFixed(0)} m (${(distance / yard).toFixed(0)} yd).`,
      'shootingDistance',
    );
  return ok({
    height,
    drop: point.x * Math.tan(sight.elevation) - point.y,
    time: point.t,
    speed: Math.hypot(point.vx, point.vy, point.vz),
    angle: Math.atan2(point.vy, point.vx),
  });
}
