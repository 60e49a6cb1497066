import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aimPlan, holdTable, launchBand, type AimInput } from '../../core/aim/index.ts';
import { arrowMass } from '../../core/arrow/index.ts';
import { setupSpeed } from '../../core/bow/index.ts';
import {
  benchFigures,
  compareHeadline,
  compareSetups,
  diffSnapshots,
  frozenFigures,
  type Figure,
} from '../../core/compare/index.ts';
import { allFindings, dependentsStopped, overshootFinding, shootingStops, stopsOf } from '../../core/findings/index.ts';
import { airDensity, dragBand } from '../../core/flight/index.ts';
import { BenchRecord, exampleNow, ShownFigure, type ShotBundle, type UnitChoice } from '../../core/model/index.ts';
import { suitability, whatWouldCentre } from '../../core/suitability/index.ts';
import { readBareShaft, readTwoGroups, type NextStep, type Reading } from '../../core/trials/index.ts';
import { anyPairOf, anyShotBundle, anyUnits } from './anyRecords.ts';
import { everyText, wrongIn, wrongSentence, wrongTitle } from './plainText.ts';
import { sentences, sound, titles } from './sound.ts';
import { expectSoundMarks } from './soundMarks.ts';
import { mirroredBundle, mirroredGroup } from './trials/build.ts';

function soundStep(step: NextStep): void {
  titles(step.title, step.why.title);
  sentences(step.text, step.then, step.caution, step.why.text);
  expect([step.title, step.text].every((text) => text !== '')).toBe(true);
}

function expectSoundReading(reading: Reading): void {
  sound('reading', reading);
  titles(reading.headline, reading.why.title, ...reading.causes.map(({ cause }) => cause));
  sentences(reading.subline, reading.why.text, reading.problem?.sentence ?? null);
  sentences(...reading.differences.map(({ sentence }) => sentence));
  sentences(...reading.causes.flatMap(({ evidenceFor, evidenceAgainst }) => [...evidenceFor, ...evidenceAgainst]));
  for (const step of [reading.next, ...reading.others]) soundStep(step);
}

const swapSides = (text: string) =>
  text.replace(/\b(left|right)\b/gi, (side) => ({ left: 'right', right: 'left', Left: 'Right', Right: 'Left' })[side] ?? side);
/** All that a reading says of this archer; what opens behind Why speaks of both hands. */
const told = ({ headline, subline, differences, causes, next, others }: Reading): string[] =>
  everyText([headline, subline, differences, causes, ...[next, ...others].map(({ why: _why, ...step }) => step)]);

/** The others show what the bow's screen shows. */
const screens = ['bow', 'groups', 'aim'] as const;

function expectSoundFindings(bundle: ShotBundle, units: UnitChoice): void {
  const reach = { value: 190, low: 170, high: 210 };
  for (const screen of screens) {
    const findings = allFindings(bundle, { units, now: exampleNow, screen, reach, farthest: 70 });
    sound('findings', findings);
    for (const { title, detail, why, short } of findings) {
      titles(title, short.word);
      sentences(detail, why?.text ?? null);
    }
    expect(dependentsStopped(findings)).toBe(stopsOf(bundle, units).length > 0);
    const stopped = findings.filter(({ level }) => level === 'stop').map(({ id }) => id);
    expect(shootingStops(bundle, units).map(({ id }) => id)).toEqual(stopped);
  }
  sound('overshoot', overshootFinding(null, 0, units));
}

