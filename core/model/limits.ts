import { z } from './zod.ts';
import { grain, inch, poundForce as lb } from '../units/exact.ts';
import type { Use } from '../units/uses.ts';

/**
 * Every measured figure of a record: what it is called, how it is shown, and the range outside which it is a slip of the pen.
 * SI throughout. The limits are wide on purpose: they catch a wrong unit, not an unusual bow.
 */
export interface Limit {
  readonly name: string;
  readonly use: Use;
  readonly min: number;
  readonly max: number;
}

export const limits = {
  drawLength: { name: 'A draw length', use: 'length', min: 12 * inch, max: 40 * inch },
  eyeHeight: { name: 'An eye height above the arrow', use: 'setting', min: 0, max: 0.25 },
  eyeAboveGround: { name: 'An eye height above the ground', use: 'length', min: 0.5, max: 2.5 },
  bowLength: { name: 'A bow length', use: 'length', min: 24 * inch, max: 84 * inch },
  markedWeight: { name: 'A marked weight', use: 'weight', min: 4 * lb, max: 120 * lb },
  markedDraw: { name: 'The draw the weight is marked at', use: 'length', min: 16 * inch, max: 34 * inch },
  weightOnFingers: { name: 'A weight on the fingers', use: 'weight', min: 2 * lb, max: 130 * lb },
  braceHeight: { name: 'A brace height', use: 'length', min: 3 * inch, max: 14 * inch },
  nockingPoint: { name: 'A nocking point above square', use: 'setting', min: -0.03, max: 0.05 },
  tiller: { name: 'A tiller (top minus bottom)', use: 'setting', min: -0.03, max: 0.03 },
  centreShot: { name: 'A centre shot outside the string', use: 'setting', min: -0.015, max: 0.02 },
  limbToString: { name: 'A distance from limb to string', use: 'setting', min: 0.08, max: 0.36 },
  boltTurns: { name: 'The turns of a limb bolt', use: 'turns', min: 0, max: 12 },
  buttonPreload: { name: 'A button’s preload', use: 'smallForce', min: 0, max: 20 },
  buttonRate: { name: 'A button’s stiffness', use: 'springRate', min: 50, max: 20000 },
  strands: { name: 'A number of strands', use: 'count', min: 2, max: 60 },
  stringLength: { name: 'A string length', use: 'length', min: 30 * inch, max: 84 * inch },
  stringMass: { name: 'A string mass', use: 'mass', min: 20 * grain, max: 800 * grain },
  twists: { name: 'A number of twists', use: 'count', min: 0, max: 120 },
  readingDraw: { name: 'A draw of a reading', use: 'length', min: 3 * inch, max: 42 * inch },
  readingForce: { name: 'A force of a reading', use: 'weight', min: 0, max: 140 * lb },
  holdTime: { name: 'A time held at full draw', use: 'time', min: 0, max: 300 },
  buttonTurns: { name: 'A button setting', use: 'turns', min: 0, max: 20 },
  arrowSpeed: { name: 'A measured arrow speed', use: 'speed', min: 20, max: 120 },
  leastMassPerWeight: {
    name: "The bow maker's least arrow mass",
    use: 'massPerWeight',
    min: (3 * grain) / lb,
    max: (20 * grain) / lb,
  },
  arrowLength: { name: 'An arrow length', use: 'length', min: 14 * inch, max: 42 * inch },
  deflection: { name: 'A spine deflection', use: 'deflection', min: 0.1 * inch, max: 4 * inch },
  linearDensity: { name: 'A shaft mass per length', use: 'density', min: (2 * grain) / inch, max: (30 * grain) / inch },
  shaftDiameter: { name: 'A shaft diameter', use: 'setting', min: 0.003, max: 0.014 },
  wall: { name: 'A wall thickness', use: 'deflection', min: 0.0001, max: 0.003 },
  balance: { name: 'A balance point from the throat of the nock', use: 'length', min: 5 * inch, max: 42 * inch },
  pinMass: { name: 'A pin mass', use: 'mass', min: 0, max: 60 * grain },
  wrapMass: { name: 'A wrap mass', use: 'mass', min: 0, max: 60 * grain },
  vaneCount: { name: 'A number of vanes', use: 'count', min: 1, max: 6 },
  vaneLength: { name: 'A length of the fletching', use: 'setting', min: 0.01, max: 0.2 },
  vaneFromThroat: { name: 'From the throat to the back of the fletching', use: 'setting', min: 0, max: 0.1 },
  straightness: { name: 'A straightness (total indicator reading)', use: 'deflection', min: 0, max: 0.2 * inch },
  pointMass: { name: 'A point mass', use: 'mass', min: 5 * grain, max: 400 * grain },
  insertMass: { name: 'An insert mass', use: 'mass', min: 0, max: 200 * grain },
  nockMass: { name: 'A nock mass', use: 'mass', min: 0, max: 60 * grain },
  fletchingMass: { name: 'A fletching mass', use: 'mass', min: 0, max: 80 * grain },
  arrowMass: { name: 'A weighed arrow', use: 'mass', min: 80 * grain, max: 1500 * grain },
  pointAhead: { name: 'The shaft ahead of the rest at the deepest draw', use: 'length', min: -0.1, max: 0.4 },
  shootingDistance: { name: 'A distance', use: 'distance', min: 1, max: 120 },
  sightReading: { name: 'A reading of the sight', use: 'reading', min: -1000, max: 1000 },
  sightUnit: { name: 'One unit of the sight’s scale', use: 'setting', min: 1e-5, max: 0.1 },
  sightRadius: { name: 'A distance from the eye to the pin', use: 'length', min: 0.3, max: 1.5 },
  speedDistance: { name: 'A distance along the flight', use: 'distance', min: 0, max: 120 },
  airTemperature: { name: 'A temperature of the air', use: 'temperature', min: 243.15, max: 323.15 },
  airPressure: { name: 'A pressure of the air', use: 'pressure', min: 5e4, max: 1.09e5 },
  humidity: { name: 'A humidity', use: 'humidity', min: 0, max: 1 },
  altitude: { name: 'A height above the sea', use: 'altitude', min: -450, max: 5500 },
  slope: { name: 'A slope', use: 'angle', min: -Math.PI / 3, max: Math.PI / 3 },
  windSpeed: { name: 'A wind', use: 'wind', min: 0, max: 20 },
  distanceOff: { name: 'How far out a distance may be', use: 'distance', min: 0, max: 40 },
  paperDistance: { name: 'A distance from the paper', use: 'distance', min: 0.5, max: 30 },
  tear: { name: 'A tear', use: 'setting', min: -0.3, max: 0.3 },
  checkLine: { name: 'The 50 mm line as it is printed', use: 'setting', min: 0.04, max: 0.06 },
  shotOffset: { name: 'A shot position', use: 'setting', min: -3, max: 3 },
} as const satisfies Record<string, Limit>;

export type Measure = keyof typeof limits;

/** The schema of one measured figure. */
export const measure = (key: Measure) =>
  z
    .number(`${limits[key].name} was expected as a number.`)
    .min(limits[key].min, `${limits[key].name} is below what can be.`)
    .max(limits[key].max, `${limits[key].name} is above what can be.`);
