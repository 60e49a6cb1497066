import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { recordHeadline } from '../../renderer/features/record/words.ts';
import type { Compared } from '../../renderer/features/record/selectors.ts';
import { differenceMarks, differenceSize } from '../../renderer/plots/difference/marks.ts';
import { textWidth, type Lettering } from '../../renderer/plots/textWidth.ts';
import { overlayMarks, overlaySize, type OverlayData } from '../../renderer/plots/groupsOverlay/marks.ts';
import { heightsMarks } from '../../renderer/plots/heights/marks.ts';
import { spread } from '../../renderer/plots/spread.ts';
import type { Label, TimelineData } from '../../renderer/plots/timeline/data.ts';
import { timelineMarks } from '../../renderer/plots/timeline/marks.ts';

describe('spreading places along a line', () => {
  it('keeps every place that has room where it is', () => {
    expect(spread([10, 50, 90], 12, 0, 100)).toEqual([10, 50, 90]);
  });

  it('keeps gap, order and bounds for any places that fit', () => {
    const places = fc.array(fc.double({ min: -50, max: 550, noNaN: true }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(places, (from) => {
        const to = spread(from, 12, 0, 500);
        const order = from.map((_, index) => index).sort((a, b) => (from[a] ?? 0) - (from[b] ?? 0) || a - b);
        order.forEach((index, rank) => {
          const at = to[index] ?? Number.NaN;
          expect(at).toBeGreaterThanOrEqual(-1e-9);
          expect(at).toBeLessThanOrEqual(500 + 1e-9);
          if (rank > 0) expect(at - (to[order[rank - 1] ?? 0] ?? 0)).toBeGreaterThanOrEqual(12 - 1e-9);
        });
      }),
    );
  });

  it('moves as little as it can: two on one spot part by half the gap each', () => {
    expect(spread([50, 50], 10, 0, 100)).toEqual([45, 55]);
  });

  it('closes the gap where there is no room for it', () => {
    expect(spread([1, 1, 1], 100, 0, 10)).toEqual([0, 5, 10]);
  });
});

describe('the difference bar', () => {
  it('starts at the reference, in the middle, and runs the way of the difference', () => {
    const up = differenceMarks(3, 1, true);
    const down = differenceMarks(-3, 1, true);
    expect(up.bar.from).toBe(differenceSize.width / 2);
    expect(down.bar.to).toBe(differenceSize.width / 2);
    expect(up.bar.to - up.bar.from).toBeCloseTo(3 * (up.noise.to - up.zero), 9);
  });

  it('is short just past its noise and long far beyond it', () => {
    const long = (difference: number) => {
      const { bar } = differenceMarks(difference, 1, true);
      return (bar.to - bar.from) / (differenceSize.width / 2 - differenceSize.inset);
    };
    expect([long(1.1), long(2), long(3), long(30)]).toEqual([
      expect.closeTo(1.1 / 3, 9),
      expect.closeTo(2 / 3, 9),
      expect.closeTo(1, 9),
      expect.closeTo(1, 9),
    ]);
  });

  it('stays in its place for any difference and noise', () => {
    const any = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(any, any, (difference, noise) => {
        const marks = differenceMarks(difference, Math.abs(noise), false);
        for (const x of [marks.bar.from, marks.bar.to, marks.noise.from, marks.noise.to]) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(differenceSize.width);
        }
      }),
    );
  });
});

describe('the groups overlaid', () => {
  const overlay = (centres: readonly (readonly [number, number, number])[]): OverlayData => ({
    origin: 'fletched centre',
    rings: [],
    unit: 'mm',
    entries: centres.map(([x, y, radius], index) => ({
      setup: index as 0 | 1,
      name: `${index} gr point`,
      centre: { x, y },
      radius,
      shots: [],
    })),
  });
  const figure = fc.double({ min: -200, max: 200, noNaN: true });
  const entry = fc.tuple(figure, figure, fc.double({ min: 1, max: 150, noNaN: true }));

  it('keep one scale both ways, stay in the window, and no label touches another', () => {
    fc.assert(
      fc.property(entry, entry, fc.integer({ min: 300, max: 420 }), (a, b, width) => {
        const marks = overlayMarks(overlay([a, b]), width);
        const [one, two] = marks.entries;
        if (one === undefined || two === undefined) throw new Error('two entries were expected');
        const scale = one.r / a[2];
        expect(two.r / b[2]).toBeCloseTo(scale, 6);
        expect(two.x - one.x).toBeCloseTo((b[0] - a[0]) * scale, 6);
        expect(one.y - two.y).toBeCloseTo((b[1] - a[1]) * scale, 6);
        for (const { x, y, r } of marks.entries) {
          expect(x - r).toBeGreaterThanOrEqual(-1e-6);
          expect(x + r).toBeLessThanOrEqual(width + 1e-6);
          expect(y - r).toBeGreaterThanOrEqual(-1e-6);
          expect(y + r).toBeLessThanOrEqual(overlaySize.height - overlaySize.axis + 1e-6);
        }
        const boxes = marks.entries.flatMap(({ label, name }) =>
          label === null
            ? []
            : [{ from: label.x - textWidth(name, 13, 'name') / 2, to: label.x + textWidth(name, 13, 'name') / 2, y: label.y }],
        );
        const [first, second] = boxes;
        if (first !== undefined && second !== undefined && Math.abs(first.y - second.y) < 15.9) {
          expect(first.to <= second.from + 1e-6 || second.to <= first.from + 1e-6).toBe(true);
        }
      }),
    );
  });

  it('name the unit on the last tick only', () => {
    const { ticks } = overlayMarks(
      overlay([
        [40, 10, 20],
        [12, 0, 15],
      ]),
      380,
    );
    expect(ticks.length).toBeGreaterThan(2);
    expect(ticks.map((tick) => tick.text.endsWith(' mm'))).toEqual(ticks.map((_, index) => index === ticks.length - 1));
  });
});

