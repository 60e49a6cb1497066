import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StripRow } from '../../renderer/print/index.ts';
import { touches } from '../../renderer/plots/boxes.ts';
import { barScale } from '../../renderer/print/strip/barScale.ts';
import { stripMarks } from '../../renderer/print/strip/marks.ts';
import { stripPlaces } from '../../renderer/print/strip/places.ts';
import { stripWidths, widthsFor } from '../../renderer/print/strip/widths.ts';
import { fittedPaper, paperOf, rowOf } from './printExample.ts';

const broad = stripWidths[0] as (typeof stripWidths)[number];

describe('Places on the bar', () => {
  it('are as far apart as the scale’s unit makes them: ten sixteenths of an inch are 15.875 mm', () => {
    // By the definition of the inch, 25.4 mm exactly.
    const { placed } = stripPlaces(paperOf([rowOf(20, 10), rowOf(30, 20), rowOf(50, 42)]));
    expect(placed.map(({ at }) => at - (placed[0]?.at ?? 0)).map((mm) => Number(mm.toFixed(6)))).toEqual([0, 15.875, 50.8]);
  });

  it('run down the bar for farther distances, whichever way the numbers grow', () => {
    const down = stripPlaces(paperOf([rowOf(20, 10), rowOf(30, 20), rowOf(50, 42)]));
    const up = stripPlaces(paperOf([rowOf(20, 90), rowOf(30, 80), rowOf(50, 58)], { grows: 'up' }));
    const gaps = ({ placed }: typeof down) => placed.map(({ at }) => Number((at - (placed[0]?.at ?? 0)).toFixed(6)));
    expect(gaps(up)).toEqual(gaps(down));
    for (const { placed } of [down, up]) for (const row of placed) expect(row.upper).toBeLessThan(row.lower);
  });

  it('leave out what is off the bar, what turns back near by, and what the arrow does not reach, each under its own name', () => {
    const rows = [
      rowOf(4, 12),
      rowOf(6, 10.5),
      rowOf(8, 10),
      rowOf(20, 14),
      rowOf(30, 22),
      rowOf(60, 70),
      { ...rowOf(90, 0), reading: null },
    ];
    const { placed, off, turned, beyond } = stripPlaces(paperOf(rows, { lowest: 0, highest: 60 }));
    const names = (some: readonly StripRow[]) => some.map(({ label }) => label);
    expect([placed, off, turned, beyond].map(names)).toEqual([['8', '20', '30'], ['60'], ['4', '6'], ['90']]);
  });
});

