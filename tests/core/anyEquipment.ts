import fc from 'fast-check';
import {
  AgeGroup,
  Archer,
  ArrowPass,
  ArrowSet,
  type Bow,
  BowKind,
  CentreShotDatum,
  Condition,
  Form,
  Hand,
  NockFit,
  type Setup,
  SpineConvention,
  SightGrows,
  StringMaterial,
  UnitChoice,
  limits,
  type ForceReading,
  type Measure,
  type NumberedArrow,
  type Settings,
  type Stamp,
} from '../../core/model/index.ts';

// Records that the notebook would take, however odd: every figure anywhere inside its limits and often on them, blanks anywhere.

export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
    // Near the middle nothing is a slip of the pen, so that most rooms have something to compute.
    { weight: 4, arbitrary: fc.double({ min: min + 0.25 * (max - min), max: min + 0.6 * (max - min), noNaN: true }) },
  );
export const anyMeasure = (key: Measure): fc.Arbitrary<number> => between(limits[key].min, limits[key].max);
const blank = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(arbitrary, { freq: 6, nil: null });
const maybe = (key: Measure): fc.Arbitrary<number | null> => blank(anyMeasure(key));

export const anyId = fc.integer({ min: 1, max: 5 }).map((last) => `10000000-0000-4000-8000-00000000000${last}`);
export const anyStamp: fc.Arbitrary<Stamp> = fc.record({
  at: fc
    .date({ min: new Date('1971-01-01T00:00:00Z'), max: new Date('2190-01-01T00:00:00Z'), noInvalidDate: true })
    .map((date) => date.toISOString()),
  offsetMinutes: fc.integer({ min: -840, max: 840 }),
});
export const base = { id: anyId, revision: fc.nat(), born: anyStamp, archivedAt: blank(anyStamp) };
const anyName = fc.constantFrom('A', 'Tobin, 110 gr', 'Tobin, 85 gr', 'Old yew', 'x'.repeat(80));
export const oneOf = <const T extends string>(words: { readonly options: readonly T[] }): fc.Arbitrary<T> =>
  fc.constantFrom(...words.options);

export const anyUnits: fc.Arbitrary<UnitChoice> = fc.record({
  length: oneOf(UnitChoice.shape.length),
  setting: oneOf(UnitChoice.shape.setting),
  weight: oneOf(UnitChoice.shape.weight),
  mass: oneOf(UnitChoice.shape.mass),
  distance: oneOf(UnitChoice.shape.distance),
  speed: oneOf(UnitChoice.shape.speed),
  deflection: oneOf(UnitChoice.shape.deflection),
});

export const anyForm: fc.Arbitrary<Form> = fc.record({
  anchor: blank(oneOf(Form.shape.anchor.unwrap())),
  hook: blank(oneOf(Form.shape.hook.unwrap())),
  fingerCover: blank(oneOf(Form.shape.fingerCover.unwrap())),
  aiming: blank(oneOf(Form.shape.aiming.unwrap())),
  eyeHeight: maybe('eyeHeight'),
});

export const anyArcher: fc.Arbitrary<Archer> = fc.record({
  ...base,
  kind: fc.constant('archer'),
  name: anyName,
  hand: oneOf(Hand),
  drawLength: maybe('drawLength'),
  experience: blank(oneOf(Archer.shape.experience.unwrap())),
  clicker: fc.boolean(),
  ageGroup: blank(oneOf(AgeGroup)),
  holdTime: maybe('holdTime'),
  eyeAboveGround: maybe('eyeAboveGround'),
  form: anyForm,
});

/** Off the scale in any order and in any disorder; mostly a curve that rises. */
const anyReadings: fc.Arbitrary<ForceReading[]> = fc.oneof(
  fc.tuple(between(0.15, 0.3), between(2, 6), fc.integer({ min: 0, max: 14 })).map(([first, slope, count]) =>
    Array.from({ length: count }, (_, i): ForceReading => ({
      draw: first + 0.03 * i,
      // A strong and stiff one ends above what a scale of this kind shows.
      force: Math.min(slope * 10 * (i + 1), limits.readingForce.max),
      way: 'draw',
    })),
  ),
  fc.array(
    fc.record({ draw: anyMeasure('readingDraw'), force: anyMeasure('readingForce'), way: fc.constantFrom('draw', 'let-down') }),
    { maxLength: 12 },
  ),
);