function expectSoundFlight(bundle: ShotBundle, units: UnitChoice): void {
  const { setup, arrowSet, groups } = bundle;
  const speed = setupSpeed(bundle);
  const mass = arrowMass(arrowSet);
  sound('speed', speed);
  sound('mass', mass);
  if (!speed.ok || !mass.ok) return sentences(!speed.ok ? speed.problem.sentence : null, !mass.ok ? mass.problem.sentence : null);
  const input: AimInput = {
    speed: speed.value,
    mass: mass.value.mass,
    diameter: arrowSet.diameter ?? 0.006,
    airDensity: airDensity(),
    eyeHeight: setup.form.eyeHeight ?? 0.1,
    targetDrop: 0.3,
    arrowLength: arrowSet.length ?? 0.71,
    distances: [18, 30, ...groups.map(({ context }) => context.distance)],
    setFor: groups[0]?.context.distance ?? 30,
  };
  const plan = aimPlan(input);
  sound('aim', plan);
  const launches = launchBand(input.speed, dragBand(input.diameter, input.mass, input.airDensity), input.eyeHeight, 0.3);
  const holds = holdTable(launches, input.arrowLength + 0.02, input.distances, 1.6);
  sound('holds', holds);
  for (const part of [plan.ok ? plan.value.pointOn : plan, holds]) if (!part.ok) sentences(part.problem.sentence);
  expectSoundMarks(bundle, units);
}

function expectSoundSuitability(bundle: ShotBundle, units: UnitChoice): void {
  const answer = suitability({ ...bundle, settings: bundle.setup.settings });
  sound('suitability', answer);
  if (!answer.ok) return sentences(answer.problem.sentence);
  const { why, rule, cycles } = answer.value;
  sentences(why, rule.applies ? null : rule.why, cycles.applies ? null : cycles.why);
  const moves = whatWouldCentre(bundle, units);
  sound('moves', moves);
  if (!moves.ok) return sentences(moves.problem.sentence);
  for (const { cost, stopped } of moves.value) sentences(cost, stopped);
}

function expectSoundComparison(one: ShotBundle, other: ShotBundle, units: UnitChoice): void {
  const rows = compareSetups(one, other);
  sound('rows', rows);
  // What cannot be told says what would tell it; what can be told has a remark without a stop.
  for (const { verdict, note } of rows)
    if (verdict === 'unknown') sentences(note === '' ? 'an empty note' : note);
    else titles(note);
  const headline = compareHeadline(rows, one, other, units);
  sound('headline', headline);
  titles(headline);
  const figures = benchFigures(one, units);
  sound('figures', figures);
  for (const { value, note } of figures) if (value === null) sentences(note === '' ? 'an empty note' : note);
  const frozen = frozenFigures(one);
  expect(frozen.map(({ key, value }) => [key, value])).toEqual(figures.map(({ key, value }) => [key, value]));
  for (const figure of frozen) expect(ShownFigure.parse(figure)).toEqual(figure);
  const mirror = benchFigures({ ...one, ...mirroredBundle(one), groups: one.groups.map(mirroredGroup) }, units);
  const turned = ({ key, value }: Figure) => [key, key === 'bareSide' && value !== null ? 0 - value : value];
  expect(mirror.map(turned)).toEqual(figures.map(({ key, value }) => [key, value]));
  const { differ, same } = diffSnapshots(one, other, units);
  sound('diff', differ);
  expect(same).toBeGreaterThanOrEqual(0);
}

