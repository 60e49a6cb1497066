import fc from 'fast-check';
import {
  ArrowPass,
  ClearanceShot,
  exampleBundle,
  exampleNow,
  Hand,
  NockFit,
  Tear,
  TrialKind,
  type ShotBundle,
  type ShotGroup,
  type Trial,
  type TrialGroups,
} from '../../core/model/index.ts';
import { archerSpread, newTrialPlan, type TrialInput } from '../../core/trials/index.ts';
import { anyMeasure, anyUnits, oneOf } from './anyEquipment.ts';
import { anyPairOf, anyShotBundle, mostlyTrue } from './anyRecords.ts';

const distances = fc.uniqueArray(fc.constantFrom(2, 3, 5, 10, 15, 18, 20, 30), { minLength: 1, maxLength: 6 });

const anyTear: fc.Arbitrary<Tear> = fc.record({
  distance: fc.constantFrom(2, 3, 4),
  across: fc.oneof(
    fc.integer({ min: -90, max: 90 }).map((mm) => mm / 1000),
    anyMeasure('tear'),
  ),
  up: fc.oneof(
    fc.integer({ min: -30, max: 30 }).map((mm) => mm / 1000),
    anyMeasure('tear'),
  ),
  fletching: oneOf(Tear.shape.fletching),
});

/** Mostly alike, as the tears of one bow are. */
const anyTears: fc.Arbitrary<Tear[]> = fc.oneof(
  fc.array(anyTear, { maxLength: 9 }),
  fc
    .tuple(
      anyTear,
      fc.array(fc.tuple(fc.integer({ min: -6, max: 6 }), fc.integer({ min: -6, max: 6 })), { minLength: 3, maxLength: 9 }),
    )
    .map(([tear, about]) =>
      about.map(([dx, dy], i) => ({
        ...tear,
        distance: 2 + (i % 3),
        across: Math.min(0.3, Math.max(-0.3, tear.across + dx / 1000)),
        up: Math.min(0.3, Math.max(-0.3, tear.up + dy / 1000)),
      })),
    ),
);

const anyClearance: fc.Arbitrary<ClearanceShot> = fc.record({
  touched: fc.uniqueArray(oneOf(ClearanceShot.shape.touched.element), { maxLength: 3 }),
  nockTurn: fc.constantFrom(0, 0, 0.03125, 0.0625, -0.03125),
});

/** A trial of a set-up at any stage, its plan as usual or altered, with groups mostly as they should be. */
const anyTrialOf = (bundle: ShotBundle): fc.Arbitrary<TrialInput> =>
  fc
    .record({
      kind: oneOf(TrialKind),
      units: anyUnits,
      usual: mostlyTrue,
      plan: fc.record({
        distances,
        ends: fc.integer({ min: 1, max: 6 }),
        arrows: fc.integer({ min: 1, max: 12 }),
        others: fc.integer({ min: 0, max: 6 }),
        steps: fc.uniqueArray(fc.constantFrom(0.002, 0.004, 0.006, 0.0076, 0.2, 0.21, 0.2159, 0.22), { maxLength: 5 }),
      }),
      pairs: fc.array(anyPairOf(bundle), { minLength: 0, maxLength: 6 }),
      speeds: fc.array(fc.array(anyMeasure('arrowSpeed'), { maxLength: 4 }), { minLength: 6, maxLength: 6 }),
      tears: anyTears,
      clearance: fc.oneof(
        fc.array(anyClearance, { maxLength: 7 }),
        fc.array(fc.constant<ClearanceShot>({ touched: [], nockTurn: 0 }), { maxLength: 7 }),
      ),
      between: fc.constantFrom('', 'a new tab.', 'heavier points'),
      missing: fc.integer({ min: 0, max: 9 }),
      spread: mostlyTrue,
    })
    .map(({ kind, units, usual, plan: own, pairs, speeds, missing, spread, ...rest }): TrialInput => {
      const plan = usual ? newTrialPlan(kind, bundle, units) : own;
      const settings = plan.steps.length === 0 ? [null] : plan.steps;
      const places = plan.distances.flatMap((distance) => settings.map((step) => ({ distance, step }))).slice(0, pairs.length);
      const groups = new Map<string, ShotGroup>();
      const keep = (group: ShotGroup, at: (typeof places)[number], last: number): string => {
        const id = `40000000-0000-4000-8000-${String(last).padStart(12, '0')}`;
        const fletching = kind === 'a against b' ? 'fletched' : group.fletching;
        groups.set(id, {
          ...group,
          id,
          fletching,
          context: { ...group.context, distance: at.distance, weather: '', light: '', kit: '' },
        });
        return id;
      };
      const shot = places.flatMap((at, i): TrialGroups[] => {
        const [first, second] = pairs[i] ?? [];
        if (first === undefined || second === undefined) return [];
        const bare = missing !== i && (kind === 'bare shaft' || kind === 'a against b' || plan.others > 0);
        return [
          { ...at, first: keep(first, at, 2 * i), second: bare ? keep(second, at, 2 * i + 1) : null, speeds: speeds[i] ?? [] },
        ];
      });
      const trial: Trial = {
        id: '40000000-0000-4000-8000-999999999999',
        revision: 0,
        born: exampleNow,
        archivedAt: null,
        kind: 'trial',
        setupId: bundle.setup.id,
        trial: kind,
        name: 'Any trial',
        cautionsRead: exampleNow,
        changes: [],
        ended: null,
        note: '',
        ...rest,
        plan,
        groups: shot,
      };
      const known = spread ? archerSpread(bundle.groups, plan.distances[0] ?? 18, units) : null;
      return { trial, bundle, groups, units, now: exampleNow, spread: known };
    });

/** The example's bow in good order, for either hand and off rest, shelf or hand, so that most trials come to be read. */
const soundBundle: fc.Arbitrary<ShotBundle> = fc
  .record({
    hand: oneOf(Hand),
    pass: oneOf(ArrowPass),
    kind: fc.constantFrom('take-down recurve', 'take-down recurve', 'flatbow', 'compound'),
    nockingPoint: fc.option(fc.constantFrom(0.004, 0.006, 0.009), { freq: 4 }),
    buttonTurns: fc.option(fc.constantFrom(0, 3, 20), { freq: 4 }),
    centreShot: fc.option(fc.constantFrom(0, 0.002), { freq: 4 }),
    nockFit: fc.option(oneOf(NockFit), { freq: 3 }),
    arrowsKnown: fc.boolean(),
  })
  .map(({ hand, pass, kind, arrowsKnown, ...settings }): ShotBundle => {
    const { archer, bow, arrowSet, setup, groups } = exampleBundle;
    return {
      archer: { ...archer, hand },
      bow: { ...bow, hand, arrowPass: pass, bowKind: kind },
      arrowSet: { ...arrowSet, diameter: arrowsKnown ? arrowSet.diameter : null },
      setup: { ...setup, settings: { ...setup.settings, ...settings } },
      groups,
    };
  });

/** A set-up and a trial of it. */
export const anyTrial: fc.Arbitrary<TrialInput> = fc
  .oneof({ weight: 1, arbitrary: anyShotBundle }, { weight: 3, arbitrary: soundBundle })
  .chain(anyTrialOf);
