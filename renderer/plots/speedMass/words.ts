import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, showQuantity, textQuantity, unitOf } from '../../../core/units/index.ts';
import type { CsvTable } from '../../export/index.ts';
import type { Said } from '../readAlong/words.ts';
import { speedAt, type SpeedMassData } from './data.ts';

/** The finding: how fast this arrow leaves, or that it is not to be shot. */
export function headline({ arrow, from }: SpeedMassData, units: UnitChoice): string {
  const mass = textQuantity(arrow.mass, 'mass', units);
  if (arrow.speed === null) return `${mass} is too light for this bow`;
  return `${from === 'estimated' ? 'About ' : ''}${textQuantity(arrow.speed.value, 'speed', units)} with ${mass}`;
}

/** What the curve rests on: the fit with its interval, why it is not used, or that it is an estimate. */
export function note(data: SpeedMassData, units: UnitChoice): string {
  if (data.arrow.speed === null && data.least !== null)
    return `Least ${textQuantity(data.least.mass, 'mass', units)}, ${leastFrom[data.least.from]}. Do not shoot it; a heavier arrow is needed.`;
  const { fit } = data;
  if (fit === null)
    return 'Estimated from the kind of bow. Arrows of two masses or more over a chronograph give the bow’s own virtual mass.';
  if (!fit.credible || fit.virtualMass === null) return `Flagged, not used: ${fit.why ?? 'the fit is not credible.'}`;
  const { value, low, high } = fit.virtualMass;
  const range = `${showQuantity(low, 'mass', units).figure} to ${textQuantity(high, 'mass', units)}`;
  return `Virtual mass ${textQuantity(value, 'mass', units)}, ${fit.from === 'several masses' ? '95 % ' : ''}${range}, from ${fit.readings} ${fit.readings === 1 ? 'speed' : 'speeds'}.`;
}

/** What the speeds alone leave open, and what else the fit rests on: sentences for under the plot. */
export const beneath = ({ fit, arrow }: SpeedMassData): readonly string[] =>
  fit === null || arrow.speed === null ? [] : [fit.cannotSeparate, ...fit.notes];

const leastFrom = {
  maker: 'the bow maker’s figure',
  'common practice': 'common practice',
  'from memory': 'common practice, from memory',
};

/** What the band holds, as its name on the plot. */
export function bandName({ from, fit }: SpeedMassData): string {
  if (from === 'estimated') return 'estimate';
  return fit?.from === 'one mass' ? 'from one mass' : '95 %';
}

/** The second figure beside this arrow, longest first: what goes with it, and which share of the store that is. */
export function atTheArrow({ arrow, stored }: SpeedMassData, units: UnitChoice): readonly string[] {
  if (arrow.speed === null) return [];
  const energy = (arrow.mass * arrow.speed.value ** 2) / 2;
  const text = textQuantity(energy, 'energy', units);
  const share = stored === null ? '' : `, ${Math.round((100 * energy) / stored)} % of the store`;
  return [`${text} with the arrow${share}`, `${text}${share}`, text];
}

export function saidAt(data: SpeedMassData, mass: number, units: UnitChoice): Said {
  const speed = speedAt(data.samples, mass);
  const where = textQuantity(mass, 'mass', units);
  if (speed === null)
    return { where, figures: [data.least !== null && mass < data.least.mass ? 'too light: no speed is shown' : 'not known'] };
  const range = `${showQuantity(speed.low, 'speed', units).figure} to ${textQuantity(speed.high, 'speed', units)}`;
  return {
    where,
    figures: [textQuantity(speed.value, 'speed', units), range, textQuantity((mass * speed.value ** 2) / 2, 'energy', units)],
  };
}

export function sentence(data: SpeedMassData, units: UnitChoice): string {
  const measured = data.read.length === 0 ? '' : ` Read over the chronograph: ${data.read.length}.`;
  return `Speed against arrow mass. ${headline(data, units)}. ${note(data, units)}${measured}`;
}

/** What was read, then the curve, in the shown units. */
export function table(data: SpeedMassData, units: UnitChoice): CsvTable {
  const [perMass, perSpeed] = [factorOf('mass', units), factorOf('speed', units)];
  const mass = (si: number) => Number((si / perMass).toFixed(3));
  const speed = (si: number) => Number((si / perSpeed).toFixed(3));
  const unit = unitOf('speed', units);
  return {
    columns: ['what', `arrow mass (${unitOf('mass', units)})`, `speed (${unit})`, `low (${unit})`, `high (${unit})`],
    rows: [
      ...data.read.map((reading) => ['read', mass(reading.mass), speed(reading.speed), null, null]),
      ...data.samples.map((sample) => ['curve', mass(sample.mass), speed(sample.value), speed(sample.low), speed(sample.high)]),
    ],
  };
}
