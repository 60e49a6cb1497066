import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import type { CsvTable } from '../../export/index.ts';
import type { Said } from '../readAlong/words.ts';
import { energyParts, sampleAt, type StrokeData } from './data.ts';

/** The finding: what reaches the arrow of what the bow stored. */
export function headline({ exit }: StrokeData): string {
  return `${Math.round(100 * exit.efficiency)} % of the energy goes with the arrow`;
}

/** How far the model can be trusted, where it can be read. */
const MODEL_LIMITS = 'Model: rigid limbs on a hinge, elastic string. Speed and time hold; its tension near brace is too high.';

export function note({ exit }: StrokeData, units: UnitChoice): string {
  const time = textQuantity(exit.time, 'time', units);
  const speed = textQuantity(exit.speed, 'speed', units);
  return `Leaves after ${time} at ${speed}. ${MODEL_LIMITS}`;
}

/** What one number for the bow's moving mass says of the same stroke. */
export function besideIt({ simple, exit }: StrokeData, units: UnitChoice): string {
  const shorter = Math.round(100 * (1 - simple.time / exit.time));
  const differs = shorter === 0 ? 'the same time' : `a time ${Math.abs(shorter)} % ${shorter > 0 ? 'shorter' : 'longer'}`;
  return `One number for the bow’s own mass, ${textQuantity(simple.virtualMass, 'mass', units)}, gives ${textQuantity(simple.time, 'time', units)} and ${textQuantity(simple.speed, 'speed', units)}: ${differs}.`;
}

export function saidAt(data: StrokeData, time: number, units: UnitChoice): Said {
  const sample = sampleAt(data.samples, time);
  if (sample === null) return { where: textQuantity(time, 'time', units), figures: [] };
  return {
    where: textQuantity(sample.time, 'time', units),
    figures: [
      `thrust ${textQuantity(sample.thrust, 'weight', units)}`,
      `tension ${textQuantity(sample.tension, 'weight', units)}`,
      textQuantity(sample.speed, 'speed', units),
      `${textQuantity(sample.energy.arrow, 'energy', units)} in the arrow`,
    ],
  };
}

export function sentence(data: StrokeData, units: UnitChoice): string {
  const { energy, tension } = data.samples.at(-1) ?? { energy: null, tension: 0 };
  const left =
    energy === null
      ? ''
      : ` At the exit ${textQuantity(energy.arrow, 'energy', units)} are in the arrow, ${textQuantity(energy.limbs, 'energy', units)} in the limbs, ${textQuantity(energy.string, 'energy', units)} in the string, and ${textQuantity(energy.lost, 'energy', units)} are lost; the string pulls ${textQuantity(tension, 'weight', units)}.`;
  return `The stroke against time. ${headline(data)}. ${note(data, units)}${left}`;
}

/** The stroke moment by moment, in the shown units. */
export function table(data: StrokeData, units: UnitChoice): CsvTable {
  const [force, speed] = [factorOf('weight', units), factorOf('speed', units)];
  const fixed = (value: number) => Number(value.toFixed(4));
  return {
    columns: [
      'time (ms)',
      `thrust (${unitOf('weight', units)})`,
      `string tension (${unitOf('weight', units)})`,
      `arrow speed (${unitOf('speed', units)})`,
      ...energyParts.map((part) => `energy, ${part} (J)`),
    ],
    rows: data.samples.map((sample) => [
      fixed(sample.time * 1000),
      fixed(sample.thrust / force),
      fixed(sample.tension / force),
      fixed(sample.speed / speed),
      ...energyParts.map((part) => fixed(sample.energy[part])),
    ]),
  };
}
