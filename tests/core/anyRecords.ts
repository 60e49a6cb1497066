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
  FaceId,
  Form,
  Hand,
  NockFit,
  type Setup,
  ShotGroup,
  SpineConvention,
  StringMaterial,
  UnitChoice,
  limits,
  type Context,
  type ForceReading,
  type Measure,
  type NumberedArrow,
  type Settings,
  type ShotBundle,
  type Stamp,
} from '../../core/model/index.ts';

// Records that the notebook would take, however odd: every figure anywhere inside its limits and often on them, blanks anywhere.

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 4, arbitrary: fc.double({ min, max, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom(min, max) },
    // Near the middle nothing is a slip of the pen, so that most rooms have something to compute.
    { weight: 4, arbitrary: fc.double({ min: min + 0.25 * (max - min), max: min + 0.6 * (max - min), noNaN: true }) },
  );
export const anyMeasure = (key: Measure): fc.Arbitrary<number> => between(limits[key].min, limits[key].max);
const blank = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(arbitrary, { freq: 6, nil: null });
const maybe = (key: Measure): fc.Arbitrary<number | null> => blank(anyMeasure(key));

const anyId = fc.integer({ min: 1, max: 5 }).map((last) => `10000000-0000-4000-8000-00000000000${last}`);
const anyStamp: fc.Arbitrary<Stamp> = fc.record({
  at: fc
    .date({ min: new Date('1971-01-01T00:00:00Z'), max: new Date('2190-01-01T00:00:00Z'), noInvalidDate: true })
    .map((date) => date.toISOString()),
  offsetMinutes: fc.integer({ min: -840, max: 840 }),
});
const base = { id: anyId, revision: fc.nat(), born: anyStamp, archivedAt: blank(anyStamp) };
const anyName = fc.constantFrom('A', 'Tobin, 110 gr', 'Tobin, 85 gr', 'Old yew', 'x'.repeat(80));
const oneOf = <const T extends string>(words: { readonly options: readonly T[] }): fc.Arbitrary<T> =>
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

const anyForm: fc.Arbitrary<Form> = fc.record({
  anchor: blank(oneOf(Form.shape.anchor.unwrap())),
  hook: blank(oneOf(Form.shape.hook.unwrap())),
  fingerCover: blank(oneOf(Form.shape.fingerCover.unwrap())),
  aiming: blank(oneOf(Form.shape.aiming.unwrap())),
  eyeHeight: maybe('eyeHeight'),
});

const anyArcher: fc.Arbitrary<Archer> = fc.record({
  ...base,
  kind: fc.constant('archer'),
  name: anyName,
  hand: oneOf(Hand),
  drawLength: maybe('drawLength'),
  experience: oneOf(Archer.shape.experience),
  clicker: fc.boolean(),
  ageGroup: blank(oneOf(AgeGroup)),
  holdTime: maybe('holdTime'),
  form: anyForm,
});

/** Off the scale in any order and in any disorder; mostly a curve that rises. */
const anyReadings: fc.Arbitrary<ForceReading[]> = fc.oneof(
  fc
    .tuple(between(0.15, 0.3), between(2, 6), fc.integer({ min: 0, max: 14 }))
    .map(([first, slope, count]) =>
      Array.from({ length: count }, (_, i): ForceReading => ({
        draw: first + 0.03 * i,
        force: slope * 10 * (i + 1),
        way: 'draw',
      })),
    ),
  fc.array(
    fc.record({ draw: anyMeasure('readingDraw'), force: anyMeasure('readingForce'), way: fc.constantFrom('draw', 'let-down') }),
    { maxLength: 12 },
  ),
);

