import type { UnitChoice } from '../model/preferences.ts';
import { dimensionOf } from './dimensions.ts';
import { table, type Unit } from './table.ts';
import type { Use } from './uses.ts';

const symbolOf: Readonly<Record<Use, (units: UnitChoice) => string>> = {
  length: (units) => units.length,
  setting: (units) => units.setting,
  weight: (units) => units.weight,
  mass: (units) => units.mass,
  distance: (units) => units.distance,
  // Heights along a flight belong to the paced distance, not to the arrow's length.
  drop: (units) => (units.distance === 'yd' ? 'in' : 'cm'),
  speed: (units) => units.speed,
  // Nobody tells a wind in feet a second, however fast the arrows are told.
  wind: (units) => (units.distance === 'yd' ? 'mph' : 'm/s'),
  deflection: (units) => units.deflection,
  density: (units) => (units.mass === 'gr' ? 'gr/in' : 'g/m'),
  massPerWeight: (units) => (units.mass === 'gr' && units.weight === 'lb' ? 'gr/lb' : 'g/kg'),
  smallForce: () => 'N',
  springRate: () => 'N/mm',
  weightPerLength: (units) => ({ lb: 'lb/in', kg: 'kg/cm', N: 'N/cm' })[units.weight],
  inertia: () => 'g m²',
  stiffness: () => 'N m²',
  frequency: () => 'Hz',
  energy: () => 'J',
  time: () => 's',
  angle: () => '°',
  turns: () => 'turns',
  count: () => '',
  ratio: () => '',
  reading: () => '',
  temperature: () => '°C',
  pressure: () => 'hPa',
  humidity: () => '%',
  altitude: (units) => (units.distance === 'yd' ? 'ft' : 'm'),
};

const plain: Unit = { symbol: '', factor: 1, zero: 0, also: [] };

/**
 * The unit in which figures of a use are shown and bare numbers are read.
 *
 * @equation the chosen unit of the use; heights of a flight follow the distance (cm with m, in with yd), mass per weight is gr/lb only when both are chosen so
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @returns its symbol, the SI value of one of it and its other spellings [record]
 * @validity counts and ratios have an empty symbol; throws RangeError on a choice that the table does not hold
 * @source common practice
 * @example chosenUnit('deflection', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }).factor // 0.0254
 */
export function chosenUnit(use: Use, units: UnitChoice): Unit {
  const symbol = symbolOf[use](units);
  if (symbol === '') return plain;
  const found = table[dimensionOf[use]].find((unit) => unit.symbol === symbol);
  if (found === undefined) throw new RangeError(`The unit ${symbol} is not in the table of ${use}.`);
  return found;
}

/**
 * The symbol of the unit in which figures of a use are shown.
 *
 * @equation the symbol of the chosen unit
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @returns the symbol; empty for counts and ratios [text]
 * @validity every use
 * @source common practice
 * @example unitOf('massPerWeight', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }) // "gr/lb"
 */
export function unitOf(use: Use, units: UnitChoice): string {
  return chosenUnit(use, units).symbol;
}

/**
 * The SI value of one shown unit, for scales and axes.
 *
 * @equation SI value = shown figure × factor
 * @param use - what the figure is used for [choice]
 * @param units - the person's choice of units [record]
 * @returns the SI value of one of the chosen unit; 1 for counts and ratios [SI per unit]
 * @validity every use
 * @source nist-sp811
 * @example factorOf('weight', { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' }) // 4.4482216152605
 */
export function factorOf(use: Use, units: UnitChoice): number {
  return chosenUnit(use, units).factor;
}