describe('the whole core, on any records that the notebook would take', () => {
  it('would notice a number that is none, a value that is missing and a text nobody should read', () => {
    const planted = {
      a: Number.NaN,
      b: [1, undefined],
      c: 'null mm',
      d: 'at \u22120 mm',
      e: { f: -Infinity },
      g: 'Stop..',
      h: 'is safe',
    };
    expect(wrongIn(planted, 'it').map((wrong) => wrong.split(' ')[0])).toEqual([
      'it.a',
      'it.b.1',
      'it.c',
      'it.d',
      'it.e.f',
      'it.g',
      'it.h',
    ]);
    expect(wrongIn({ a: 0, b: null, c: '\u22120.5 mm', d: 'Arrow too short', e: ['10 to 0', true] }, 'it')).toEqual([]);
    expect(
      [wrongSentence('no capital.'), wrongSentence('No stop'), wrongSentence('12 mm low.')].map(({ length }) => length),
    ).toEqual([1, 1, 0]);
    expect([wrongTitle('A stop.'), wrongTitle('A title')].map(({ length }) => length)).toEqual([1, 0]);
  });

  it('draws records that pass their schema, and that reach every room', () => {
    const seen = { stopped: 0, read: 0, erratic: 0, suits: 0, flown: 0, stiff: 0, high: 0, changes: new Set<string>() };
    fc.assert(
      fc.property(
        anyShotBundle.chain((bundle) => fc.tuple(fc.constant(bundle), anyPairOf(bundle), anyUnits)),
        ([bundle, [fletched, bare], units]) => {
          for (const record of [bundle.archer, bundle.bow, bundle.arrowSet, bundle.setup, ...bundle.groups, fletched, bare])
            expect(BenchRecord.parse(record)).toEqual(record);
          const reading = readBareShaft(bundle, fletched, bare, units);
          seen.stopped += Number(stopsOf(bundle, units).length > 0);
          seen.read += Number(reading.shift !== null);
          seen.erratic += Number(reading.erratic);
          seen.stiff += Number(reading.lateral !== null);
          seen.high += Number(reading.vertical !== null);
          seen.changes.add(reading.next.kind);
          seen.suits += Number(suitability({ ...bundle, settings: bundle.setup.settings }).ok);
          seen.flown += Number(setupSpeed(bundle).ok);
        },
      ),
      { numRuns: 600 },
    );
    const { changes, ...counts } = seen;
    for (const [what, times] of Object.entries(counts)) expect(times, what).toBeGreaterThan(2);
    expect([...changes].sort()).toEqual(['again', 'change', 'leave', 'measure', 'shoot', 'stop']);
  });

  it('finds, flies and judges a set-up without a throw, a number that is none, or a sentence that is none', () => {
    fc.assert(
      fc.property(anyShotBundle, anyUnits, (bundle, units) => {
        expectSoundFindings(bundle, units);
        expectSoundSuitability(bundle, units);
        expectSoundFlight(bundle, units);
      }),
      { numRuns: 120 },
    );
  });

  it('reads any two groups, and says why when it cannot', () => {
    fc.assert(
      fc.property(
        anyShotBundle.chain((bundle) => fc.tuple(fc.constant(bundle), anyPairOf(bundle))),
        anyUnits,
        ([bundle, [fletched, bare]], units) => {
          expectSoundReading(readBareShaft(bundle, fletched, bare, units));
          for (const other of [bare, { ...bare, fletching: fletched.fletching }]) {
            const two = readTwoGroups(fletched, other, units);
            sound('two groups', two);
            titles(two.headline, two.why.title);
            sentences(two.subline, two.why.text, two.problem?.sentence ?? null);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('sets any two set-ups side by side, and freezes figures that a snapshot takes', () => {
    fc.assert(
      fc.property(anyShotBundle, anyShotBundle, anyUnits, fc.boolean(), (one, other, units, alike) => {
        // One archer and one bow with other arrows is what a coach compares.
        expectSoundComparison(one, alike ? { ...other, archer: one.archer, bow: one.bow } : other, units);
      }),
      { numRuns: 30 },
    );
  });

  it('reads the mirror image as the mirror image: hands and sides change, and nothing else', () => {
    fc.assert(
      fc.property(
        anyShotBundle.chain((bundle) => fc.tuple(fc.constant(bundle), anyPairOf(bundle))),
        anyUnits,
        ([bundle, [fletched, bare]], units) => {
          const one = readBareShaft(bundle, fletched, bare, units);
          const other = readBareShaft(
            { ...bundle, ...mirroredBundle(bundle) },
            mirroredGroup(fletched),
            mirroredGroup(bare),
            units,
          );
          expect([other.lateral, other.vertical, other.erratic]).toEqual([one.lateral, one.vertical, one.erratic]);
          expect([other.next.kind, other.next.patch]).toEqual([one.next.kind, one.next.patch]);
          expect(told(other).map(swapSides)).toEqual(told(one));
        },
      ),
      { numRuns: 200 },
    );
  });
});
