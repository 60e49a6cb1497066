import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { momentsOf, shapeFactor, welchTest, type Point } from '../../../core/group/index.ts';
import { group } from './arbitraries.ts';
import { polygon, roundMoments } from './shots.ts';

describe('the shape of the groups', () => {
  it('between ½ and 1 grows with every oval: the degrees of freedom fall as groups become a needle', () => {
    const shapes = [1, 0.5, 0.2, 0].map((thin) => {
      const points = polygon(12).map(({ x, y }) => ({ x, y: y * thin }));
      return shapeFactor([momentsOf(points)]);
    });
    expect(shapes[0]).toBe(0.5);
    expect(shapes[3]).toBe(1);
    for (let i = 1; i < shapes.length; i++) expect(shapes[i]).toBeGreaterThan(shapes[i - 1] ?? NaN);
  });

  it('of ½ gives F with 2 and 4 (n - 1) degrees of freedom for equal round groups: the circular test', () => {
    // Equal spreads and sizes: ν = 2 · 2 (n - 1), F = n d²/(4 s²), by hand from the circular Welch formula.
    const test = welchTest(roundMoments(5, 0, 2), roundMoments(5, 3, 2), 0.5);
    expect(test.df).toEqual([2, 16]);
    expect(test.f).toBeCloseTo((5 * 9) / (4 * 4), 12);
    expect(test.p).toBeCloseTo((1 + (2 * test.f) / 16) ** -8, 12);
  });

  it('of 1 gives the t test of Welch for two needles of one size on one line', () => {
    fc.assert(
      fc.property(group(3), group(3), (a, b) => {
        const n = Math.min(a.length, b.length);
        const flat = (points: readonly Point[]): Point[] => points.slice(0, n).map(({ x }) => ({ x, y: 0 }));
        const [first, second] = [momentsOf(flat(a)), momentsOf(flat(b))];
        const [v1, v2] = [first.covariance.xx / first.n, second.covariance.xx / second.n];
        if (Math.min(v1, v2) < 1e-9) return;
        const test = welchTest(first, second, shapeFactor([first, second]));
        // Welch 1947: t² ~ F(1, ν).
        expect(test.df[0]).toBeCloseTo(1, 12);
        expect(test.f).toBeCloseTo((second.centre.x - first.centre.x) ** 2 / (v1 + v2), 9);
        expect(test.df[1]).toBeCloseTo((v1 + v2) ** 2 / (v1 ** 2 / (first.n - 1) + v2 ** 2 / (second.n - 1)), 9);
      }),
    );
  });

  it('of 1 counts on a needle of few shots more than it shows, and of ½ does not', () => {
    const [twelve, three] = [roundMoments(12, 0, 2), roundMoments(3, 3, 2)];
    // By hand: v = 1/3 and 4/3; u = v (1 + 2/11) and v (1 + 2/2), so that the share of the three is 0.87129 in place of 0.8.
    const share = 8 / 3 / (8 / 3 + 13 / 33);
    expect(share).toBeCloseTo(0.87129, 5);
    expect(welchTest(twelve, three, 1).df[1]).toBeCloseTo(1 / ((1 - share) ** 2 / 11 + share ** 2 / 2), 9);
    expect(welchTest(twelve, three, 0.5).df[1]).toBeCloseTo(2 / (0.2 ** 2 / 11 + 0.8 ** 2 / 2), 9);
  });

  it('grows when ovals lie across each other and one of them outweighs the other, and else comes from both together', () => {
    const thin = polygon(6).map(({ x, y }) => ({ x, y: y / 5 }));
    const across = (by: number): Point[] => thin.map(({ x, y }) => ({ x: by * y, y: by * x }));
    const of = (...groups: readonly (readonly Point[])[]): number => shapeFactor(groups.map(momentsOf));
    expect(of(thin, across(1))).toBe(0.5);
    expect(of(thin, across(3))).toBeGreaterThan(0.9);
    expect(
      of(
        thin,
        thin.map(({ x, y }) => ({ x: 3 * x, y: 3 * y })),
      ),
    ).toBeCloseTo(of(thin, thin), 12);
    // Three shots each are too few to show it.
    expect(of(thin.slice(0, 3), across(3).slice(0, 3))).toBeLessThan(1);
  });
});
