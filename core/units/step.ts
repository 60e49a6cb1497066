import type { UnitChoice } from '../model/preferences.ts';
import { factorOf } from './chosen.ts';
import type { Use } from './uses.ts';

/** In the shown unit: what one press of an arrow key moves. */
const steps: Readonly<Record<Use, (units: UnitChoice) => number>> = {
  length: (units) => ({ in: 1 / 8, cm: 0.1, mm: 1 })[units.length],
  setting: (units) => ({ in: 1 / 32, cm: 0.05, mm: 0.5 })[units.setting],
  weight: (units) => ({ lb: 0.5, kg: 0.2, N: 1 })[units.weight],
  mass: (units) => ({ gr: 1, g: 0.1 })[units.mass],
  distance: () => 1,
  drop: (units) => (units.distance === 'yd' ? 0.5 : 1),
  speed: (units) => ({ 'ft/s': 1, 'm/s': 0.5 })[units.speed],
  wind: (units) => (units.distance === 'yd' ? 1 : 0.5),
  deflection: (units) => ({ in: 0.01, mm: 0.25 })[units.deflection],
  density: (units) => (units.mass === 'gr' ? 0.1 : 0.25),
  massPerWeight: (units) => (units.mass === 'gr' && units.weight === 'lb' ? 0.5 : 0.05),
  smallForce: () => 0.1,
  springRate: () => 0.05,
  weightPerLength: () => 0.1,
  inertia: () => 0.01,
  stiffness: () => 0.1,
  frequency: () => 1,
  energy: () => 1,
  time: () => 0.01,
  angle: () => 0.5,
  turns: () => 1 / 4,
  count: () => 1,
  ratio: () => 0.01,
  reading: () => 0.5,
  temperature: () => 1,
  pressure: () => 1,
  humidity: () => 5,
  altitude: () => 50,
};

/**
 * The trade's step of a figure, for arrow keys and steppers.
 *
 * @equation a table by use and chosen unit: length 1/8 in or 1 mm, setting 0.5 mm or 1/32 in, weight 1/2 lb, mass 1 gr, button 1/4 turn
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @returns step [SI]
 * @validity every use
 * @source common practice
 * @example stepOf('length', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }) // 0.003175
 */
export function stepOf(use: Use, units: UnitChoice): number {
  return steps[use](units) * factorOf(use, units);
}
