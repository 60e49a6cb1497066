import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingModes, buildArrow, spineOf } from '../../core/arrow/index.ts';
import {
  drawSentence,
  forceDrawOf,
  speedByMass,
  stringFigures,
  strokeChanges,
  strokeOfSetup,
  virtualMassOf,
} from '../../core/bow/index.ts';
import { bestMatched, setStatistics, spreadAtTarget } from '../../core/dozen/index.ts';
import { allFindings } from '../../core/findings/index.ts';
import { exampleNow, type Bundle, type Result, type UnitChoice } from '../../core/model/index.ts';
import { standingStops } from '../../core/safety/index.ts';
import { suitability, whatWouldCentre } from '../../core/suitability/index.ts';
import { readTable, tableTold } from '../../core/tables/index.ts';
import { anyShotBundle, anyUnits } from './anyRecords.ts';
import { wrongIn, wrongSentence } from './plainText.ts';
import { mirroredBundle } from './trials/build.ts';

type Answers = Readonly<Record<string, Result<unknown>>>;

/** Everything that Bow and Arrow show of a set-up, but the findings. */
const answersOf = (bundle: Bundle, units: UnitChoice): Answers => ({
  forceDraw: forceDrawOf(bundle, units),
  virtualMass: virtualMassOf(bundle, units),
  string: stringFigures(bundle),
  spine: spineOf(bundle.arrowSet),
  build: buildArrow(bundle.arrowSet, units),
  modes: bendingModes(bundle.arrowSet),
  statistics: setStatistics(bundle.arrowSet, units),
  best: bestMatched(bundle.arrowSet, 3),
  spread: spreadAtTarget(bundle, 30),
  suitability: suitability({ ...bundle, settings: bundle.setup.settings }),
  moves: whatWouldCentre(bundle, units),
});
const strokesOf = (bundle: Bundle, units: UnitChoice): Answers => ({
  stroke: strokeOfSetup(bundle, units),
  changes: strokeChanges(bundle),
});

/** Bands that are not in order: low, value, high. */
function disorder(found: unknown, path: string): string[] {
  if (found === null || typeof found !== 'object') return [];
  const { value, low, high } = found as Record<string, unknown>;
  // The margin and the little rules of findings hold limits and no band under these names.
  const band = [value, low, high].every((end) => typeof end === 'number') && !('needed' in found) && !('lowText' in found);
  const [v, l, h] = [value, low, high] as [number, number, number];
  const slack = 1e-9 * Math.abs(v);
  const own = band && !(l <= v + slack && v <= h + slack) ? [`${path}: ${l}, ${v}, ${h}`] : [];
  return [...own, ...Object.entries(found).flatMap(([key, part]) => disorder(part, `${path}.${key}`))];
}

function soundAnswers(answers: Answers, count: Map<string, number>): void {
  for (const [what, answer] of Object.entries(answers)) {
    expect([...wrongIn(answer, what), ...disorder(answer, what)]).toEqual([]);
    if (answer.ok) count.set(what, (count.get(what) ?? 0) + 1);
    else expect(wrongSentence(answer.problem.sentence)).toEqual([]);
  }
}

/** Every number inside, in order; functions and texts are left out. */
const numbersIn = (found: unknown): number[] =>
  typeof found === 'number'
    ? [found]
    : found === null || typeof found !== 'object'
      ? []
      : Object.values(found).flatMap(numbersIn);

const inches: UnitChoice = {
  length: 'in',
  setting: 'mm',
  weight: 'lb',
  mass: 'gr',
  distance: 'm',
  speed: 'ft/s',
  deflection: 'in',
};
const metric: UnitChoice = {
  length: 'cm',
  setting: 'mm',
  weight: 'N',
  mass: 'g',
  distance: 'm',
  speed: 'm/s',
  deflection: 'mm',
};
const draws = [0.1, 0.25, 0.4, 0.55, 0.7, 0.85, 1.05];

