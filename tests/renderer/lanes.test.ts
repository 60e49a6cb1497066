import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lane } from '../../renderer/drawing/dimension/lanes.ts';
import { dimensionMarks } from '../../renderer/drawing/dimension/lines.ts';

const wish = fc.record({
  at: fc.double({ min: -100, max: 900, noNaN: true }),
  size: fc.double({ min: 1, max: 60, noNaN: true }),
});
const wishes = fc.array(wish, { minLength: 1, maxLength: 9 });

describe('a lane of labels', () => {
  it('leaves alone what has room', () => {
    const places = lane(
      [
        { at: 20, size: 10 },
        { at: 50, size: 10 },
      ],
      0,
      100,
    );
    expect(places.map(({ at, moved }) => [at, moved])).toEqual([
      [20, false],
      [50, false],
    ]);
  });

  it('parts two that want the same place by half their size each: the least movement, computed independently', () => {
    const places = lane(
      [
        { at: 50, size: 20 },
        { at: 50, size: 20 },
      ],
      0,
      100,
      4,
    );
    expect(places.map(({ from, to }) => [from, to])).toEqual([
      [28, 48],
      [52, 72],
    ]);
    expect(places.every(({ moved }) => moved)).toBe(true);
  });

  it('keeps the bounds before it keeps a wish', () => {
    const places = lane(
      [
        { at: -30, size: 20 },
        { at: 5, size: 20 },
      ],
      0,
      100,
    );
    expect(places.map(({ from }) => from)).toEqual([0, 20]);
  });

  it('never lets two touch, never changes their order and never leaves the bounds while there is room, whatever is wished', () => {
    fc.assert(
      fc.property(wishes, (list) => {
        const places = lane(list, 0, 600, 4);
        expect(places).toHaveLength(list.length);
        places.forEach(({ from, to, at }, i) => {
          expect(from).toBeGreaterThanOrEqual(-1e-9);
          expect(to).toBeLessThanOrEqual(600 + 1e-9);
          expect(at).toBeCloseTo((from + to) / 2, 9);
          const next = places[i + 1];
          if (next !== undefined) expect(next.from - to).toBeGreaterThanOrEqual(4 - 1e-9);
        });
      }),
    );
  });

  it('moves nothing farther in sum of squares than any other order-keeping placing that is tried', () => {
    fc.assert(
      fc.property(
        wishes,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 10, maxLength: 10 }),
        (list, shares) => {
          const total = list.reduce((sum, { size }) => sum + size + 4, -4);
          // Another placing: the free room is dealt out between the labels at random.
          const dealt = shares.slice(0, list.length + 1);
          const sum = dealt.reduce((a, b) => a + b, 0) || 1;
          let from = 0;
          const other = list.map(({ size }, i) => {
            from += ((600 - total) * (dealt[i] ?? 0)) / sum;
            const middle = from + size / 2;
            from += size + 4;
            return middle;
          });
          const cost = (middles: readonly number[]) => middles.reduce((c, at, i) => c + (at - (list[i]?.at ?? 0)) ** 2, 0);
          expect(cost(lane(list, 0, 600, 4).map(({ at }) => at))).toBeLessThanOrEqual(cost(other) + 1e-6);
        },
      ),
    );
  });

  it('shows by its last end that not everything fits', () => {
    const places = lane(
      [
        { at: 10, size: 60 },
        { at: 20, size: 60 },
      ],
      0,
      100,
    );
    expect(places.at(-1)?.to).toBe(120);
  });
});

describe('a dimension', () => {
  it('starts its extension lines 3 px off the object and passes the dimension line by 4', () => {
    const { lines } = dimensionMarks({ axis: 'across', from: 10, to: 90, line: 50, objectFrom: 20, objectTo: 80 });
    // Hand drawn from look.md: the object at 20 lies above the line at 50, the one at 80 below it.
    expect(lines).toContain('M10 23L10 54');
    expect(lines).toContain('M90 77L90 46');
  });

  it('is broken by its figure and nowhere else', () => {
    expect(dimensionMarks({ axis: 'across', from: 0, to: 100, line: 5, gap: [40, 60] }).lines).toBe('M0 5L40 5M60 5L100 5');
    expect(dimensionMarks({ axis: 'up', from: 0, to: 100, line: 5 }).lines).toBe('M5 0L5 100');
  });

  it('turns its arrows outside when it is too narrow for two heads', () => {
    expect(dimensionMarks({ axis: 'across', from: 0, to: 40, line: 5 }).outside).toBe(false);
    const narrow = dimensionMarks({ axis: 'across', from: 50, to: 58, line: 5 });
    expect(narrow.outside).toBe(true);
    expect(narrow.lines).toBe('M34 5L74 5');
    expect(narrow.heads).toMatch(/^M50 5L42\.5 .*M58 5L65\.5 /);
  });
});
