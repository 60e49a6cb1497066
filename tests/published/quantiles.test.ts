import { describe, expect, it } from 'vitest';
import {
  chiSquareQuantile,
  fQuantileUpper,
  fUpperTail,
  noncentralFUpperTail,
  tQuantile,
  tTwoSided,
} from '../../core/group/index.ts';
import published from '../../fixtures/published/quantiles.json';

const { printed, computed } = published;
/** A printed figure is right to half of its last digit. */
const expectAgrees = (value: number, figure: number, digits: number): void =>
  expect(Math.abs(value - figure)).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);

describe('quantiles against the printed tables of t, F and chi-square (NIST/SEMATECH e-Handbook 1.3.6.7, from memory)', () => {
  it('has tables to go through', () => {
    for (const table of Object.values(printed)) expect(table.length).toBeGreaterThan(2);
  });
  it.each(printed.t975)('t, 97.5 %, %d degrees of freedom: %d', (df = NaN, figure = NaN) =>
    expectAgrees(tQuantile(0.975, df), figure, 3),
  );
  it.each(printed.fUpper05)('F, upper 5 %%, %d and %d degrees of freedom: %d', (df1 = NaN, df2 = NaN, figure = NaN) =>
    expectAgrees(fQuantileUpper(0.05, df1, df2), figure, figure > 100 ? 1 : 2),
  );
  it.each(printed.fUpper01)('F, upper 1 %%, %d and %d degrees of freedom: %d', (df1 = NaN, df2 = NaN, figure = NaN) =>
    expectAgrees(fQuantileUpper(0.01, df1, df2), figure, 2),
  );
  it.each(printed.chi95)('chi-square, 95 %, %d degrees of freedom: %d', (df = NaN, figure = NaN) =>
    expectAgrees(chiSquareQuantile(0.95, df), figure, 3),
  );
  it.each(printed.chi025)('chi-square, 2.5 %, %d degrees of freedom: %d', (df = NaN, figure = NaN) =>
    expectAgrees(chiSquareQuantile(0.025, df), figure, 3),
  );
});

const ways: Record<string, (...a: number[]) => number> = {
  qf: (p = NaN, df1 = NaN, df2 = NaN) => fQuantileUpper(1 - p, df1, df2),
  qchisq: (p = NaN, df = NaN) => chiSquareQuantile(p, df),
  qt: (p = NaN, df = NaN) => tQuantile(p, df),
  pfU: (f = NaN, df1 = NaN, df2 = NaN) => fUpperTail(f, df1, df2),
  ptU: (t = NaN, df = NaN) => tTwoSided(t, df) / 2,
  pnf: (f = NaN, df1 = NaN, df2 = NaN, lambda = NaN) => 1 - noncentralFUpperTail(f, df1, df2, lambda),
};
const rows = computed.map(({ k, a, v }) => ({ k, a: [a].flat(), v }));

describe('quantiles and tails against high-precision values (computed independently)', () => {
  it('has every kind to go through', () => expect(new Set(rows.map((row) => row.k))).toEqual(new Set(Object.keys(ways))));

  it.each(rows)('$k of $a is $v', ({ k, a, v }) => {
    const value = ways[k]?.(...a) ?? NaN;
    // Upper-tail quantiles are asked for by 1 - p, so p near 1 carries the rounding of p itself.
    const given = k === 'qf' || k === 'qt' ? 1e-9 / Math.min(1, 1e3 * (1 - (a[0] ?? 0))) : 1e-9;
    expect(Math.abs(value / v - 1)).toBeLessThan(given);
  });

  it('keeps the lower tail of noncentral F that a well-known package loses: 4.180193523171526e-5 at 3.06029 with 2 and 141, λ 40', () =>
    expect((1 - noncentralFUpperTail(3.06029177224125, 2, 141, 40)) / 4.180193523171526e-5).toBeCloseTo(1, 8));

  // Computed independently (scipy 1.17, checked at 30 digits): the library's own upper quantile is up to 2e-4 off from 1773 on.
  it.each([
    [0.975, 1000.5, 1090.0528270754237],
    [0.975, 1998, 2123.780301868764],
    [0.025, 1998, 1876.0080371235351],
    [0.95, 5000, 5165.614518675803],
    [0.975, 199998, 201239.4770835762],
  ])('chi-square, %d of very many degrees of freedom, %d: %d', (p, df, figure) =>
    expect(chiSquareQuantile(p, df) / figure).toBeCloseTo(1, 9),
  );
});
