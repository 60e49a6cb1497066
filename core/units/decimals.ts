import type { UnitChoice } from '../model/preferences.ts';
import type { Use } from './uses.ts';

/** The decimals of the trade, by use and shown unit; a list [limit, below, above] changes them with the size of the figure. */
type Decimals = number | readonly [limit: number, below: number, above: number];

/**
 * Whether a figure keeps the noughts at its end: a deflection does (0.600 in), everything else is trimmed.
 *
 * @equation true for a deflection
 * @param use - what the figure is used for [choice]
 * @returns whether the noughts stay [choice]
 * @validity any use
 * @source common practice
 * @example keepsNoughts('deflection') // true
 */
export function keepsNoughts(use: Use): boolean {
  return use === 'deflection';
}

/**
 * The decimals in which the trade speaks of a figure.
 *
 * @equation a table by use and chosen unit: e.g. deflection in inches 3, length in cm 1, in mm 0, weight 1, mass in grains 1 below 100 and 0 above
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @param figure - the figure in the shown unit [-]
 * @returns decimals [-]
 * @validity any finite figure
 * @source common practice
 * @example decimalsOf('mass', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }, 310) // 0
 */
export function decimalsOf(use: Use, units: UnitChoice, figure: number): number {
  const chosen = decimals[use](units);
  if (typeof chosen === 'number') return chosen;
  const [limit, below, above] = chosen;
  return Math.abs(figure) < limit ? below : above;
}

const decimals: Readonly<Record<Use, (units: UnitChoice) => Decimals>> = {
  length: (units) => ({ in: 2, cm: 1, mm: 0 })[units.length],
  setting: (units) => ({ in: [1, 3, 2] as const, cm: 2, mm: 1 })[units.setting],
  weight: () => 1,
  mass: (units) => ({ gr: [100, 1, 0] as const, g: [10, 2, 1] as const })[units.mass],
  distance: () => 1,
  drop: () => [10, 1, 0],
  speed: (units) => ({ 'ft/s': 0, 'm/s': 1 })[units.speed],
  wind: () => 1,
  deflection: (units) => ({ in: 3, mm: 2 })[units.deflection],
  density: () => 2,
  massPerWeight: (units) => (units.mass === 'gr' && units.weight === 'lb' ? 1 : 2),
  smallForce: () => 2,
  springRate: () => 2,
  weightPerLength: (units) => ({ lb: 2, kg: 3, N: 2 })[units.weight],
  inertia: () => 3,
  stiffness: () => 2,
  frequency: () => [100, 1, 0],
  energy: () => 1,
  time: () => 2,
  angle: () => [10, 2, 1],
  turns: () => 2,
  count: () => 0,
  ratio: () => 2,
  reading: () => 2,
  temperature: () => 1,
  pressure: () => [100, 2, 0],
  humidity: () => 0,
  altitude: () => 0,
};
