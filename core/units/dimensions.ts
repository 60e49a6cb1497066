import type { Use } from './uses.ts';

/** What can be converted into what. A draw weight is a force, so it is not a mass although both are typed in pounds. */
export type Dimension =
  | 'length'
  | 'force'
  | 'mass'
  | 'speed'
  | 'massPerLength'
  | 'massPerForce'
  | 'forcePerLength'
  | 'momentOfInertia'
  | 'stiffness'
  | 'frequency'
  | 'energy'
  | 'time'
  | 'angle'
  | 'turn'
  | 'temperature'
  | 'pressure'
  | 'number';

/** The dimension of every use. */
export const dimensionOf: Readonly<Record<Use, Dimension>> = {
  length: 'length',
  setting: 'length',
  distance: 'length',
  drop: 'length',
  deflection: 'length',
  weight: 'force',
  mass: 'mass',
  speed: 'speed',
  wind: 'speed',
  density: 'massPerLength',
  massPerWeight: 'massPerForce',
  smallForce: 'force',
  springRate: 'forcePerLength',
  weightPerLength: 'forcePerLength',
  inertia: 'momentOfInertia',
  stiffness: 'stiffness',
  frequency: 'frequency',
  energy: 'energy',
  time: 'time',
  angle: 'angle',
  turns: 'turn',
  count: 'number',
  ratio: 'number',
  reading: 'number',
  temperature: 'temperature',
  pressure: 'pressure',
  humidity: 'number',
  altitude: 'length',
};