describe('Bow and Arrow, on any records that the notebook would take', () => {
  it('compute no number that is none, no band out of order and no sentence that is none', () => {
    const count = new Map<string, number>();
    fc.assert(
      fc.property(anyShotBundle, anyUnits, (bundle, units) => soundAnswers(answersOf(bundle, units), count)),
      { numRuns: 200 },
    );
    fc.assert(
      fc.property(anyShotBundle, anyUnits, (bundle, units) => soundAnswers(strokesOf(bundle, units), count)),
      { numRuns: 150 },
    );
    for (const what of [
      'forceDraw',
      'virtualMass',
      'string',
      'build',
      'modes',
      'statistics',
      'best',
      'spread',
      'stroke',
      'changes',
    ])
      expect(count.get(what) ?? 0, what).toBeGreaterThan(5);
  });

  it('draw a curve without a force or an energy below nought, at any draw, rising where no reading falls', () => {
    let curves = 0;
    fc.assert(
      fc.property(anyShotBundle, anyUnits, (bundle, units) => {
        const drawn = forceDrawOf(bundle, units);
        if (!drawn.ok) return;
        curves++;
        const { force, slope, energy, weight, flags } = drawn.value;
        const forces = draws.map(force);
        expect(wrongIn(forces, 'force')).toEqual([]);
        expect(disorder(forces, 'force')).toEqual([]);
        for (const { low } of [...forces, energy, weight]) expect(low).toBeGreaterThanOrEqual(0);
        expect(wrongSentence(drawSentence(drawn.value, units))).toEqual([]);
        expect(draws.map(slope).every(Number.isFinite)).toBe(true);
        if (bundle.bow.bowKind !== 'compound' && !flags.some(({ code }) => code === 'not rising'))
          expect(Math.min(...draws.map(slope))).toBeGreaterThan(-1e-6);
      }),
      { numRuns: 200 },
    );
    expect(curves).toBeGreaterThan(60);
  });

  it('shoot a heavier arrow slower, always, and never below nought', () => {
    let told = 0;
    fc.assert(
      fc.property(anyShotBundle, (bundle) => {
        const speeds = speedByMass(bundle);
        if (!speeds.ok) return;
        let before = Infinity;
        for (const mass of [0.006, 0.012, 0.02, 0.0201, 0.03, 0.06, 0.09]) {
          const speed = speeds.value(mass);
          if (!speed.ok) continue;
          told++;
          expect(disorder(speed, 'speed')).toEqual([]);
          expect(speed.value.low).toBeGreaterThanOrEqual(0);
          expect(speed.value.value).toBeLessThan(before);
          before = speed.value.value;
        }
      }),
      { numRuns: 200 },
    );
    expect(told).toBeGreaterThan(400);
  });

  it('are the same for either hand and in every unit, but for the words', () => {
    fc.assert(
      fc.property(anyShotBundle, (bundle) => {
        const [here, there] = [answersOf(bundle, inches), answersOf(bundle, metric)];
        const mirror = answersOf({ ...bundle, ...mirroredBundle(bundle) }, inches);
        for (const what of Object.keys(here)) {
          expect(numbersIn(there[what]), what).toEqual(numbersIn(here[what]));
          expect(numbersIn(mirror[what]), what).toEqual(numbersIn(here[what]));
        }
        expect(standingStops({ ...bundle, ...mirroredBundle(bundle) })).toEqual(standingStops(bundle));
      }),
      { numRuns: 80 },
    );
  });

  it('put every finding in a title that fits a line of the column', () => {
    fc.assert(
      fc.property(anyShotBundle, anyUnits, (bundle, units) => {
        const titles = allFindings(bundle, { units, now: exampleNow }).map(({ title }) => title);
        expect(titles.filter((title) => title.length > 60)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });

  it('read any pasted text for a table, telling what became of every line', () => {
    const cell = fc.oneof(
      fc.double({ min: -5, max: 200, noNaN: true }).map((x) => x.toFixed(2)),
      fc.constantFrom(
        '12,5',
        '1,234',
        '28 1/4 in',
        '3/4',
        'NaN',
        'Infinity',
        '1e400',
        '-0',
        'draw (in)',
        'force',
        '"',
        '',
        'lb',
        '…',
      ),
      fc.string({ maxLength: 8 }),
    );
    const text = fc
      .array(fc.tuple(fc.array(cell, { maxLength: 4 }), fc.constantFrom('\t', ';', ',', '  ', ' ')), { maxLength: 8 })
      .map((lines) => lines.map(([cells, separator]) => cells.join(separator)).join('\n'));
    const columns = [
      { name: 'draw', measure: 'readingDraw' },
      { name: 'force', measure: 'readingForce', optional: true },
    ] as const;
    let taken = 0;
    fc.assert(
      fc.property(text, anyUnits, (pasted, units) => {
        const read = readTable(pasted, columns, units);
        taken += read.taken;
        expect(read.rows.flatMap(({ values }) => values).every((value) => value === null || Number.isFinite(value))).toBe(true);
        expect(read.rows.filter(({ fate }) => fate === 'taken').length).toBe(read.taken);
        expect(read.rows.filter(({ fate, why }) => fate === 'left out' && why === null)).toEqual([]);
        for (const { why } of read.rows) if (why !== null) expect(wrongSentence(why)).toEqual([]);
        expect(wrongSentence(tableTold(read))).toEqual([]);
      }),
      { numRuns: 300 },
    );
    expect(taken).toBeGreaterThan(8);
  });
});