describe('A strip', () => {
  it('has its lines as far apart as the readings, whatever its width', () => {
    const { placed } = stripPlaces(fittedPaper(10, 70));
    for (const width of stripWidths) {
      const { lines } = stripMarks(placed, width, 1);
      expect(lines.length).toBeGreaterThan(30);
      const [first] = lines;
      for (const { row, y } of lines)
        expect(y - (first?.y ?? 0)).toBeCloseTo(row.reading.value - (first?.row.reading.value ?? 0), 9);
    }
  });

  it('is 50/49 longer for a printer that makes 49 mm of 50', () => {
    const { placed } = stripPlaces(fittedPaper(10, 70));
    const [plain, longer] = [1, 50 / 49].map((factor) => stripMarks(placed, broad, factor).lines);
    const span = (lines: typeof plain) => (lines?.at(-1)?.y ?? 0) - (lines?.[0]?.y ?? 0);
    expect(span(longer) / span(plain)).toBeCloseTo(50 / 49, 12);
  });

  it('marks what was shot, and draws what is weak hollow with its interval', () => {
    const rows = [rowOf(18, 10, { known: true }), rowOf(30, 20, { known: true }), rowOf(50, 42), rowOf(70, 66, { weak: true })];
    const { known, weak, labels, lines } = stripMarks(stripPlaces(paperOf(rows)).placed, broad, 1);
    expect(known).toEqual(lines.slice(0, 2).map(({ y }) => y));
    // Half a unit either way, of 1.5875 mm.
    expect(weak).toHaveLength(1);
    expect((weak[0]?.to ?? 0) - (weak[0]?.from ?? 0)).toBeCloseTo(1.5875, 9);
    expect(labels.filter(({ lettering }) => lettering === 'strong').map(({ text }) => text)).toEqual(['18', '30']);
  });

  it('thins its lines to every fifth or tenth where they crowd, the same all the way between two tens', () => {
    const rows = Array.from({ length: 61 }, (_, i) => rowOf(10 + i, ((10 + i) / 20) ** 2));
    const { lines } = stripMarks(stripPlaces(paperOf(rows)).placed, broad, 1);
    const inTen = (ten: number) => lines.map(({ row }) => row.distance).filter((distance) => Math.floor(distance / 10) === ten);
    // At 10 m a metre is 0.08 mm on this bar, at 60 m 0.48 mm: tenths near by, then fifths; none by twos.
    expect(inTen(1)).toEqual([10]);
    expect(inTen(3)).toEqual([30, 35]);
    expect(inTen(6)).toEqual([60, 65]);
  });

  /** Every metre on a bar of millimetres, a metre as long as told, and marks that were shot anywhere. */
  const metres = (from: number, to: number, each: (distance: number) => number, shot: readonly number[] = []) =>
    [...Array.from({ length: to - from + 1 }, (_, i) => from + i), ...shot]
      .sort((a, b) => a - b)
      .map((distance) => rowOf(distance, each(distance), { label: String(distance), known: shot.includes(distance) }));
  const labelsOf = (rows: readonly StripRow[], place = broad) => {
    const { lines } = stripMarks(stripPlaces(paperOf(rows, { unit: 0.001 })).placed, place, 1);
    return lines.filter(({ labelled }) => labelled).map(({ row }) => row.distance);
  };

  it('has figures at fives and tens and at its ends, at tens alone where fives crowd, and always at the last', () => {
    expect(labelsOf(metres(10, 71, (distance) => 2 * distance))).toEqual([10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 71]);
    // Half a millimetre a metre: fives are 2.5 mm apart, nearer than figures may stand.
    expect(labelsOf(metres(12, 67, (distance) => 0.5 * distance))).toEqual([12, 20, 30, 40, 50, 60, 67]);
  });

  it('gives every shot mark a line and a dot at its own distance, and its figure where there is room', () => {
    // 20 and 50 yd in metres; a metre is 1.3 mm, as on a usual sight at 20 m.
    const rows = metres(10, 70, (distance) => 1.3 * distance, [18.288, 45.72]);
    const { lines, known } = stripMarks(stripPlaces(paperOf(rows, { unit: 0.001 })).placed, broad, 1);
    const shot = lines.filter(({ row }) => row.known);
    expect(shot.map(({ row }) => row.distance)).toEqual([18.288, 45.72]);
    expect(known).toEqual(shot.map(({ y }) => y));
    // The lines of 18 and 46 m would run into theirs.
    expect(lines.map(({ row }) => row.distance).filter((distance) => [17, 18, 19, 45, 46, 47].includes(distance))).toEqual([
      17, 19, 45, 47,
    ]);
    const sparse = [rowOf(10, 10), rowOf(18.3, 22, { known: true }), rowOf(20, 30), rowOf(30, 44)];
    for (const place of stripWidths) {
      expect(labelsOf(rows, place)).toEqual([10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70]);
      expect(labelsOf(sparse, place)).toEqual([10, 18.3, 20, 30]);
    }
  });

  it('keeps the figures of what is weak, and draws intervals as far as they have room', () => {
    const rows = metres(50, 80, (distance) => 2 * distance).map((row) => ({
      ...row,
      weak: true,
      reading: { ...rowOf(0, 0).reading, value: 2 * row.distance, low: 2 * row.distance - 6, high: 2 * row.distance + 6 },
    }));
    const { weak, lines } = stripMarks(stripPlaces(paperOf(rows, { unit: 0.001 })).placed, broad, 1);
    expect(lines.filter(({ labelled }) => labelled).map(({ row }) => row.distance)).toEqual([50, 55, 60, 65, 70, 75, 80]);
    // 12 mm each, 20 mm from ten to ten: the fives between have no room.
    expect(weak.map(({ to, from }) => Number((to - from).toFixed(6)))).toHaveLength(4);
  });
});

