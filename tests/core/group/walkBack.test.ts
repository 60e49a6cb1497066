import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitAt, lackOfFit, walkBack, weightedFit, type WalkBackDistance } from '../../../core/group/index.ts';
import { normalPair, randomFrom } from '../../../fixtures/random.ts';
import { numbersIn, refusalOf, valueOf } from './shots.ts';

/** [mm], two arrows from each distance [m]. */
const readings: WalkBackDistance[] = (
  [
    [5, [2, -6]],
    [10, [9, 1]],
    [15, [14, 20]],
    [20, [31, 12]],
    [30, [40, 66]],
  ] as const
).map(([distance, offsets]) => ({ distance, offsets: offsets.map((x) => x / 1000) }));

const made = (seed: number, curve: (z: number) => number, scatter = 0.0006): WalkBackDistance[] => {
  const random = randomFrom(seed);
  return [5, 10, 15, 20, 25, 30].map((distance) => ({
    distance,
    offsets: normalPair(random).map((u) => curve(distance) + u * scatter * distance),
  }));
};
const anyReadings = fc.array(
  fc.record({
    distance: fc.constantFrom(5, 10, 15, 20, 30, 40),
    offsets: fc.array(
      fc.integer({ min: -300, max: 300 }).map((x) => x / 1000),
      { maxLength: 3 },
    ),
  }),
  { maxLength: 7 },
);

describe('A walk-back line', () => {
  it('has angle, start, bend and lack of fit of weighted least squares (computed independently with NumPy and SciPy)', () => {
    const found = valueOf(walkBack(readings));
    expect(found.angle).toBeCloseTo(0.0018841749855071784, 10);
    expect(found.angleInterval[0]).toBeCloseTo(0.00109243, 8);
    expect(found.angleInterval[1]).toBeCloseTo(0.00267591, 8);
    expect(found.angleP).toBeCloseTo(0.000582078149142354, 9);
    expect(found.start).toBeCloseTo(-0.01187975, 8);
    expect(found.startInterval[0]).toBeCloseTo(-0.019227387985733996, 9);
    expect(found.startInterval[1]).toBeCloseTo(-0.004532105685152086, 9);
    expect(found.bend.curvature).toBeCloseTo(3.355704697986556e-5, 10);
    expect(found.bend.p).toBeCloseTo(0.4774049886769164, 8);
    expect(found.bend.interval[1]).toBeCloseTo(3.355704697986556e-5 + 0.0001057261719937991, 10);
    expect(found.scatter).toBeCloseTo(0.0006140446576507544, 10);
    expect(found.misses.line?.f).toBeCloseTo(0.2293335091323129, 8);
    expect(found.misses.line?.p).toBeCloseTo(0.8723763613960606, 8);
    expect(found.line).toBe('slants');
    expect([found.arrows, found.distances]).toEqual([10, 5]);
  });

  it('bends by a quarter of the curvature times the square of the way walked', () => {
    const found = valueOf(walkBack(made(4, (z) => 0.0004 * z * z)));
    expect(found.line).toBe('bends');
    expect(found.bend.bow).toBeCloseTo((Math.abs(found.bend.curvature) * 25 ** 2) / 4, 12);
    expect(found.bend.curvature).toBeGreaterThan(0.0002);
  });

  it('turns its sign with a mirror, and leans by what is added to every distance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), fc.double({ min: -0.004, max: 0.004, noNaN: true }), (seed, lean) => {
        const plain = made(seed, () => 0);
        const mirrored = plain.map(({ distance, offsets }) => ({ distance, offsets: offsets.map((x) => -x) }));
        const leaning = plain.map(({ distance, offsets }) => ({ distance, offsets: offsets.map((x) => x + lean * distance) }));
        const [a, b, c] = [plain, mirrored, leaning].map((some) => valueOf(walkBack(some)));
        expect(b?.angle).toBeCloseTo(-(a?.angle ?? NaN), 12);
        expect(b?.bend.p).toBeCloseTo(a?.bend.p ?? NaN, 8);
        expect(b?.line).toBe(a?.line);
        expect(Math.tan(c?.angle ?? NaN)).toBeCloseTo(Math.tan(a?.angle ?? NaN) + lean, 9);
        expect(c?.bend.curvature).toBeCloseTo(a?.bend.curvature ?? NaN, 9);
        expect(c?.start).toBeCloseTo(a?.start ?? NaN, 9);
      }),
      { numRuns: 50 },
    );
  });

  it('is called bent in about 5 of 100 straight ones (seeded, 1000 lines)', () => {
    let bent = 0;
    for (let seed = 0; seed < 1000; seed++) if (valueOf(walkBack(made(seed, (z) => 0.001 * z))).line === 'bends') bent++;
    expect(bent / 1000).toBeGreaterThan(0.03);
    expect(bent / 1000).toBeLessThan(0.075);
  });

  it('is straight up only where its angle is known to within one arrow’s scatter', () => {
    const many = made(8, () => 0).map(({ distance }) => ({
      distance,
      offsets: [-1, 1, -1, 1].map((u) => u * 0.0005 * distance),
    }));
    expect(valueOf(walkBack(many)).line).toBe('straight up');
    const few = [5, 10, 30].map((distance) => ({ distance, offsets: [-0.0005 * distance, 0.0005 * distance] }));
    expect(valueOf(walkBack(few)).line).toBe('cannot tell');
  });

  it('is refused with what is missing', () => {
    expect(refusalOf(walkBack([]))).toBe('too-few-distances');
    expect(refusalOf(walkBack(readings.slice(0, 2)))).toBe('too-few-distances');
    expect(refusalOf(walkBack([5, 10, 20].map((distance) => ({ distance, offsets: [0.01] }))))).toBe('too-few');
    expect(refusalOf(walkBack([...readings, { distance: 0, offsets: [0] }]))).toBe('bad-distance');
    expect(refusalOf(walkBack([...readings, { distance: NaN, offsets: [0] }]))).toBe('bad-distance');
    expect(refusalOf(walkBack([...readings, { distance: 20, offsets: [NaN] }]))).toBe('bad-position');
    expect(refusalOf(walkBack([...readings, { distance: 20, offsets: [50] }]))).toBe('bad-position');
    expect(refusalOf(walkBack([5, 10, 20, 30].map((distance) => ({ distance, offsets: [0.001 * distance] }))))).toBe('one-hole');
  });

  it('gives numbers or a sentence for any readings', () => {
    fc.assert(
      fc.property(anyReadings, (some) => {
        const result = walkBack(some);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/^[A-Z].*\.$/);
      }),
    );
  });
});

