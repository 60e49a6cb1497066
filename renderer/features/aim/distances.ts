import type { UnitChoice } from '../../../core/model/preferences.ts';
import { vacuumRange } from '../../../core/flight/index.ts';
import { factorOf } from '../../../core/units/index.ts';

/** The distances that the trade shoots, in the unit chosen. Common practice. */
const usual = { m: [10, 18, 20, 30, 40, 50, 60, 70], yd: [10, 20, 30, 40, 50, 60, 70, 80] } as const;

/** The usual distances and the chosen one in its place [m]. */
export function tableDistances(units: UnitChoice, chosen: number): readonly number[] {
  const factor = factorOf('distance', units);
  const all: number[] = usual[units.distance].map((figure) => figure * factor);
  return all.some((distance) => Math.abs(distance - chosen) < 0.01) ? all : [...all, chosen].sort((a, b) => a - b);
}

/** A flat flight leaves at about 6 degrees or less [rad]. */
const FLAT = 0.105;

/** The farthest of 50, 30 and 18 that this speed reaches in a flat flight, reckoned without air. */
export function distanceToBegin(speed: number, units: UnitChoice): number {
  const flat = vacuumRange(speed, FLAT);
  const factor = factorOf('distance', units);
  const [far, middle, near] = units.distance === 'm' ? [50, 30, 18] : [50, 30, 20];
  return factor * (far * factor <= flat ? far : middle * factor <= flat ? middle : near);
}

const ends = [20, 30, 40, 50, 60, 80, 100, 120, 150, 200];

/** The end of the drawn axis: room beyond the chosen distance to see the arrow come down [m]. */
export function farEndFor(setFor: number, units: UnitChoice): number {
  const factor = factorOf('distance', units);
  return factor * (ends.find((end) => end * factor >= 1.4 * setFor) ?? 200);
}
