import { bandOver, dropTable, type DropRow } from '../../../core/aim/index.ts';
import { trajectory } from '../../../core/flight/index.ts';
import { limits } from '../../../core/model/limits.ts';
import type { FlightData, FlightSample } from '../../plots/flight/data.ts';
import { goldAboveGround } from './basis.ts';
import type { AimPicture } from './derive.ts';

const SAMPLES = 120;

/** The flight for the plot, to the end of its axis. */
export function flightData(picture: AimPicture, farEnd: number, bandName: string, showPointOn: boolean): FlightData {
  const samples: FlightSample[] = [];
  for (let i = 0; i <= SAMPLES; i++) {
    const distance = (farEnd * i) / SAMPLES;
    const height = bandOver(picture.sights, (sight) => sight.heightOverLine(distance) ?? -Infinity);
    if (!Number.isFinite(height.low)) break;
    samples.push({ distance, ...height });
  }
  const { apex, pointOn } = picture.plan;
  return {
    samples,
    setFor: picture.setFor,
    top: { distance: apex.x.value, height: apex.height.value },
    ground: goldAboveGround,
    pointOn: showPointOn && picture.withoutSight.pointOn.ok && pointOn.ok ? pointOn.value : null,
    bandName,
    farEnd,
  };
}

/** Nobody is led to raise the bow further than this [rad]: about 20 degrees. */
const HIGHEST_OFFERED = 0.35;

/** The farthest distance that the target may be moved to: what the slowest flight of the band reaches at that angle [m]. */
export function farthestSetFor({ speed, plan }: AimPicture): number {
  const slowest = trajectory({ speed: speed.low, elevation: HIGHEST_OFFERED, k: plan.drag.high, until: { y: 0 } });
  return Math.min(limits.shootingDistance.max, slowest.downTo(0)?.x ?? slowest.end.x);
}

/** The figures at one distance; null where the flight does not reach. */
export function figuresAt(picture: AimPicture, distance: number): DropRow | null {
  const row = dropTable(picture.sights, [distance]);
  return row.ok ? (row.value[0] ?? null) : null;
}
