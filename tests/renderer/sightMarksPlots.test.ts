import { describe, expect, it } from 'vitest';
import { markLineMarks, type MarkLineData } from '../../renderer/plots/markLine/marks.ts';
import { markLineTable } from '../../renderer/plots/markLine/table.ts';
import { sightStripMarks, stripFrame, type SightStripData } from '../../renderer/plots/sightStrip/marks.ts';
import { expectApart, textsOf } from './labelsApart.ts';

/** Places that fall off as a flight's do, some millimetres to the metre. */
const stripOf = (from: number, to: number, reach: number, half = 0.001): SightStripData => ({
  samples: Array.from({ length: to - from + 1 }, (_, i) => {
    const distance = from + i;
    const value = reach * (0.1 / distance + 0.0017 * distance);
    return { distance, place: { value, low: value - half, high: value + half }, weak: distance > 60 };
  }),
  known: [{ distance: 18, place: reach * (0.1 / 18 + 0.0017 * 18) }],
  ends: { upper: null, lower: null },
  distanceUnit: 'm',
});
const drawn = (data: SightStripData) => {
  const marks = sightStripMarks(data);
  if (marks === null) throw new Error('nothing drawn');
  return marks;
};
const cases: readonly (readonly [string, SightStripData])[] = [10, 30].flatMap((from) =>
  [70, 90, 120].flatMap((to) =>
    [0.3, 0.85, 1.5].map((reach) => [`${from} to ${to} m at ${reach} m`, stripOf(from, to, reach)] as const),
  ),
);

describe('The strip on the screen', () => {
  it('is as high as there is room for, and says its size', () => {
    const near = drawn(stripOf(10, 70, 0.85));
    expect(near.size).toBe('true size');
    // 96 pixels to the inch: 20 mm are 75.6.
    expect(near.rule.to - near.rule.from).toBeCloseTo(75.59, 1);
    const far = drawn(stripOf(10, 120, 1.5));
    expect(far.size).not.toBe('true size');
    for (const [, data] of cases) expect(drawn(data).bottom).toBeLessThanOrEqual(stripFrame.most + 2 * stripFrame.edge + 2);
  });

  it('keeps its distances to scale: millimetres between two marks are millimetres on the rule', () => {
    const marks = drawn(stripOf(10, 70, 0.85));
    const at = (text: string) => marks.labels.find((label) => label.text === text)?.y ?? NaN;
    const millimetres = 850 * (0.1 / 60 + 0.0017 * 60 - 0.1 / 30 - 0.0017 * 30);
    expect((at('60') - at('30')) / millimetres).toBeCloseTo(96 / 25.4, 6);
  });

  it.each(cases)('lets no two figures touch: %s', (about, data) => {
    const marks = drawn(data);
    expect(marks.labels.length).toBeGreaterThan(3);
    expectApart([...marks.labels, marks.rule.label], marks.width, marks.height, about);
    const ys = marks.ticks.map(({ y }) => y);
    expect(ys).toEqual(ys.toSorted((a, b) => a - b));
  });

  it('leaves out what lies nearer than the place where the readings turn', () => {
    // 0.1/x + 0.0017 x is least at √(0.1/0.0017) = 7.67.
    const marks = drawn(stripOf(3, 40, 0.85));
    expect(marks.labels.map(({ text }) => text)).not.toContain('5');
    expect(marks.ticks.length).toBeLessThanOrEqual(40 - 8 + 1);
    expect(marks.ticks.length).toBeGreaterThan(28);
  });

  it('opens an interval that leaves the strip, and draws the ends of the bar that lie on it', () => {
    const wide = drawn({ ...stripOf(10, 70, 0.85, 0.02), ends: { upper: 0, lower: 0.1 } });
    expect(wide.intervals[0]?.open).not.toEqual([false, false]);
    expect(wide.ends).toHaveLength(1);
    for (const { low, high } of wide.intervals) {
      expect(low).toBeGreaterThanOrEqual(wide.top);
      expect(high).toBeLessThanOrEqual(wide.bottom);
    }
  });

  it('is none where nothing carries', () => {
    expect(sightStripMarks({ ...stripOf(10, 70, 0.85), samples: [{ distance: 90, place: null, weak: false }] })).toBeNull();
    expect(sightStripMarks({ ...stripOf(10, 70, 0.85), samples: [] })).toBeNull();
  });
});

const lineOf = (factor: number, offs: readonly number[], half: (x: number) => number): MarkLineData => ({
  line: Array.from({ length: 61 }, (_, i) => ({ distance: 10 + i, half: half(10 + i) })),
  known: offs.map((off, i) => ({ distance: 18 + 10 * i, off, fits: Math.abs(off) < 3, counts: i !== 1 })),
  distanceFactor: factor,
  distanceUnit: factor === 1 ? 'm' : 'yd',
  unit: 'mm',
});

describe('The known marks off the line', () => {
  it.each([
    ['small', lineOf(1, [0.2, -0.3, 0.1], () => 0.5)],
    ['one far off', lineOf(0.9144, [0.2, -0.3, 12], (x) => 0.5 + x / 50)],
    ['a band that flares', lineOf(1, [0.2, 0.3], (x) => 0.4 + (x / 30) ** 4)],
    ['none off', lineOf(1, [0, 0], () => 1)],
  ])('are drawn inside the plot, and their figures apart: %s', (about, data) => {
    for (const width of [752, 520, 240]) {
      const marks = markLineMarks(data, width);
      expectApart([...marks.up.map(({ label }) => label), ...textsOf(marks.across)], width, marks.height, `${about} at ${width}`);
      expect(marks.up.length, about).toBeGreaterThan(2);
      for (const { x, y } of marks.dots) {
        expect(x).toBeGreaterThanOrEqual(marks.left);
        expect(x).toBeLessThanOrEqual(marks.right);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(marks.axisY);
      }
      expect(marks.band + marks.edges.join('')).not.toContain('NaN');
    }
  });

  it('stand above the line when they read more', () => {
    const { dots, zero } = markLineMarks(
      lineOf(1, [0.4, -0.4], () => 1),
      520,
    );
    expect(dots[0]?.y).toBeLessThan(zero);
    expect(dots[1]?.y).toBeGreaterThan(zero);
  });

  it('are written out with what they are off by', () => {
    expect(markLineTable(lineOf(1, [0.4, -0.4], () => 1))).toEqual({
      columns: ['distance (m)', 'off the fitted line (mm)', 'fits', 'counts'],
      rows: [
        [18, 0.4, 'yes', 'yes'],
        [28, -0.4, 'yes', 'no'],
      ],
    });
  });
});
