import { windSign } from '../../../../core/aim/index.ts';
import type { Why } from '../../../../core/findings/finding.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import type { Given } from './given.ts';
import { windOf, type Blown } from './lands.ts';
import { far } from './words.ts';

export const hours: readonly string[] = [
  '12 o’clock, head on',
  '1 o’clock',
  '2 o’clock',
  '3 o’clock, from the right',
  '4 o’clock',
  '5 o’clock',
  '6 o’clock, from behind',
  '7 o’clock',
  '8 o’clock',
  '9 o’clock, from the left',
  '10 o’clock',
  '11 o’clock',
];

/** "from 3 o’clock" */
export const fromHour = (hour: number): string => `from ${hour === 0 ? 12 : hour} o’clock`;

/** A wind in the units that people have a feeling for, and what it looks like. */
export function windText(speed: number): string {
  const { force, name, sign } = windSign(speed);
  const round = (figure: number) => String(Number(figure.toFixed(figure < 10 ? 1 : 0)));
  return `${round(speed)} m/s, ${round(3.6 * speed)} km/h, ${round(speed / 0.44704)} mph. Force ${force}, ${name}: ${sign}.`;
}

/** How the drift comes about. */
export function windWhy(given: Given, { drift, time, lagRule }: Blown, units: UnitChoice): Why {
  return {
    title: 'An arrow in a steady wind',
    text:
      'The wind does not push an arrow that goes with the air; it drifts by as much as drag holds it up on its way. So what counts is how much later than without drag it arrives, not how long it flies. ' +
      'The full solution flies the arrow through the wind. It knows nothing of a bow arm that is blown about.',
    equation: 'drag along u = v − w. Lag rule: z = w_z (t − x/v_x)',
    symbols: [
      { symbol: 'w_z', name: 'wind across, to the right', value: textQuantity(windOf(given).z, 'wind', units) },
      { symbol: 't', name: 'time of flight', value: textQuantity(time.value, 'time', units, { digits: 3 }) },
      { symbol: 'x', name: 'distance', value: far(given.distance, units) },
      { symbol: 'v', name: 'speed of the arrow', value: textQuantity(given.launches.value.speed, 'speed', units) },
      { symbol: 'z', name: 'drift to the right, by the rule', value: textQuantity(lagRule, 'drop', units) },
      { symbol: '', name: 'by the full solution', value: textQuantity(drift.value, 'drop', units) },
    ],
    source: 'own derivation',
  };
}
