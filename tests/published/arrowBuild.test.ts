import { describe, expect, it } from 'vitest';
import { buildArrow, frontOfCentre } from '../../core/arrow/index.ts';
import { exampleBundle, unmeasured, type ArrowSet } from '../../core/model/index.ts';

const inch = 0.0254;
const grain = 6.479891e-5;
const blank: ArrowSet = { ...exampleBundle.arrowSet, ...unmeasured.arrowSet };

const built = (parts: Partial<ArrowSet>) => {
  const build = buildArrow({ ...blank, ...parts });
  if (!build.ok) throw new Error(build.problem.sentence);
  return build.value;
};

describe('an arrow from its parts', () => {
  it('has 10 % front-of-centre when 28 in of arrow balance at 16.8 in: 100 (16.8 − 14)/28 [ASTM F1435, by hand]', () => {
    expect(100 * frontOfCentre(16.8 * inch, 28 * inch)).toBeCloseTo(10, 9);
    const measured = built({
      length: 28 * inch,
      linearDensity: (8 * grain) / inch,
      pointMass: 100 * grain,
      balance: 16.8 * inch,
    });
    expect((measured.measured.foc ?? 0) * 100).toBeCloseTo(10, 9);
  });

  it('balances 0.70 m of 20 g/m with 6 g at its end at 0.455 m, 15 % front-of-centre, 1.0872 g m² [by hand]', () => {
    // (14 × 0.35 + 6 × 0.70)/20 = 0.455; (0.455 − 0.35)/0.70 = 0.15. Shaft 14 (0.105² + 0.70²/12) + point 6 (0.245² + 0.045²/12) g m².
    const { mass, balance, foc, inertia } = built({ length: 0.7, linearDensity: 0.02, pointMass: 0.006 });
    expect(mass).toBeCloseTo(0.02, 12);
    expect(balance).toBeCloseTo(0.455, 12);
    expect(foc).toBeCloseTo(0.15, 12);
    expect(inertia * 1000).toBeCloseTo(1.08718, 5);
  });

  it('sums a whole arrow in grains and inches [by hand]', () => {
    // 29 in of 10.6 gr/in (307.4 gr at 14.5 in), point 90 gr at 29, insert 20 gr half-way in its last 20 mm (28.606), fletching of 8 gr from
    // 1 to 3 in (at 2), nock 8 gr 3 mm ahead of its throat (0.118).
    const { mass, balance } = built({
      material: 'aluminium',
      length: 29 * inch,
      linearDensity: (10.6 * grain) / inch,
      pointMass: 90 * grain,
      insertMass: 20 * grain,
      fletchingMass: 8 * grain,
      vaneFromThroat: 1 * inch,
      vaneLength: 2 * inch,
      nockMass: 8 * grain,
    });
    expect(mass / grain).toBeCloseTo(433.4, 9);
    const moments = 307.4 * 14.5 + 90 * 29 + 20 * (29 - 10 / 25.4) + 8 * 2 + 8 * (3 / 25.4);
    expect(balance / inch).toBeCloseTo(moments / 433.4, 9);
  });

  it.each([
    // Front-of-centre of ordinary arrows, in percent: common practice, wood from memory. Ordinary kits of parts, from memory.
    {
      what: 'aluminium, 20/64 in by 0.016 in with 77 gr in front',
      low: 7,
      high: 9,
      parts: {
        material: 'aluminium',
        length: 29 * inch,
        diameter: (20 / 64) * inch,
        wall: 0.016 * inch,
        pointMass: 77 * grain,
        nockMass: 8 * grain,
        fletchingMass: 9 * grain,
      },
    },
    {
      what: 'wood, 11/32 in with a 100 gr point and feathers',
      low: 7,
      high: 12,
      parts: {
        material: 'wood',
        length: 28 * inch,
        linearDensity: (11.3 * grain) / inch,
        pointMass: 100 * grain,
        nockMass: 6 * grain,
        fletchingMass: 9 * grain,
      },
    },
  ] as const)('puts $what between $low and $high % front-of-centre [common practice]', ({ parts, low, high }) => {
    const percent = 100 * built(parts).foc;
    expect(percent).toBeGreaterThan(low);
    expect(percent).toBeLessThan(high);
  });
});
