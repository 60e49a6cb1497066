import type { Archer, Form } from '../model/archer.ts';
import type { ArrowSet } from '../model/arrowSet.ts';
import type { Bow } from '../model/bow.ts';
import type { Settings, Setup } from '../model/setup.ts';
import { grain, inch, poundForce as lb } from '../units/exact.ts';
import type { Use } from '../units/uses.ts';

/**
 * One field of a record: what people call it, how it is shown, and how finely it can be read again [SI]. A look-over, and a dry fire, is
 * what somebody saw on a day, so it is no field here.
 */
export interface Field<K extends string = string> {
  readonly key: K;
  readonly name: string;
  readonly use: Use | null;
  readonly resolution: number;
}

const mm = 0.001;

const figure = <K extends string>(key: K, name: string, use: Use, resolution: number): Field<K> => ({
  key,
  name,
  use,
  resolution,
});
const word = <K extends string>(key: K, name: string): Field<K> => ({ key, name, use: null, resolution: 0 });

// What a careful hand reads again with a tape, a bow scale and a grain scale: from memory.
export const settingFields: readonly Field<keyof Settings>[] = [
  figure('braceHeight', 'Brace height', 'length', 1 * mm),
  figure('tiller', 'Tiller', 'setting', 0.5 * mm),
  figure('nockingPoint', 'Nocking point', 'setting', 0.25 * mm),
  figure('centreShot', 'Centre shot', 'setting', 0.25 * mm),
  word('centreShotDatum', 'Centre shot read at the'),
  figure('buttonTurns', 'Button', 'turns', 1 / 16),
  figure('weightOnFingers', 'Weight on the fingers', 'weight', 0.25 * lb),
  figure('weightDraw', 'Weight read at a draw of', 'length', 3 * mm),
  figure('arrowSpeed', 'Measured speed', 'speed', 0.3),
  figure('speedMass', 'Speed measured with an arrow of', 'mass', 1 * grain),
  figure('speedBrace', 'Speed measured at a brace height of', 'length', 1.5 * mm),
  figure('pointAhead', 'Shaft ahead of the rest', 'length', 1 * mm),
  figure('tillerUpper', 'Upper limb to string', 'setting', 0.5 * mm),
  figure('tillerLower', 'Lower limb to string', 'setting', 0.5 * mm),
  figure('upperBolt', 'Upper limb bolt', 'turns', 1 / 8),
  figure('lowerBolt', 'Lower limb bolt', 'turns', 1 / 8),
  word('nockFit', 'Nock fit'),
  figure('buttonPreload', 'Button preload', 'smallForce', 0.1),
  figure('buttonRate', 'Button stiffness', 'springRate', 50),
  word('stringMaterial', 'String'),
  figure('strands', 'Strands', 'count', 0.5),
  figure('stringLength', 'String length', 'length', 1 * mm),
  figure('stringMass', 'String mass', 'mass', 1 * grain),
  figure('twists', 'Twists', 'count', 0.5),
  word('stringFitted', 'String fitted on'),
  figure('sightUnit', 'One unit of the sight', 'setting', 0.05 * mm),
  word('sightGrows', 'Sight’s numbers grow'),
  figure('sightLowest', 'Lowest number of the sight', 'reading', 0.5),
  figure('sightHighest', 'Highest number of the sight', 'reading', 0.5),
  figure('sightRadius', 'Eye to the pin', 'length', 5 * mm),
];

export const formFields: readonly Field<keyof Form>[] = [
  word('anchor', 'Anchor'),
  word('hook', 'Hook'),
  word('fingerCover', 'Finger cover'),
  word('aiming', 'Aiming'),
  figure('eyeHeight', 'Eye above the arrow', 'setting', 5 * mm),
];

export const archerFields: readonly Field<keyof Archer>[] = [
  word('name', 'Archer'),
  word('hand', "Archer's hand"),
  figure('drawLength', 'Draw length', 'length', 3 * mm),
  word('experience', 'Experience'),
  word('clicker', 'Clicker'),
  word('ageGroup', 'Age'),
  figure('holdTime', 'Holds full draw for', 'time', 1),
  figure('eyeAboveGround', 'Eye above the ground', 'length', 20 * mm),
];

export const bowFields: readonly Field<keyof Bow>[] = [
  word('name', 'Bow'),
  word('bowKind', 'Kind of bow'),
  word('hand', "Bow's hand"),
  word('arrowPass', 'Arrow passes over'),
  figure('length', 'Bow length', 'length', 3 * mm),
  figure('markedWeight', 'Marked weight', 'weight', 0.5 * lb),
  figure('markedDraw', 'Marked at', 'length', 3 * mm),
  figure('braceLow', "Maker's least brace height", 'length', 0.5 * mm),
  figure('braceHigh', "Maker's greatest brace height", 'length', 0.5 * mm),
  word('lowStretch', 'Low-stretch string'),
  figure('strandsLow', "Maker's fewest strands", 'count', 0.5),
  figure('strandsHigh', "Maker's most strands", 'count', 0.5),
  figure('mostBoltTurns', "Maker's most bolt turns", 'turns', 1 / 8),
  word('forceDraw', 'Readings off the scale'),
  figure('forceDrawBrace', 'Read at a brace height of', 'length', 1 * mm),
  figure('leastMassPerWeight', "Maker's least arrow mass", 'massPerWeight', (0.05 * grain) / lb),
];

export const arrowFields: readonly Field<keyof ArrowSet>[] = [
  word('name', 'Arrows'),
  word('material', 'Shaft'),
  figure('length', 'Arrow length', 'length', 1 * mm),
  figure('deflection', 'Spine deflection', 'deflection', 0.005 * inch),
  word('convention', 'Spine measured over'),
  figure('linearDensity', 'Shaft mass per length', 'density', (0.05 * grain) / inch),
  figure('diameter', 'Shaft diameter', 'setting', 0.05 * mm),
  figure('pointMass', 'Point', 'mass', 0.5 * grain),
  figure('insertMass', 'Insert', 'mass', 0.5 * grain),
  figure('nockMass', 'Nock', 'mass', 0.5 * grain),
  figure('fletchingMass', 'Fletching', 'mass', 0.5 * grain),
  figure('pinMass', 'Pin', 'mass', 0.5 * grain),
  figure('wrapMass', 'Wrap', 'mass', 0.5 * grain),
  figure('wall', 'Wall', 'deflection', 0.0005 * inch),
  figure('balance', 'Balance point', 'length', 1 * mm),
  figure('vaneCount', 'Vanes', 'count', 0.5),
  figure('vaneLength', 'Fletching length', 'setting', 1 * mm),
  figure('vaneFromThroat', 'Throat to fletching', 'setting', 1 * mm),
  figure('weighed', 'Weighed arrow', 'mass', 0.5 * grain),
  word('arrows', 'Numbered arrows'),
];

export const setupFields: readonly Field<keyof Setup>[] = [
  word('name', 'Set-up'),
  word('chronograph', 'Arrows over the chronograph'),
  figure('chronographBrace', 'Timed at a brace height of', 'length', 1 * mm),
  figure('chronographDraw', 'Timed at a draw of', 'length', 3 * mm),
  word('flightSpeeds', 'Speeds along the flight'),
];
