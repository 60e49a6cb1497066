import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forceDrawOf } from '../../core/bow/index.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import type { ForceReading } from '../../core/model/readings.ts';
import { inch, poundForce as lb } from '../../core/units/exact.ts';
import { forceDrawData, forceDrawDataOf, type ForceDrawData } from '../../renderer/plots/forceDraw/data.ts';
import { forceAt, forceDrawMarks } from '../../renderer/plots/forceDraw/marks.ts';
import { headline, note, saidAt, sentence } from '../../renderer/plots/forceDraw/words.ts';
import { expectApart, textsOf } from './labelsApart.ts';

const inches = defaultPreferences.units;
const metric: UnitChoice = { ...inches, length: 'cm', weight: 'kg', mass: 'g', speed: 'm/s' };
const newtons: UnitChoice = { ...inches, length: 'mm', weight: 'N' };
const widths = [200, 240, 320, 400, 560, 800];

const read = (pairs: readonly (readonly [drawIn: number, forceLb: number])[], way: ForceReading['way'] = 'draw') =>
  pairs.map(([draw, force]): ForceReading => ({ draw: draw * inch, force: force * lb, way }));

const steady = read([
  [12, 5],
  [14, 11],
  [16, 15.5],
  [18, 19],
  [20, 22],
  [22, 24.8],
  [24, 27.5],
  [26, 30.3],
  [27.5, 32.5],
]);
const stacking = read([
  [12, 5],
  [14, 9.5],
  [16, 13],
  [18, 16],
  [20, 18.5],
  [22, 21],
  [24, 24],
  [25, 26.4],
  [26, 29.6],
  [27, 34],
  [27.5, 37],
]);
const back = read(
  [
    [14, 9.5],
    [18, 17],
    [22, 22.6],
    [26, 28],
  ],
  'let-down',
);

const withReadings = (forceDraw: ForceReading[]): Bundle => ({
  ...exampleBundle,
  bow: { ...exampleBundle.bow, forceDraw },
  setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, weightOnFingers: null } },
});
function dataOf(bundle: Bundle): ForceDrawData {
  const curve = forceDrawOf(bundle);
  if (!curve.ok) throw new Error(curve.problem.sentence);
  return forceDrawData(curve.value, bundle.bow.forceDraw);
}
const named = {
  steady: dataOf(withReadings(steady)),
  stacking: dataOf(withReadings(stacking)),
  'with the way back': dataOf(withReadings([...steady, ...back])),
  'falling once': dataOf(
    withReadings(
      read([
        [12, 5],
        [16, 15],
        [18, 13],
        [20, 22],
        [24, 27],
        [26, 30],
        [27.5, 32],
      ]),
    ),
  ),
  'from the fingers': dataOf(exampleBundle),
  'from the mark': dataOf(withReadings([])),
};
const cases = Object.entries(named);