describe('A weighted fit', () => {
  it('counts a point of weight two as two points, but for its scatter', () => {
    const once = valueOf(
      weightedFit(
        [1, 2, 4, 7].map((x) => ({ x, y: x * x, weight: x === 4 ? 2 : 1 })),
        1,
      ),
    );
    const twice = valueOf(
      weightedFit(
        [1, 2, 4, 4, 7].map((x) => ({ x, y: x * x, weight: 1 })),
        1,
      ),
    );
    once.coefficients.forEach((b, i) => expect(b).toBeCloseTo(twice.coefficients[i] ?? NaN, 10));
  });

  it('refuses points that are no numbers, too few, or all in one place', () => {
    const points = [0, 1, 2, 3].map((x) => ({ x, y: x, weight: 1 }));
    expect(refusalOf(weightedFit([...points, { x: NaN, y: 0, weight: 1 }], 1))).toBe('bad-point');
    expect(refusalOf(weightedFit([...points, { x: 0, y: 0, weight: 0 }], 1))).toBe('bad-point');
    expect(refusalOf(weightedFit(points.slice(0, 2), 1))).toBe('too-few');
    expect(
      refusalOf(
        weightedFit(
          points.map((point) => ({ ...point, x: 3 })),
          1,
        ),
      ),
    ).toBe('same-x');
    expect(() => weightedFit(points, 9)).toThrow(RangeError);
    const fit = valueOf(weightedFit(points, 1));
    expect(lackOfFit(points, fit)).toBeNull();
    expect(() => fitAt(fit, 1, 0)).toThrow(RangeError);
  });
});
