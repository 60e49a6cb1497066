import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitMarks, movedMarks, nextMark, readingAt } from '../../../../core/aim/index.ts';
import { valueOf } from '../../group/shots.ts';
import { distances, millimetreScale, targetPriors, trueReading, type Truth, truths } from './anyMarks.ts';

const truth: Truth = { speed: 57, eyeHeight: 0.115, k: 0.0024, sightRadius: 0.845, zero: 12 };
const fitOf = (at: readonly number[], of = truth) =>
  valueOf(
    fitMarks(
      at.map((distance) => ({ distance, reading: trueReading(of, distance) })),
      millimetreScale,
      targetPriors,
    ),
  );
type Fit = ReturnType<typeof fitOf>;
const worstOf = (fit: Fit) =>
  Math.max(
    ...wanted.map((distance) => {
      const { high, value } = readingAt(fit, distance) ?? { high: NaN, value: NaN };
      return high - value;
    }),
  );
/** The same fit with one more mark that fell where it was expected. */
const shotAt = (fit: Fit, distance: number) =>
  valueOf(fitMarks([...fit.marks, { distance, reading: readingAt(fit, distance)?.value ?? NaN }], millimetreScale, targetPriors));
const wanted = [18, 30, 50, 70, 90];

describe('The distance to shoot in next', () => {
  it('is the far end of what is wanted, when only near marks are known', () => {
    expect(nextMark(fitOf([18, 30]), [10, 20, 40, 60, 90], wanted)).toMatchObject({ distance: 90, worstAt: 90 });
  });

  // The promise is kept by shooting it: a fit with the mark in place has the interval that was foretold.
  it('narrows the worst interval to what it says, and more than any other candidate', () => {
    fc.assert(
      fc.property(truths, distances, (drawn, at) => {
        const candidates = [12, 35, 65, 80];
        const fit = fitOf(at, drawn);
        const next = nextMark(fit, candidates, wanted);
        expect(next).not.toBeNull();
        if (next === null) return;
        expect(next.worstNow).toBeCloseTo(worstOf(fit), 6);
        expect(next.worstThen).toBeLessThan(next.worstNow);
        // One mark more that fits says less of a rough fit's misses: as wide as before, all else equal.
        const then = candidates.map((candidate) => {
          const more = shotAt(fit, candidate);
          return (worstOf(more) * fit.wider) / more.wider;
        });
        expect(Math.abs((then[candidates.indexOf(next.distance)] ?? NaN) / next.worstThen - 1)).toBeLessThan(0.02);
        expect(next.worstThen).toBeLessThan(1.02 * Math.min(...then));
      }),
      { numRuns: 40 },
    );
  });

  it('is none out of reach or without distances', () => {
    const fit = fitOf([18, 30]);
    expect(nextMark(fit, [], wanted)).toBeNull();
    expect(nextMark(fit, [20], [])).toBeNull();
    expect(nextMark(fit, [500, NaN], wanted)).toBeNull();
    expect(nextMark(fit, [20], [500])).toBeNull();
    expect(nextMark(fit, [500, 40], [500, 60])?.distance).toBe(40);
  });
});

describe('Marks after a change', () => {
  const fit = fitOf([18, 30, 50, 70]);
  const exactly = (value: number) => ({ value, low: value, high: value });

  it('stand where the model puts them with the figures changed', () => {
    const change = { speed: exactly(0.97), k: exactly(1.1), eyeHeight: exactly(-0.004), sightRadius: exactly(0.01) };
    const rows = movedMarks(fit, change, [18, 50, 90]);
    expect(rows).toHaveLength(3);
    const { speed, k, eyeHeight, sightRadius } = fit.figures;
    const after = {
      speed: speed.value * 0.97,
      k: k.value * 1.1,
      eyeHeight: eyeHeight.value - 0.004,
      sightRadius: sightRadius.value + 0.01,
      // The bar is on the bow, so that an eye 4 mm nearer the arrow takes the pin 4 mm down with it.
      zero: fit.figures.zero.value + 4,
    };
    for (const { distance, after: reading } of rows) expect(reading).toBeCloseTo(trueReading(after, distance), 6);
  });

  it('move down for a slower arrow, the more the farther, and up for a higher nocking point’s launch', () => {
    const slower = movedMarks(fit, { speed: exactly(0.97) }, [18, 30, 50, 70, 90]).map(({ moved }) => moved.value);
    expect(slower[0]).toBeGreaterThan(0);
    expect(slower).toEqual(slower.toSorted((a, b) => a - b));
    for (const { moved } of movedMarks(fit, { launchAngle: exactly(0.001) }, [18, 90])) expect(moved.value).toBeLessThan(-0.8);
  });

  // Common practice: the arrow's tail comes up to the eye with a higher anchor, the arrow strikes lower, and the pin goes down.
  it('move down by what the anchor went up, nearly the same at every distance', () => {
    for (const { moved } of movedMarks(fit, { eyeHeight: exactly(-0.005) }, [18, 30, 50, 70])) {
      expect(moved.value).toBeGreaterThan(4.7);
      expect(moved.value).toBeLessThan(5);
    }
    const [vague] = movedMarks(fit, { eyeHeight: { value: 0, low: -0.01, high: 0.01 } }, [50]);
    expect(vague?.moved.high).toBeCloseTo(10 * (1 - 0.845 / 50), 0);
  });

  it('may have moved by more the less is known of the change, about the same middle', () => {
    const [sharp, vague] = [0.01, 0.03].map(
      (by) => movedMarks(fit, { speed: { value: 1, low: 1 - by, high: 1 + by } }, [50])[0]?.moved,
    );
    expect(vague?.value).toBe(sharp?.value);
    const [one, three] = [sharp, vague].map((moved) => (moved?.high ?? NaN) - (moved?.low ?? NaN)) as [number, number];
    expect(three / one).toBeCloseTo(3, 2);
  });

  it('are left out where an arrow does not carry, and a band out of order is refused', () => {
    expect(movedMarks(fit, {}, [50, 500, NaN]).map(({ distance }) => distance)).toEqual([50]);
    expect(() => movedMarks(fit, { speed: { value: 1, low: 2, high: 3 } }, [50])).toThrow(RangeError);
    expect(() => movedMarks(fit, { k: exactly(0) }, [50])).toThrow(RangeError);
    expect(() => movedMarks(fit, { eyeHeight: exactly(NaN) }, [50])).toThrow(RangeError);
  });
});