describe('The plot of force against draw', () => {
  it('lets no two texts touch and keeps them inside, at every width and in every unit', () => {
    expect(cases.length).toBeGreaterThan(5);
    for (const [name, data] of cases) {
      for (const width of widths) {
        for (const units of [inches, metric, newtons]) {
          const marks = forceDrawMarks(data, width, units);
          const all = [...marks.labels, ...textsOf(marks.across), ...textsOf(marks.up)];
          expectApart(all, width, marks.height, `${name} at ${width} px in ${units.length}`);
        }
      }
    }
  });

  it('does so for any readings that a scale could give', () => {
    const pairs = fc
      .array(fc.tuple(fc.integer({ min: 10, max: 30 }), fc.double({ min: 2, max: 60, noNaN: true })), {
        minLength: 0,
        maxLength: 25,
      })
      .map((list) =>
        list.map(([draw, force], i): ForceReading => ({
          draw: draw * inch,
          force: force * lb,
          way: i % 4 === 3 ? 'let-down' : 'draw',
        })),
      );
    let drawn = 0;
    fc.assert(
      fc.property(pairs, fc.constantFrom(...widths), (readings, width) => {
        const bundle = withReadings(readings);
        const curve = forceDrawOf(bundle);
        if (!curve.ok) return;
        drawn++;
        const marks = forceDrawMarks(forceDrawData(curve.value, readings), width, inches);
        const all = [...marks.labels, ...textsOf(marks.across), ...textsOf(marks.up)];
        expectApart(all, width, marks.height, JSON.stringify(readings));
        expect([marks.curve, marks.beyond, marks.energy, marks.lost ?? '', marks.letDown ?? ''].join('')).not.toMatch(
          /NaN|Infinity/,
        );
      }),
      { numRuns: 150, seed: 13 },
    );
    expect(drawn).toBeGreaterThan(100);
  });

  it('is drawn to the deepest reading while no draw length is on record, and says so', () => {
    const bundle = withReadings([...steady, ...back]);
    const nobody = { ...bundle, archer: { ...bundle.archer, drawLength: null } };
    const data = forceDrawDataOf(nobody, inches);
    if (!data.ok) throw new Error(data.problem.sentence);
    expect(data.value.full).toBeCloseTo(27.5 * inch, 12);
    expect(note(data.value, inches)).toMatch(/ To the deepest reading, 27 1\/2 in: enter a draw length\.$/);
    expect(sentence(data.value, inches)).toContain('32.5 lb on the scale at 27 1/2 in');
    expect(forceDrawMarks(data.value, 320, inches).labels.map(({ text }) => text)).toContain('on the scale');
    // The same bow at an archer's draw of that much stores as much.
    const somebody = forceDrawDataOf({ ...bundle, archer: { ...bundle.archer, drawLength: 27.5 * inch } }, inches);
    expect(somebody.ok && somebody.value.energy).toEqual(data.value.energy);
  });

  it('tells of a compound how far it lets off, and from which peak', () => {
    const cams = withReadings(
      read([
        [14, 30],
        [18, 50],
        [24, 50],
        [27.5, 12],
      ]),
    );
    const data = dataOf({ ...cams, bow: { ...cams.bow, bowKind: 'compound' } });
    expect(note(data, inches)).toMatch(/^[\d.]+ lb less over the last 2 in, from a peak of 5\d(\.\d)? lb\.$/);
  });

  it('asks for the draw length where too little was read to draw anything', () => {
    const nobody = withReadings(steady.slice(0, 1));
    const data = forceDrawDataOf({ ...nobody, archer: { ...nobody.archer, drawLength: null } }, inches);
    expect(!data.ok && data.problem.field).toBe('drawLength');
  });

  it('names the weight, the energy and where it stacks wherever there is room', () => {
    for (const [name, data] of cases) {
      for (const width of widths.filter((one) => one >= 240)) {
        const texts = forceDrawMarks(data, width, inches).labels.map(({ text }) => text);
        expect(
          texts.some((text) => / lb$/.test(text)),
          `${name}, ${width}: weight in ${texts.join('; ')}`,
        ).toBe(true);
        expect(
          texts.some((text) => / J$/.test(text)),
          `${name}, ${width}: energy in ${texts.join('; ')}`,
        ).toBe(true);
        if (data.stacksFrom !== null) expect(texts, `${name}, ${width}`).toContain('stacks');
      }
    }
    expect(named.stacking.stacksFrom).not.toBeNull();
  });

  it('keeps its texts off the curve', () => {
    for (const [name, data] of cases) {
      for (const width of widths) {
        const marks = forceDrawMarks(data, width, inches);
        const points = data.samples.map(({ draw, value }) => ({ x: marks.x(draw), y: marks.y(value) }));
        const crossed = marks.labels.filter(({ box }) =>
          points.some(({ x, y }) => box.left < x && x < box.right && box.top < y && y < box.bottom),
        );
        expect(
          crossed.map(({ text }) => text),
          `${name} at ${width}`,
        ).toEqual([]);
      }
    }
  });

  it('draws a band where the curve is an estimate, and none where it was read every two inches', () => {
    expect(forceDrawMarks(named['from the mark'], 400, inches).band).not.toBeNull();
    expect(forceDrawMarks(named.steady, 400, inches).band).toBeNull();
  });

  it('puts a dot on every reading and marks the flagged ones', () => {
    const dots = forceDrawMarks(named['falling once'], 400, inches).dots;
    expect(dots).toHaveLength(7);
    expect(dots.some(({ kind, why }) => kind === 'flagged' && why !== null && why.length > 20)).toBe(true);
    const both = forceDrawMarks(named['with the way back'], 400, inches);
    expect(both.dots.filter(({ kind }) => kind === 'let down')).toHaveLength(back.length);
    expect(both.lost).not.toBeNull();
  });

  it('says what was found', () => {
    expect(headline(named.steady, inches)).toMatch(/^\d\d\.\d J stored, no stacking$/);
    expect(headline(named.stacking, inches)).toMatch(/ J stored; stacks from 2\d/);
    expect(headline(named['from the mark'], inches)).toMatch(/^About \d\d(\.\d)? J stored$/);
    expect(note(named.steady, inches)).toMatch(/^\d\.\d lb in the last 2 in, /);
    expect(note(named['with the way back'], inches)).toMatch(/the bow keeps \d+(\.\d)? J, \d+ %/);
    expect(note(named['from the mark'], inches)).toMatch(/from the marked weight and the kind of bow/);
    expect(sentence(named['falling once'], inches)).toMatch(/of 7 readings are flagged\.$/);
  });

  it('reads between its samples in a straight line, and stores all of it at full draw', () => {
    const { samples, full, energy } = named.steady;
    const [a, b] = [samples[20], samples[21]];
    if (a === undefined || b === undefined) throw new Error('too few samples');
    expect(forceAt(samples, (a.draw + b.draw) / 2)).toBeCloseTo((a.value + b.value) / 2, 9);
    // The area of 60 chords against the core's exact one: within 0.2 %.
    const said = saidAt(named.steady, full, { ...inches }).figures[2] ?? '';
    expect(Math.abs(Number.parseFloat(said) / energy.value - 1)).toBeLessThan(0.003);
  });
});