/** Any rows that a flight could give: readings that grow faster and faster, some known, some weak. */
const anyRows = fc
  .record({
    from: fc.integer({ min: 8, max: 40 }),
    count: fc.integer({ min: 2, max: 80 }),
    slope: fc.double({ min: 0.02, max: 2, noNaN: true }),
    bend: fc.double({ min: 0, max: 0.03, noNaN: true }),
    flags: fc.array(fc.record({ known: fc.boolean(), weak: fc.boolean(), half: fc.double({ min: 0, max: 12, noNaN: true }) }), {
      minLength: 80,
      maxLength: 80,
    }),
    knownEvery: fc.integer({ min: 1, max: 20 }),
    grows: fc.constantFrom('down' as const, 'up' as const),
    unit: fc.constantFrom(0.0005, 0.001, 0.0015875, 0.005),
  })
  .map(({ from, count, slope, bend, flags, knownEvery, grows, unit }) =>
    paperOf(
      Array.from({ length: count }, (_, i) => {
        const value = (grows === 'down' ? 1 : -1) * (20 + slope * i + bend * i * i);
        const { known = false, weak = false, half = 1 } = flags[i] ?? {};
        return {
          ...rowOf(from + i, value),
          reading: { value, low: value - half, high: value + half },
          weak,
          known: known && i % knownEvery === 0,
        };
      }),
      { grows, unit },
    ),
  );

describe('Any strip', () => {
  it('keeps the order of the distances, and every known mark has its line', () => {
    fc.assert(
      fc.property(
        anyRows,
        fc.constantFrom(...stripWidths),
        fc.double({ min: 50 / 60, max: 50 / 40, noNaN: true }),
        (paper, width, factor) => {
          const { placed } = stripPlaces(paper);
          const { lines, height } = stripMarks(placed, width, factor);
          for (const [i, line] of lines.entries()) {
            expect(line.y).toBeGreaterThan(0);
            expect(line.y).toBeLessThan(height);
            const before = lines[i - 1];
            if (before === undefined) continue;
            expect(line.row.distance).toBeGreaterThan(before.row.distance);
            const apart = factor * paper.unit * 1000 * Math.abs(line.row.reading.value - before.row.reading.value);
            expect(line.y - before.y).toBeCloseTo(apart, 6);
            if (!line.row.known && !before.row.known) expect(line.y - before.y).toBeGreaterThan(0.599);
          }
          const ruled = new Set(lines.map(({ row }) => row.distance));
          for (const row of placed) if (row.known) expect(ruled.has(row.distance)).toBe(true);
        },
      ),
    );
  });

  it('has no label that touches another or an interval, and none without its line', () => {
    fc.assert(
      fc.property(
        anyRows,
        fc.constantFrom(...stripWidths, ...widthsFor(false)),
        fc.double({ min: 50 / 60, max: 50 / 40, noNaN: true }),
        (paper, width, factor) => {
          const { labels, weak, lines } = stripMarks(stripPlaces(paper).placed, width, factor);
          const boxes = labels.map(({ box }) => box);
          const bars = weak.map(({ from, to }) => ({
            left: width.marker - 0.8,
            right: width.marker + 0.8,
            top: from,
            bottom: to,
          }));
          const all = [...boxes, ...bars];
          for (const [i, a] of all.entries()) for (const b of all.slice(i + 1)) expect(touches(a, b)).toBe(false);
          for (const { left, right } of boxes) {
            expect(left).toBeGreaterThan(width.long - 0.01);
            expect(right).toBeLessThan(width.width - width.long * width.mirrored + 0.01);
          }
          const labelled = new Set(lines.filter((line) => line.labelled).map(({ row }) => row.label));
          expect(new Set(labels.map(({ text }) => text))).toEqual(labelled);
        },
      ),
    );
  });
});

describe('The bar’s own scale', () => {
  it('has figures at least 6 mm apart on lines of its own', () => {
    for (const perUnit of [0.5, 1, 1.5875, 5, 25.4]) {
      const { readings } = barScale(12.3, 12.3 + 90 / perUnit, (reading) => reading * perUnit);
      const figures = readings.filter(({ figure }) => figure);
      expect(figures.length, String(perUnit)).toBeGreaterThan(3);
      for (const some of [readings, figures])
        for (const [i, one] of some.entries())
          if (i > 0) expect(one.y - (some[i - 1]?.y ?? 0)).toBeGreaterThan(some === figures ? 5.99 : 0.89);
    }
  });
});
