import { curveOver, dropTable, goldAboveGround, type DropRow } from '../../../core/aim/index.ts';
import type { FlightData } from '../../plots/flight/data.ts';
import type { AimPicture } from './derive.ts';

const SAMPLES = 120;

/** The flight for the plot, to the end of its axis. */
export function flightData(picture: AimPicture, farEnd: number, bandName: string, showPointOn: boolean): FlightData {
  const { apex, pointOn } = picture.plan;
  return {
    samples: curveOver(picture.sights, farEnd, SAMPLES).map(({ x, ...height }) => ({ distance: x, ...height })),
    setFor: picture.setFor,
    top: { distance: apex.x.value, height: apex.height.value },
    ground: goldAboveGround,
    pointOn: showPointOn && picture.withoutSight.pointOn.ok && pointOn.ok ? pointOn.value : null,
    bandName,
    farEnd,
  };
}

/** The figures at one distance; null where the flight does not reach. */
export function figuresAt(picture: AimPicture, distance: number): DropRow | null {
  const row = dropTable(picture.sights, [distance]);
  return row.ok ? (row.value[0] ?? null) : null;
}