export const anyBow: fc.Arbitrary<Bow> = fc.record({
  ...base,
  kind: fc.constant('bow'),
  name: anyName,
  bowKind: oneOf(BowKind),
  hand: oneOf(Hand),
  arrowPass: oneOf(ArrowPass),
  length: maybe('bowLength'),
  markedWeight: maybe('markedWeight'),
  markedDraw: anyMeasure('markedDraw'),
  braceLow: maybe('braceHeight'),
  braceHigh: maybe('braceHeight'),
  leastMassPerWeight: maybe('leastMassPerWeight'),
  lookedOver: blank(anyStamp),
  lookOver: blank(
    fc.record({
      by: fc.constantFrom('', 'Maud'),
      limbs: oneOf(Condition),
      tips: oneOf(Condition),
      bolts: oneOf(Condition),
      string: oneOf(Condition),
      serving: oneOf(Condition),
      note: fc.constant(''),
    }),
  ),
  dryFired: fc.option(anyStamp, { freq: 2, nil: null }),
  forceDraw: anyReadings,
  forceDrawBrace: maybe('braceHeight'),
  lowStretch: blank(fc.constantFrom('allowed', 'not allowed')),
  strandsLow: maybe('strands'),
  strandsHigh: maybe('strands'),
  mostBoltTurns: maybe('boltTurns'),
});

const anyNumbered: fc.Arbitrary<NumberedArrow> = fc.record({
  number: fc.integer({ min: 1, max: 999 }),
  mass: maybe('arrowMass'),
  spines: fc.array(maybe('deflection'), { maxLength: 4 }),
  straightness: maybe('straightness'),
  lookOver: blank(
    fc.record({ nock: oneOf(Condition), shaft: oneOf(Condition), point: oneOf(Condition), fletching: oneOf(Condition) }),
  ),
  lookedOver: blank(anyStamp),
  setAside: fc.boolean(),
  note: fc.constant(''),
});

export const anyArrowSet: fc.Arbitrary<ArrowSet> = fc.record({
  ...base,
  kind: fc.constant('arrowSet'),
  name: anyName,
  material: oneOf(ArrowSet.shape.material),
  length: maybe('arrowLength'),
  deflection: maybe('deflection'),
  convention: oneOf(SpineConvention),
  linearDensity: maybe('linearDensity'),
  diameter: maybe('shaftDiameter'),
  pointMass: maybe('pointMass'),
  insertMass: maybe('insertMass'),
  nockMass: maybe('nockMass'),
  fletchingMass: maybe('fletchingMass'),
  weighed: maybe('arrowMass'),
  lookedOver: blank(anyStamp),
  wall: maybe('wall'),
  balance: maybe('balance'),
  pinMass: maybe('pinMass'),
  wrapMass: maybe('wrapMass'),
  vaneCount: blank(fc.integer({ min: 1, max: 6 })),
  vaneLength: maybe('vaneLength'),
  vaneFromThroat: maybe('vaneFromThroat'),
  arrows: fc.uniqueArray(anyNumbered, { maxLength: 14, selector: ({ number }) => number }),
});

export const anySettings: fc.Arbitrary<Settings> = fc.record({
  braceHeight: maybe('braceHeight'),
  tiller: maybe('tiller'),
  nockingPoint: maybe('nockingPoint'),
  centreShot: maybe('centreShot'),
  centreShotDatum: oneOf(CentreShotDatum),
  buttonTurns: maybe('buttonTurns'),
  weightOnFingers: maybe('weightOnFingers'),
  weightDraw: maybe('drawLength'),
  arrowSpeed: maybe('arrowSpeed'),
  speedMass: maybe('arrowMass'),
  speedBrace: maybe('braceHeight'),
  pointAhead: maybe('pointAhead'),
  tillerUpper: maybe('limbToString'),
  tillerLower: maybe('limbToString'),
  upperBolt: maybe('boltTurns'),
  lowerBolt: maybe('boltTurns'),
  nockFit: blank(oneOf(NockFit)),
  buttonPreload: maybe('buttonPreload'),
  buttonRate: maybe('buttonRate'),
  stringMaterial: blank(oneOf(StringMaterial)),
  strands: maybe('strands'),
  stringLength: maybe('stringLength'),
  stringMass: maybe('stringMass'),
  twists: maybe('twists'),
  stringFitted: blank(fc.constantFrom('2026-05-02', '2019-11-30')),
  sightUnit: maybe('sightUnit'),
  sightGrows: blank(oneOf(SightGrows)),
  sightLowest: maybe('sightReading'),
  sightHighest: maybe('sightReading'),
  sightRadius: maybe('sightRadius'),
});

export const anySetup: fc.Arbitrary<Setup> = fc.record({
  ...base,
  kind: fc.constant('setup'),
  name: anyName,
  archerId: anyId,
  bowId: anyId,
  arrowSetId: anyId,
  settings: anySettings,
  form: anyForm,
  chronograph: fc.array(fc.record({ mass: anyMeasure('arrowMass'), speed: anyMeasure('arrowSpeed') }), { maxLength: 6 }),
  chronographBrace: maybe('braceHeight'),
  chronographDraw: maybe('drawLength'),
  flightSpeeds: fc.array(fc.record({ distance: anyMeasure('speedDistance'), speed: anyMeasure('arrowSpeed') }), { maxLength: 6 }),
});
