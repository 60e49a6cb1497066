import type { Measure } from '../model/limits.ts';
import type { Use } from './uses.ts';

interface Wording {
  /** With its article, so that "a brace height is a length" reads right. */
  readonly kind: string;
  readonly units: string;
  readonly such: string;
}

const word = (kind: string, units: string, such: string): Wording => ({ kind, units, such });

/** How each use is spoken of in a refusal. */
export const wording: Readonly<Record<Use, Wording>> = {
  length: word('a length', 'in, cm or mm', '28 1/4 in or 71.8 cm'),
  setting: word('a length', 'mm, cm or in', '6 mm or 1/4 in'),
  weight: word('a draw weight', 'lb, kg or N', '38 lb or 17.2 kg'),
  mass: word('a mass', 'gr or g', '310 gr or 20.1 g'),
  distance: word('a distance', 'm or yd', '18 m or 20 yd'),
  drop: word('a height', 'cm, m or in', '12 cm or 4.7 in'),
  speed: word('a speed', 'ft/s or m/s', '180 ft/s or 54.9 m/s'),
  deflection: word('a deflection', 'in or mm', '0.600 in or 15.24 mm'),
  density: word('a mass per length', 'gr/in or g/m', '7.5 gr/in or 19.1 g/m'),
  massPerWeight: word('a mass per draw weight', 'gr/lb or g/kg', '8 gr/lb or 1.14 g/kg'),
  smallForce: word('a force', 'N or g', '1.8 N or 180 g'),
  springRate: word('a stiffness', 'N/mm or lb/in', '0.9 N/mm or 5 lb/in'),
  weightPerLength: word('a force per length', 'lb/in or N/cm', '2 lb/in or 3.5 N/cm'),
  inertia: word('a moment of inertia', 'g m² or kg m²', '0.9 g m²'),
  stiffness: word('a bending stiffness', 'N m² or lb in²', '4.24 N m²'),
  frequency: word('a frequency', 'Hz', '78 Hz'),
  energy: word('an energy', 'J or ft lb', '45 J'),
  time: word('a time', 's or ms', '1.2 s or 16 ms'),
  angle: word('an angle', 'degrees', '3.5°'),
  turns: word('a number of turns', 'turns', '2 1/4'),
  count: word('a count', 'no unit', '12'),
  ratio: word('a plain number', 'no unit', '1.5'),
  reading: word('a reading of the scale', 'no unit', '52.5'),
};

/** A believable figure for each measure, in two units, for the sentence that says what was expected. */
export const suchAs: Readonly<Record<Measure, string>> = {
  drawLength: '28 1/4 in or 71.8 cm',
  eyeHeight: '120 mm or 4.7 in',
  bowLength: '68 in or 172.7 cm',
  markedWeight: '36 lb or 16.3 kg',
  markedDraw: '28 in or 71.1 cm',
  weightOnFingers: '38 lb or 17.2 kg',
  braceHeight: '8 1/2 in or 216 mm',
  nockingPoint: '6 mm or 1/4 in',
  tiller: '3 mm or 1/8 in',
  centreShot: '2.4 mm or 3/32 in',
  buttonTurns: '2 1/4 or 2.25 turns',
  arrowSpeed: '180 ft/s or 54.9 m/s',
  leastMassPerWeight: '8 gr/lb or 1.14 g/kg',
  arrowLength: '28 1/2 in or 72.4 cm',
  deflection: '0.600 in or 15.24 mm',
  linearDensity: '7.5 gr/in or 19.1 g/m',
  shaftDiameter: '5.5 mm or 0.217 in',
  pointMass: '100 gr or 6.48 g',
  insertMass: '12 gr or 0.78 g',
  nockMass: '8 gr or 0.52 g',
  fletchingMass: '9 gr or 0.58 g',
  arrowMass: '310 gr or 20.1 g',
  pointAhead: '1 1/2 in or 38 mm',
  limbToString: '187 mm or 7 3/8 in',
  boltTurns: '3 turns',
  buttonPreload: '1.8 N or 180 g',
  buttonRate: '0.9 N/mm or 5 lb/in',
  strands: '16',
  stringLength: '63 1/2 in or 161.3 cm',
  stringMass: '105 gr or 6.8 g',
  twists: '28',
  readingDraw: '24 in or 61 cm',
  readingForce: '30 lb or 13.6 kg',
  holdTime: '15 s',
  wall: '0.016 in or 0.41 mm',
  balance: '18 1/4 in or 46.4 cm',
  pinMass: '5 gr or 0.32 g',
  wrapMass: '6 gr or 0.39 g',
  vaneCount: '3',
  vaneLength: '45 mm or 1 3/4 in',
  vaneFromThroat: '25 mm or 1 in',
  straightness: '0.003 in or 0.08 mm',
  shootingDistance: '18 m or 20 yd',
  sightReading: '52.5',
  sightUnit: '1.6 mm or 1/16 in',
  sightRadius: '85 cm or 33 1/2 in',
  speedDistance: '30 m or 33 yd',
  paperDistance: '2 m or 7 ft',
  tear: '12 mm or 1/2 in',
  shotOffset: '35 mm or 1.4 in',
};
