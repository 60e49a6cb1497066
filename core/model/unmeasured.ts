import type { Archer } from './archer.ts';
import type { ArrowSet } from './arrowSet.ts';
import type { Bow } from './bow.ts';
import type { Shot } from './group.ts';
import type { NumberedArrow } from './numberedArrow.ts';
import type { FlightSpeed, ForceReading, SpeedReading } from './readings.ts';
import type { Settings, Setup } from './setup.ts';

/** The blanks that a record is born with: nothing of it has been measured, read or looked at. */
export const unmeasured = {
  archer: { drawLength: null, experience: null, ageGroup: null, holdTime: null, eyeAboveGround: null },
  bow: {
    length: null,
    markedWeight: null,
    braceLow: null,
    braceHigh: null,
    leastMassPerWeight: null,
    lookedOver: null,
    lookOver: null,
    dryFired: null,
    forceDraw: [] as ForceReading[],
    forceDrawBrace: null,
    lowStretch: null,
    strandsLow: null,
    strandsHigh: null,
    mostBoltTurns: null,
  },
  arrowSet: {
    length: null,
    deflection: null,
    linearDensity: null,
    diameter: null,
    pointMass: null,
    insertMass: null,
    nockMass: null,
    fletchingMass: null,
    weighed: null,
    lookedOver: null,
    wall: null,
    balance: null,
    pinMass: null,
    wrapMass: null,
    vaneCount: null,
    vaneLength: null,
    vaneFromThroat: null,
    arrows: [] as NumberedArrow[],
  },
  settings: {
    braceHeight: null,
    tiller: null,
    nockingPoint: null,
    centreShot: null,
    centreShotDatum: 'point',
    buttonTurns: null,
    weightOnFingers: null,
    weightDraw: null,
    arrowSpeed: null,
    speedMass: null,
    speedBrace: null,
    pointAhead: null,
    tillerUpper: null,
    tillerLower: null,
    upperBolt: null,
    lowerBolt: null,
    nockFit: null,
    buttonPreload: null,
    buttonRate: null,
    stringMaterial: null,
    strands: null,
    stringLength: null,
    stringMass: null,
    twists: null,
    stringFitted: null,
    sightUnit: null,
    sightGrows: null,
    sightLowest: null,
    sightHighest: null,
    sightRadius: null,
  },
  shot: { arrow: null, end: null, leftOut: null },
  setup: { chronograph: [] as SpeedReading[], chronographBrace: null, chronographDraw: null, flightSpeeds: [] as FlightSpeed[] },
} as const satisfies {
  archer: Partial<Archer>;
  bow: Partial<Bow>;
  arrowSet: Partial<ArrowSet>;
  settings: Settings;
  shot: Partial<Shot>;
  setup: Partial<Setup>;
};
