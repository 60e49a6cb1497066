import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectedScore, expectedScoreOfGroup, face, scatterAt, scoreGroup, scoreShot } from '../../../core/group/index.ts';
import { FaceId } from '../../../core/model/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { angle, anyShots, group, mirrored, turned } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const shaft = 0.003;
const round = (spread: number) => ({ spread: [spread, spread], offset: { x: 0, y: 0 } }) as const;

describe('the expected score of an arrow', () => {
  it('of round centred scatter is the closed sum of 1 - e^(-R²/2σ²) over the ten rings', () => {
    for (const spread of [0.01, 0.06, 0.3]) {
      // 122 cm: rings at 61, 122 … 610 mm, each worth one point more than the one outside it (World Archery rule book).
      const sum = Array.from({ length: 10 }, (_, i) => -Math.expm1(-((0.061 * (i + 1) + shaft) ** 2) / (2 * spread ** 2)));
      const { points, missChance } = expectedScore(round(spread), shaft, face('122'));
      expect(points).toBeCloseTo(
        sum.reduce((a, b) => a + b, 0),
        10,
      );
      expect(missChance).toBeCloseTo(1 - (sum[9] ?? NaN), 10);
    }
  });

  it('of a spread too small to matter is what the rule gives that one place', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FaceId.options), fc.integer({ min: 0, max: 700 }), angle, (id, millimetre, by) => {
        // Half a millimetre off the whole ones, so never on a line: radii and shaft are whole millimetres.
        const r = (millimetre + 0.5) / 1000;
        const offset = { x: r * Math.cos(by), y: r * Math.sin(by) };
        const scatter = { spread: [1e-5, 1e-5], offset } as const;
        expect(expectedScore(scatter, shaft, face(id)).points).toBeCloseTo(scoreShot(offset, shaft, face(id)).points, 8);
      }),
    );
  });

  it('is the mean score of 20,000 drawn arrows, round or oval, centred or not, within four standard errors', () => {
    const random = randomFrom(31);
    for (const [spread, offset] of [
      [[0.05, 0.05], { x: 0, y: 0 }],
      [[0.09, 0.02], { x: 0.05, y: -0.07 }],
    ] as const) {
      const draws = 20_000;
      const scored = scoreGroup(normalShots(random, draws, spread, offset), shaft, face('80'));
      const expected = expectedScore({ spread, offset }, shaft, face('80'));
      const near = (value: number, mean: number, deviation: number): void =>
        expect(Math.abs(value - mean)).toBeLessThan((4 * deviation) / Math.sqrt(draws));
      near(scored.total / draws, expected.points, expected.deviation);
      for (const [count, chance] of [
        [scored.tens, expected.tenChance],
        [scored.inner, expected.innerChance],
      ] as const)
        near(count / draws, chance, Math.sqrt(chance * (1 - chance)));
    }
  });

  it('falls as the spread grows and rises with the shaft', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 200 }), fc.constantFrom(...FaceId.options), (millimetre, id) => {
        const at = (spread: number, radius: number): number => expectedScore(round(spread), radius, face(id)).points;
        expect(at((millimetre * 1.1) / 1000, shaft)).toBeLessThan(at(millimetre / 1000, shaft) + 1e-12);
        expect(at(millimetre / 1000, 0.0045)).toBeGreaterThan(at(millimetre / 1000, shaft) - 1e-12);
      }),
    );
  });

  it('at twice the distance on a face twice as large is the same, for a shaft that is twice as thick', () => {
    const scatter = { spread: [0.03, 0.02], offset: { x: 0.02, y: 0.01 } } as const;
    expect(expectedScore(scatterAt(scatter, 15, 30), 2 * shaft, face('80')).points).toBeCloseTo(
      expectedScore(scatter, shaft, face('40')).points,
      10,
    );
  });
});

describe('the expected score of a group', () => {
  it('does not depend on the turn of the face, lies in its interval and is never more than ten', () => {
    fc.assert(
      fc.property(group(3, 200), angle, (points, by) => {
        const before = valueOf(expectedScoreOfGroup(points, shaft, face('122')));
        expect(before.points).toBeGreaterThanOrEqual(before.interval[0]);
        expect(before.points).toBeLessThanOrEqual(before.interval[1]);
        expect(before.interval[1]).toBeLessThanOrEqual(10 + 1e-9);
        for (const other of [turned(points, by), mirrored(points)])
          expect(valueOf(expectedScoreOfGroup(other, shaft, face('122'))).points).toBeCloseTo(before.points, 4);
      }),
      { numRuns: 40 },
    );
  });

  it('is better with the sight set right, and worse farther off', () => {
    const shots = normalShots(randomFrom(9), 12, [0.04, 0.04], { x: 0.1, y: 0.05 });
    const at = (options: object): number => valueOf(expectedScoreOfGroup(shots, shaft, face('122'), options)).points;
    expect(at({ centred: true })).toBeGreaterThan(at({}));
    expect(at({ shotAt: 30, askedAt: 50 })).toBeLessThan(at({ shotAt: 30, askedAt: 30 }));
    expect(at({ shotAt: 30, askedAt: 30 })).toBe(at({}));
  });

  it('is refused with a sentence, and is never not a number', () => {
    expect(refusalOf(expectedScoreOfGroup(millimetres([[1, 1]]), shaft, face('40')))).toBe('one-shot');
    const two = millimetres([
      [1, 1],
      [9, 1],
    ]);
    expect(refusalOf(expectedScoreOfGroup(two, shaft, face('40'), { shotAt: 0, askedAt: 18 }))).toBe('bad-distance');
    expect(() => expectedScoreOfGroup(two, -1, face('40'))).toThrow(RangeError);
    fc.assert(
      fc.property(anyShots(), (points) => {
        const result = expectedScoreOfGroup(points, shaft, face('40-triple'));
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(result.problem.sentence).toMatch(/\.$/);
      }),
    );
  });
});
