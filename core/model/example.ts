import { grain, inch, poundForce as lb } from '../units/exact.ts';
import type { Archer, Form } from './archer.ts';
import type { ArrowSet } from './arrowSet.ts';
import type { Bow } from './bow.ts';
import type { ShotBundle } from './bundle.ts';
import type { Stamp } from './common.ts';
import type { Context, ShotGroup } from './group.ts';
import type { Settings, Setup } from './setup.ts';
import { unmeasured } from './unmeasured.ts';

// Invented figures, nobody's bow. The documentation's examples run on them, so they must stay as they are.

const born: Stamp = { at: '2026-05-02T09:00:00Z', offsetMinutes: 60 };
const id = (last: number) => `10000000-0000-4000-8000-00000000000${last}`;
const fresh = { revision: 0, born, archivedAt: null };

const form: Form = { anchor: 'under the jaw', hook: 'split', fingerCover: 'tab', aiming: 'sight', eyeHeight: 0.11 };

const archer: Archer = {
  ...fresh,
  kind: 'archer',
  ...unmeasured.archer,
  id: id(1),
  name: 'Example archer',
  hand: 'right',
  drawLength: 27.5 * inch,
  experience: 'settled',
  clicker: true,
  form,
};

const bow: Bow = {
  ...fresh,
  kind: 'bow',
  ...unmeasured.bow,
  id: id(2),
  name: 'Example recurve',
  bowKind: 'take-down recurve',
  hand: 'right',
  arrowPass: 'rest and button',
  length: 66 * inch,
  markedWeight: 34 * lb,
  markedDraw: 28 * inch,
  braceLow: 8.25 * inch,
  braceHigh: 9.25 * inch,
  leastMassPerWeight: (7 * grain) / lb,
  lookedOver: born,
};

const arrowSet: ArrowSet = {
  ...fresh,
  kind: 'arrowSet',
  ...unmeasured.arrowSet,
  id: id(3),
  name: 'Example dozen',
  material: 'carbon',
  length: 28 * inch,
  deflection: 0.72 * inch,
  convention: '28 in, 880 g',
  linearDensity: (7 * grain) / inch,
  diameter: 0.0058,
  pointMass: 100 * grain,
  insertMass: 12 * grain,
  nockMass: 8 * grain,
  fletchingMass: 9 * grain,
  weighed: 326 * grain,
  lookedOver: born,
};

const settings: Settings = {
  ...unmeasured.settings,
  braceHeight: 8.5 * inch,
  tiller: 0.003,
  nockingPoint: 0.006,
  centreShot: 0.002,
  centreShotDatum: 'point',
  buttonTurns: 3,
  weightOnFingers: 33 * lb,
  weightDraw: 27.5 * inch,
  arrowSpeed: null,
  pointAhead: 2 * inch,
};

const setup: Setup = {
  ...fresh,
  kind: 'setup',
  ...unmeasured.setup,
  id: id(4),
  name: 'Example set-up',
  archerId: archer.id,
  bowId: bow.id,
  arrowSetId: arrowSet.id,
  settings,
  form,
};

const context: Context = {
  distance: 18,
  face: '40',
  shotAt: { at: '2026-05-02T10:30:00Z', offsetMinutes: 60 },
  weather: 'indoors',
  light: '',
  kit: '',
  form,
  settings,
  arrowSetId: arrowSet.id,
};

const group = (last: number, fletching: ShotGroup['fletching'], places: readonly (readonly [number, number])[]): ShotGroup => ({
  ...fresh,
  kind: 'group',
  id: id(last),
  setupId: setup.id,
  fletching,
  context,
  shots: places.map(([xMm, yMm], index) => ({ ...unmeasured.shot, id: index, x: xMm / 1000, y: yMm / 1000, arrow: index + 1 })),
  note: '',
});

/** Six fletched arrows at 18 m, for the examples in the documentation. Invented. */
export const exampleFletched: ShotGroup = group(5, 'fletched', [
  [-24, 14],
  [8, -20],
  [18, 9],
  [-6, 22],
  [-15, -11],
  [10, -2],
]);

/** Four bare shafts at 18 m, plainly to the right of the fletched ones. Invented. */
export const exampleBare: ShotGroup = group(6, 'bare', [
  [38, -12],
  [52, 10],
  [30, 6],
  [48, -16],
]);

/** A right-handed archer's recurve in good order with the two groups above. Invented. */
export const exampleBundle: ShotBundle = { archer, bow, arrowSet, setup, groups: [exampleFletched, exampleBare] };

/** An hour after the example's arrows were shot. */
export const exampleNow: Stamp = { at: '2026-05-02T11:30:00Z', offsetMinutes: 60 };
