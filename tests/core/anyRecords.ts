import fc from 'fast-check';
import { FaceId, ShotGroup, limits, type Bow, type Context, type ShotBundle } from '../../core/model/index.ts';
import {
  anyArcher,
  anyArrowSet,
  anyBow,
  anyForm,
  anyId,
  anyMeasure,
  anySettings,
  anySetup,
  anyStamp,
  base,
  between,
  oneOf,
} from './anyEquipment.ts';

export { anyUnits } from './anyEquipment.ts';

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
  shots: anyPlaces.map((places) =>
    places.map(([x, y], id) => ({
      id,
      x,
      y,
      arrow: id % 3 === 0 ? null : id,
      end: id % 5 === 0 ? null : 1 + Math.floor(id / 6),
      leftOut: id % 11 === 10 ? 'a nock burst' : null,
    })),
  ),
  note: fc.constant(''),
});

export const mostlyTrue = fc.integer({ min: 0, max: 9 }).map((chance) => chance > 1);

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
    cared: mostlyTrue,
    distance: anyMeasure('shootingDistance'),
  })
  .map(({ archer, bow: anyCondition, arrowSet: anyDozen, setup, groups, oneHand, alike, weighed, cared, distance }) => {
    const { form } = setup;
    // Most kit that is shot has no flaw on record and the string that its maker allows, or nearly every set-up would be stopped.
    const bow: Bow = cared
      ? { ...anyCondition, lookOver: null, dryFired: null, lowStretch: 'allowed', mostBoltTurns: null }
      : anyCondition;
    // Nor is one of its numbered arrows much lighter than the set, which would stop it too.
    const least = anyDozen.weighed ?? 0.06;
    const heavy = (mass: number | null) => (mass === null ? null : Math.max(mass, least));
    const sound = anyDozen.arrows.map((arrow) => ({ ...arrow, lookOver: null, mass: heavy(arrow.mass) }));
    const arrowSet = cared ? { ...anyDozen, arrows: sound } : anyDozen;
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