const anyBow: fc.Arbitrary<Bow> = fc.record({
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

const anyArrowSet: fc.Arbitrary<ArrowSet> = fc.record({
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

const anySettings: fc.Arbitrary<Settings> = fc.record({
  braceHeight: maybe('braceHeight'),
  tiller: maybe('tiller'),
  nockingPoint: maybe('nockingPoint'),
  centreShot: maybe('centreShot'),
  centreShotDatum: oneOf(CentreShotDatum),
  buttonTurns: maybe('buttonTurns'),
  weightOnFingers: maybe('weightOnFingers'),
  weightDraw: maybe('drawLength'),
  arrowSpeed: maybe('arrowSpeed'),
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
});

const anySetup: fc.Arbitrary<Setup> = fc.record({
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
});

type Place = readonly [x: number, y: number];
const reach = limits.shotOffset.max;
const clip = (value: number): number => Math.min(reach, Math.max(-reach, value));
const count = fc.integer({ min: 0, max: 30 });
/** A round group about a centre; all in one hole; on a line, some of them twice; anywhere at all. */
const anyPlaces: fc.Arbitrary<Place[]> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc
      .tuple(
        fc.integer({ min: -90, max: 90 }),
        fc.integer({ min: -90, max: 90 }),
        fc.array(fc.tuple(fc.integer({ min: -40, max: 40 }), fc.integer({ min: -40, max: 40 })), { maxLength: 30 }),
      )
      .map(([x, y, about]) => about.map(([dx, dy]): Place => [(x + dx) / 1000, (y + dy) / 1000])),
  },
  {
    weight: 1,
    arbitrary: fc.tuple(count, between(-reach, reach)).map(([n, x]) => Array.from({ length: n }, (): Place => [x, -x])),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(count, fc.double({ min: -0.05, max: 0.05, noNaN: true }), fc.double({ min: -0.05, max: 0.05, noNaN: true }))
      .map(([n, dx, dy]) => Array.from({ length: n }, (_, i): Place => [clip((i % 7) * dx), clip((i % 7) * dy)])),
  },
  { weight: 1, arbitrary: fc.array(fc.tuple(between(-reach, reach), between(-reach, reach)), { maxLength: 30 }) },
);

const anyContext: fc.Arbitrary<Context> = fc.record({
  distance: anyMeasure('shootingDistance'),
  face: oneOf(FaceId),
  shotAt: anyStamp,
  weather: fc.constantFrom('', 'windy', 'indoors'),
  light: fc.constantFrom('', 'bright'),
  kit: fc.constantFrom('', 'new tab'),
  form: anyForm,
  settings: anySettings,
  arrowSetId: anyId,
});

const anyGroup: fc.Arbitrary<ShotGroup> = fc.record({
  ...base,
  kind: fc.constant('group'),
  setupId: anyId,
  fletching: oneOf(ShotGroup.shape.fletching),
  context: anyContext,
  shots: anyPlaces.map((places) => places.map(([x, y], id) => ({ id, x, y, arrow: id % 3 === 0 ? null : id }))),
  note: fc.constant(''),
});

const mostlyTrue = fc.integer({ min: 0, max: 9 }).map((chance) => chance > 1);

/** A set-up with its groups, most of them shot with it as it stands, in its form and at one distance, so that most pairs can be read. */
export const anyShotBundle: fc.Arbitrary<ShotBundle> = fc
  .record({
    archer: anyArcher,
    bow: anyBow,
    arrowSet: anyArrowSet,
    setup: anySetup,
    groups: fc.array(anyGroup, { maxLength: 4 }),
    oneHand: mostlyTrue,
    alike: mostlyTrue,
    weighed: mostlyTrue,
    distance: anyMeasure('shootingDistance'),
  })
  .map(({ archer, bow, arrowSet, setup, groups, oneHand, alike, weighed, distance }) => {
    const { form } = setup;
    // A reading mostly belongs to this draw and agrees with the mark, or most arrows would be too light for one of the two.
    const settings = weighed ? { ...setup.settings, weightDraw: archer.drawLength } : setup.settings;
    const markedWeight = weighed && settings.weightOnFingers !== null ? null : bow.markedWeight;
    const shotWith = (group: ShotGroup): ShotGroup => ({
      ...group,
      setupId: setup.id,
      context: { ...group.context, distance, settings, form, arrowSetId: arrowSet.id },
    });
    return {
      archer,
      bow: { ...bow, markedWeight, hand: oneHand ? archer.hand : bow.hand },
      arrowSet,
      setup: { ...setup, settings, archerId: archer.id, bowId: bow.id, arrowSetId: arrowSet.id },
      groups: alike ? groups.map(shotWith) : groups,
    };
  });

/** A fletched and a bare group of a set-up, mostly alike in all but where they struck. */
export const anyPairOf = (bundle: ShotBundle): fc.Arbitrary<readonly [ShotGroup, ShotGroup]> =>
  fc
    .record({ fletched: anyGroup, bare: anyGroup, alike: mostlyTrue, named: mostlyTrue })
    .map(({ fletched, bare, alike, named }) => {
      const { setup, arrowSet } = bundle;
      const context = { ...fletched.context, settings: setup.settings, form: setup.form, arrowSetId: arrowSet.id };
      const shotWith = (group: ShotGroup): ShotGroup => (alike ? { ...group, setupId: setup.id, context } : group);
      const one = shotWith(fletched);
      const other = shotWith(bare);
      return named
        ? [
            { ...one, fletching: 'fletched' },
            { ...other, fletching: 'bare' },
          ]
        : [one, other];
    });