describe('the heights over the reference', () => {
  it('puts the reference on the line of nought and keeps both names apart', () => {
    const samples = [18, 30, 50, 70].map((distance) => ({ distance, value: 0.1, low: -1, high: 1 }));
    const marks = heightsMarks({ reference: 'As it is', other: '85 gr point', samples, distanceUnit: 'm', unit: 'cm' }, 380);
    expect(Math.abs(marks.labels.reference - marks.labels.other)).toBeGreaterThanOrEqual(16.9);
    expect(marks.ticks.at(-1)?.text).toBe('70 m');
    expect(marks.grid.find((row) => row.text === '0')?.y).toBeCloseTo(marks.zero, 6);
  });
});

describe('the time line', () => {
  const day = 86_400_000;
  const from = Date.parse('2026-05-01T10:00:00Z');
  const data = (points: readonly number[], flags: readonly number[], steps: readonly number[]): TimelineData => ({
    sizes: {
      name: 'Mean radius',
      small: 'mm at 18 m',
      points: points.map((at) => ({ at, shots: 6, value: 30, low: 20, high: 50, text: '30' })),
    },
    lanes: [
      {
        key: 'brace',
        name: 'brace height',
        unit: 'in',
        steps: steps.map((at, index) => ({ at, value: index % 3, text: `8 ${index}/8` })),
        now: { value: 1, text: '8 1/8' },
      },
    ],
    flags: flags.map((at, index) => ({ id: String(index), at, name: `Snapshot number ${index}`, chosen: index === 0 })),
  });
  const times = (most: number) =>
    fc
      .array(fc.integer({ min: 0, max: 200 }), { maxLength: most })
      .map((days) => days.sort((a, b) => a - b).map((n) => from + n * day));

  it('lets no two figures in a lane and no two names of flags touch, and hides no chosen flag', () => {
    fc.assert(
      fc.property(times(12), times(8), times(12), (points, flags, steps) => {
        fc.pre(points.length + flags.length + steps.length > 0);
        const marks = timelineMarks(data(points, flags, steps), 780);
        for (const lane of marks.lanes) {
          const spans = lane.labels
            .map((label) => [label.x, label.x + textWidth(label.text, 13, 'strong')] as const)
            .sort((a, b) => a[0] - b[0]);
          spans.forEach(([start], index) => index > 0 && expect(start).toBeGreaterThan(spans[index - 1]?.[1] ?? 0));
        }
        const names = marks.flags.flatMap(({ label }) => {
          if (label === null) return [];
          const wide = textWidth(label.text, 13, 'name');
          return [
            {
              y: label.y,
              from: label.anchor === 'end' ? label.x - wide : label.x,
              to: label.anchor === 'end' ? label.x : label.x + wide,
            },
          ];
        });
        names.forEach((one, index) =>
          names
            .slice(index + 1)
            .forEach((other) => expect(one.y !== other.y || one.to < other.from || other.to < one.from).toBe(true)),
        );
        // A staff begins where its cloth hangs and runs down through every row below.
        for (const { id, x, y } of marks.flags)
          for (const { id: other, label } of marks.flags) {
            if (label === null || other === id || y > label.y) continue;
            const wide = textWidth(label.text, 13, 'name');
            const [start, end] = label.anchor === 'end' ? [label.x - wide, label.x] : [label.x, label.x + wide];
            expect([label.text, x, x < start || x > end]).toEqual([label.text, x, true]);
          }
        expect(marks.flags.filter((flag) => flag.chosen).every((flag) => flag.label !== null)).toBe(true);
        expect(marks.ticks.length).toBeGreaterThan(0);
      }),
    );
  });

  /** A text as a box: letters stand some three quarters of their size over their foot. */
  const box = (label: Label, size: number, lettering: Lettering) => {
    const wide = textWidth(label.text, size, lettering);
    const from = label.anchor === 'end' ? label.x - wide : label.x;
    return { from, to: from + wide, above: label.y - 0.76 * size, below: label.y, text: label.text };
  };
  const apart = (a: ReturnType<typeof box>, b: ReturnType<typeof box>) =>
    a.to <= b.from || b.to <= a.from || a.below <= b.above || b.below <= a.above;

  it('draws no line of a setting through its own figures', () => {
    let figures = 0;
    fc.assert(
      fc.property(times(12), times(4), fc.constantFrom(752, 788), (steps, flags, width) => {
        fc.pre(steps.length > 0);
        for (const lane of timelineMarks(data([], flags, steps), width).lanes) {
          const corners = [...lane.path.matchAll(/([MHV])([\d.]+)(?: ([\d.]+))?/g)];
          let [x, y] = [0, 0];
          const lines = corners.flatMap(([, kind, first, second]) => {
            const was = { x, y };
            if (kind !== 'V') x = Number(first);
            if (kind !== 'H') y = Number(kind === 'M' ? second : first);
            const line = { text: 'line', from: Math.min(was.x, x), to: Math.max(was.x, x) };
            return kind === 'M' ? [] : [{ ...line, above: Math.min(was.y, y), below: Math.max(was.y, y) }];
          });
          expect(lines.length).toBeGreaterThan(0);
          for (const label of lane.labels) {
            figures++;
            for (const line of lines)
              expect([label.text, line, apart(box(label, 13, 'strong'), line)]).toEqual([label.text, line, true]);
          }
        }
      }),
    );
    expect(figures).toBeGreaterThan(50);
  });

  it('keeps what the size of a dot says off the figures of the axis and off its name', () => {
    const some = data([from, from + day, from + 9 * day], [], []);
    const points = some.sizes.points.map((point, index) => ({ ...point, shots: 6 + index }));
    for (const high of [12, 55, 130, 990]) {
      const sizes = { ...some.sizes, points: points.map((point) => ({ ...point, value: high / 2, high, low: high / 4 })) };
      const { panel, plot } = timelineMarks({ ...some, sizes }, 752);
      if (panel === null) throw new Error('a panel was expected');
      const axis = panel.grid.map(({ y, text }) => box({ x: plot.left - 9, y: y + 4, text, anchor: 'end' }, 12, 'text'));
      const title = [
        box({ x: 0, y: panel.top + 22, text: sizes.name, anchor: 'start' }, 14, 'text'),
        box({ x: 0, y: panel.top + 39, text: sizes.small, anchor: 'start' }, 12, 'text'),
      ];
      expect(panel.dotNote).toHaveLength(2);
      expect(axis.length).toBeGreaterThan(1);
      for (const note of panel.dotNote)
        for (const other of [...axis, ...title])
          expect([note.text, other.text, apart(box(note, 13, 'name'), other)]).toEqual([note.text, other.text, true]);
    }
  });

  it('draws no panel for a single group, and hours for a single day', () => {
    const marks = timelineMarks(data([from], [], [from, from + 3_600_000]), 780);
    expect(marks.panel).toBeNull();
    expect(marks.ticks.some((tick) => /^\d+ May, \d\d:\d\d$/.test(tick.text))).toBe(true);
  });

  it('parts groups shot on one evening without changing their order', () => {
    const marks = timelineMarks(data([from, from + 60_000, from + 120_000, from + 90 * day], [], []), 780);
    const xs = marks.panel?.dots.map((dot) => dot.x) ?? [];
    expect(xs).toHaveLength(4);
    expect(xs[1]).toBeGreaterThanOrEqual((xs[0] ?? 0) + 10.9);
    expect(xs[2]).toBeGreaterThanOrEqual((xs[1] ?? 0) + 10.9);
  });
});

describe('words', () => {
  it('the headline of the record is the finding with its number', () => {
    const compared = { from: { name: 'Spring' }, to: null, elsewhere: null } as unknown as Compared;
    const row = (name: string) => ({ name, then: '8 1/2 in', now: '8 1/8 in' });
    expect(recordHeadline(compared, [])).toBe('It stands as in “Spring”');
    expect(recordHeadline(compared, [row('Brace height')])).toBe(
      'Only the brace height differs from “Spring”: 8 1/2 in then, 8 1/8 in now',
    );
    expect(recordHeadline(compared, [row('A'), row('B'), row('C'), row('D')])).toBe('Four things differ from “Spring”');
    expect(recordHeadline({ ...compared, elsewhere: 'Second' }, [row('A')])).toBe('“Second” differs from “Spring” in one thing');
  });
});
