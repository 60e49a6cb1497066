import { describe, expect, it } from 'vitest';
import { LEAST_RESERVE, stringFigures, type StringFigures } from '../../core/bow/index.ts';
import { exampleBundle, type Bundle, type StringMaterial } from '../../core/model/index.ts';

const lb = 4.4482216152605;

const bundleOf = (
  stringMaterial: StringMaterial | null,
  strands: number | null,
  weight = 40,
  stringLength: number | null = 1.6,
): Bundle => ({
  ...exampleBundle,
  bow: { ...exampleBundle.bow, markedWeight: null },
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, stringMaterial, strands, stringLength, weightOnFingers: weight * lb },
  },
});
const figuresOf = (...of: Parameters<typeof bundleOf>): StringFigures => {
  const found = stringFigures(bundleOf(...of));
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};

describe('a bowstring', () => {
  it('has strands of 222 N in polyester and 445 N in HMPE [two tables of fibres]', () => {
    expect(figuresOf('polyester', 14).strength.value / 14).toBeCloseTo(222, 6);
    expect(figuresOf('HMPE', 18).strength.value / 18).toBeCloseTo(445, 6);
  });

  it('is as stiff as its strands at most: polyester about 2.5 kN a strand, HMPE 13.5 to 25 kN [two tables of fibres]', () => {
    const polyester = figuresOf('polyester', 14).axial.high / 14;
    expect(polyester).toBeGreaterThan(2300);
    expect(polyester).toBeLessThan(2700);
    const hmpe = figuresOf('HMPE', 18);
    expect(hmpe.axial.high / 18).toBeGreaterThan(24_000);
    expect(hmpe.axial.high / 18).toBeLessThan(27_000);
    expect(hmpe.axial.low).toBeLessThan(18 * 13_500);
  });

  it.each([
    // Whole strings of 1.6 m, upper bounds [two tables of fibres]: 14 strands of polyester 22 N/mm, 18 of HMPE to 282 N/mm.
    { material: 'polyester', strands: 14, bound: 22e3 },
    { material: 'HMPE', strands: 18, bound: 282e3 },
  ] as const)(
    'of $strands strands of $material and 1.6 m gives way by no less than the tables say',
    ({ material, strands, bound }) => {
      const { stiffness } = figuresOf(material, strands);
      expect(Math.abs((stiffness?.high ?? 0) / bound - 1)).toBeLessThan(0.08);
      expect(stiffness?.value ?? 0).toBeLessThan(bound);
      expect(stiffness?.low ?? 0).toBeGreaterThan(0.1 * bound);
    },
  );

  it('takes about two and a half times the draw weight when braced, and breaks at six times at least [common practice]', () => {
    const figures = figuresOf('polyester', 12);
    expect(figures.bracedTension.value / (40 * lb)).toBeCloseTo(2.5, 9);
    expect(LEAST_RESERVE).toBe(6);
    expect(figures.reserve).toBeCloseTo((12 * 222) / (40 * lb), 9);
  });

  it('is pulled 2.3 to 3.4 times the draw weight in polyester and 3 to 5.8 in HMPE while the arrow is on it, more after it [computed independently]', () => {
    const { greatestTension: soft } = figuresOf('polyester', 12);
    expect([soft.low, soft.value].map((tension) => tension / (40 * lb))).toEqual([
      expect.closeTo(2.3, 9),
      expect.closeTo(3.4, 9),
    ]);
    const { greatestTension: stiff } = figuresOf('HMPE', 16);
    expect([stiff.low, stiff.value].map((tension) => tension / (40 * lb))).toEqual([
      expect.closeTo(3, 9),
      expect.closeTo(5.8, 9),
    ]);
    expect(stiff.high / (40 * lb)).toBeGreaterThanOrEqual(6);
  });

  it('has little reserve below six times the draw weight, and is beyond its strength where a shot may break it', () => {
    // 222 N a strand: 4.8 strands make six times 40 lb, 2.7 make 3.4 times.
    expect(figuresOf('polyester', 5).holds).toBe('within common practice');
    expect(figuresOf('polyester', 4).holds).toBe('little reserve');
    expect(figuresOf('polyester', 2).holds).toBe('beyond its strength');
  });

  it.each([
    // Rough counts [from memory].
    { weight: 20, strands: 8 },
    { weight: 30, strands: 10 },
    { weight: 40, strands: 12 },
    { weight: 50, strands: 14 },
    { weight: 60, strands: 16 },
  ])(
    'of polyester has about $strands strands at $weight lb, two fewer to four more [from memory; a federation’s notes]',
    (row) => {
      expect(figuresOf('polyester', 12, row.weight).strandsUsual).toEqual({ low: row.strands - 2, high: row.strands + 4 });
    },
  );

  it('of HMPE has 14 to 20 strands whatever the weight [from memory], and is a low-stretch one, as are LCP and aramid [common practice]', () => {
    expect(figuresOf('HMPE', 16, 24).strandsUsual).toEqual({ low: 14, high: 20 });
    for (const material of ['HMPE', 'HMPE and LCP', 'LCP', 'aramid'] as const)
      expect(figuresOf(material, 16).lowStretch).toBe(true);
    for (const material of ['polyester', 'linen'] as const) expect(figuresOf(material, 16).lowStretch).toBe(false);
  });

  it('has no stiffness without a length, but keeps its strength; the bow’s length less three inches will do [AMO standard]', () => {
    const bundle = bundleOf('HMPE', 16, 40, null);
    const known = stringFigures(bundle);
    const unknown = stringFigures({ ...bundle, bow: { ...bundle.bow, length: null } });
    if (!known.ok || !unknown.ok) throw new Error('Both were expected.');
    expect(known.value.axial.value / (known.value.stiffness?.value ?? 0)).toBeCloseTo(63 * 0.0254, 9);
    expect(unknown.value.stiffness).toBeNull();
    expect(unknown.value.strength).toEqual(known.value.strength);
  });

  it('is refused with the field to fill while material, strands or weight are not known, and for a compound', () => {
    expect(stringFigures(bundleOf(null, 16))).toMatchObject({ ok: false, problem: { field: 'stringMaterial' } });
    expect(stringFigures(bundleOf('other', 16))).toMatchObject({ ok: false, problem: { field: 'stringMaterial' } });
    expect(stringFigures(bundleOf('HMPE', null))).toMatchObject({ ok: false, problem: { field: 'strands' } });
    const bundle = bundleOf('HMPE', 16);
    const unweighed = { ...bundle, setup: { ...bundle.setup, settings: { ...bundle.setup.settings, weightOnFingers: null } } };
    expect(stringFigures(unweighed)).toMatchObject({ ok: false, problem: { field: 'weightOnFingers' } });
    expect(stringFigures({ ...bundle, bow: { ...bundle.bow, bowKind: 'compound' } })).toMatchObject({
      ok: false,
      problem: { code: 'compound' },
    });
  });
});
