import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { touches } from '../../renderer/plots/boxes.ts';
import { energyParts, sampleAt, type StrokeData, type StrokeSample } from '../../renderer/plots/strokeTime/data.ts';
import { strokeMarks, type StrokeMarks } from '../../renderer/plots/strokeTime/marks.ts';
import { besideIt, headline, note, saidAt, table } from '../../renderer/plots/strokeTime/words.ts';
import { expectApart, textsOf } from './labelsApart.ts';

const inches = defaultPreferences.units;
const metric: UnitChoice = { ...inches, length: 'cm', weight: 'N', mass: 'g', speed: 'm/s' };
const widths = [200, 240, 320, 400, 460, 640, 800];

interface Given {
  readonly time: number;
  readonly speed: number;
  readonly tension: number;
  readonly work: number;
  /** Weights of the five parts at the exit. */
  readonly parts: readonly number[];
  readonly simple: { readonly time: number; readonly speed: number };
}

/** A stroke of plain shapes: what is drawn is tried here, not the physics. */
function stroke({ time, speed, tension, work, parts, simple }: Given): StrokeData {
  const sum = parts.reduce((a, b) => a + b, 0);
  const samples = Array.from({ length: 121 }, (_, i): StrokeSample => {
    const s = i / 120;
    const at = Object.fromEntries(energyParts.map((part, k) => [part, (work * s * s * (parts[k] ?? 0)) / sum]));
    const energy = { ...at, stored: (at['stored'] ?? 0) + work * (1 - s * s) } as StrokeSample['energy'];
    return {
      time: time * s,
      speed: speed * s,
      thrust: 0.2 * tension * Math.sin(Math.PI * s),
      tension: tension * (0.3 + 0.7 * s ** 6),
      energy,
    };
  });
  const efficiency = (parts[0] ?? 0) / sum;
  return {
    samples,
    exit: { time, u: 0.21, speed, tension, efficiency, virtualMass: 0.0055 },
    work,
    braceTension: tension / 3,
    simple: { ...simple, virtualMass: 0.006 },
    assumed: [],
    changes: [],
  };
}

const usual = stroke({
  time: 0.0162,
  speed: 59.2,
  tension: 740,
  work: 47.6,
  parts: [38.6, 3.8, 1.1, 2.2, 1.9],
  simple: { time: 0.0134, speed: 58.8 },
});
const all = (marks: StrokeMarks) => [
  ...marks.labels,
  ...textsOf(marks.across),
  ...marks.lanes.flatMap((lane) => textsOf(lane.up)),
];

const any: fc.Arbitrary<Given> = fc.record({
  time: fc.double({ min: 0.008, max: 0.04, noNaN: true }),
  speed: fc.double({ min: 20, max: 90, noNaN: true }),
  tension: fc.double({ min: 100, max: 2500, noNaN: true }),
  work: fc.double({ min: 5, max: 120, noNaN: true }),
  parts: fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 }),
  simple: fc.record({
    time: fc.double({ min: 0.008, max: 0.04, noNaN: true }),
    speed: fc.double({ min: 20, max: 90, noNaN: true }),
  }),
});

describe('The plot of the stroke against time', () => {
  it('lets no two texts touch and keeps them inside, for any stroke at any width', () => {
    fc.assert(
      fc.property(any, fc.constantFrom(...widths), fc.constantFrom(inches, metric), (given, width, units) => {
        const marks = strokeMarks(stroke(given), width, units);
        expectApart(all(marks), width, marks.height, `${width} px`);
        expect([marks.tension, marks.thrust, marks.speed, ...marks.energy.map(({ area }) => area)].join('')).not.toMatch(
          /NaN|Infinity/,
        );
      }),
      { numRuns: 300, seed: 13 },
    );
  });

  it('stacks the energy so that its parts fill their lane from nothing to all that was stored', () => {
    const marks = strokeMarks(usual, 640, inches);
    const lane = marks.lanes[3];
    if (lane === undefined) throw new Error('no lane of energy');
    const top = marks.energy.at(-1)?.edge ?? '';
    const heights = [...top.matchAll(/[ML][\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));
    expect(heights).toHaveLength(121);
    for (const height of heights) expect(height).toBeCloseTo(lane.y(usual.work), 1);
  });

  it('names both forces, the speed and every part that a tenth of a joule is in, at the ends of their curves', () => {
    const texts = strokeMarks(usual, 640, inches).labels.map(({ text }) => text);
    for (const expected of [
      /^166 lb$/,
      /^thrust on the arrow$/,
      /^tension of the string$/,
      /^194 ft\/s$/,
      /^arrow, 38\.6 J$/,
      /^limbs/,
      /^string, 3\.8 J/,
      /^lost/,
    ]) {
      expect(
        texts.some((text) => expected.test(text)),
        `${expected} in ${texts.join('; ')}`,
      ).toBe(true);
    }
    const narrow = strokeMarks(usual, 240, inches).labels.map(({ text }) => text);
    expect(narrow).toEqual(expect.arrayContaining(['166 lb', 'arrow', 'string', 'leaves after 16.2 ms']));
  });

  it('gives the lanes one time and does not let them lie over one another', () => {
    const marks = strokeMarks(usual, 400, inches);
    expect(marks.lanes).toHaveLength(4);
    const boxes = marks.lanes.map(({ top, bottom }) => ({ left: 0, right: 1, top, bottom }));
    for (const [i, a] of boxes.entries()) for (const b of boxes.slice(i + 1)) expect(touches(a, b)).toBe(false);
    expect(marks.exit).toBeCloseTo(marks.x(usual.exit.time), 9);
  });

  it('says what reaches the arrow, and what the model cannot', () => {
    expect(headline(usual)).toBe('81 % of the energy goes with the arrow');
    expect(note(usual, inches)).toMatch(
      /^Leaves after 16\.2 ms at 194 ft\/s\. .*rigid limbs on a hinge.*tension near brace is too high\.$/,
    );
    expect(besideIt(usual, metric)).toMatch(/6 g, gives 13\.4 ms and 58\.8 m\/s: a time 17 % shorter\.$/);
    expect(saidAt(usual, 0.0162, metric).figures).toContain('59.2 m/s');
    expect(sampleAt([], 0)).toBeNull();
  });

  it('writes every moment out, energies that sum to what was stored', () => {
    const { columns, rows } = table(usual, metric);
    expect(columns.slice(0, 2)).toEqual(['time (ms)', 'thrust (N)']);
    expect(rows).toHaveLength(121);
    for (const row of rows) {
      const sum = row.slice(4).reduce<number>((a, b) => a + Number(b), 0);
      expect(sum).toBeCloseTo(usual.work, 2);
    }
  });
});
