import { describe, expect, it } from 'vitest';
import { spreadAtTarget, spreadOf, tolerancesOf } from '../../core/dozen/index.ts';
import { exampleBundle, type NumberedArrow } from '../../core/model/index.ts';

const inch = 0.0254;
const grain = 6.479891e-5;

const weighed = (number: number, massGr: number): NumberedArrow => ({
  number,
  mass: massGr * grain,
  spines: [],
  straightness: null,
  lookOver: null,
  lookedOver: null,
  setAside: false,
  note: '',
});

describe('a numbered set against what is known', () => {
  it('finds mean 10000002 and standard deviation 1 of 10000001, 10000003 and 10000002 [NIST StRD, NumAcc1]', () => {
    const spread = spreadOf([10000001, 10000003, 10000002]);
    expect(spread?.mean).toBe(10000002);
    expect(spread?.sd).toBe(1);
  });

  it('finds the certified mean 1000000.2 and deviation 0.1 [NIST StRD, NumAcc3: 1000000.2, then 1000000.1 and 1000000.3 five hundred times]', () => {
    const spread = spreadOf([1000000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1000000.1 : 1000000.3))]);
    expect(spread?.mean).toBeCloseTo(1000000.2, 8);
    expect(spread?.sd).toBeCloseTo(0.1, 9);
  });

  // How a dozen is sorted, practice notes 4: wood for the club is common practice, the other rows from memory.
  it.each([
    { material: 'wood', matching: 'club', massGr: 10, spine: 2.5, straightnessIn: 1 / 32, mark: 'common practice' },
    { material: 'wood', matching: 'match', massGr: 5, spine: 2, straightnessIn: 1 / 32, mark: 'from memory' },
    { material: 'carbon', matching: 'club', massGr: 3, spine: 0.01 * inch, straightnessIn: 0.006, mark: 'from memory' },
    { material: 'aluminium', matching: 'club', massGr: 3, spine: 0.01 * inch, straightnessIn: 0.006, mark: 'from memory' },
    { material: 'carbon', matching: 'match', massGr: 1, spine: 0.01 * inch, straightnessIn: 0.003, mark: 'from memory' },
  ] as const)(
    'sorts $material for a $matching to ± $massGr gr [$mark]',
    ({ material, matching, massGr, spine, straightnessIn, mark }) => {
      const { mass, straightness, source, ...rest } = tolerancesOf(material, matching);
      expect(mass / grain).toBeCloseTo(massGr, 9);
      expect(rest.spine).toBeCloseTo(spine, 9);
      expect(straightness / inch).toBeCloseTo(straightnessIn, 9);
      expect(source).toBe(mark);
    },
  );

  // 316, 320 and 330 gr at 50 m/s for 326 gr, virtual mass 6 g, 5.8 mm, drag coefficient 2.05, 1.2216 kg/m³, eye 11 cm up: flown with a plain
  // fourth-order integrator in another language, the sight set for 322 gr. Computed independently.
  it.each([
    { distance: 18, height: 0.021155 },
    { distance: 30, height: 0.058641 },
    { distance: 50, height: 0.162653 },
    { distance: 70, height: 0.319301 },
  ])('parts 316 from 330 gr by $height m at $distance m [computed independently]', ({ distance, height }) => {
    const { arrowSet, setup } = exampleBundle;
    const own = 326 * grain;
    const chronograph = [0.018, own, 0.025, 0.03].map((mass) => ({
      mass,
      speed: 50 * Math.sqrt((own + 0.006) / (mass + 0.006)),
    }));
    const spread = spreadAtTarget(
      {
        ...exampleBundle,
        arrowSet: { ...arrowSet, arrows: [weighed(1, 316), weighed(2, 320), weighed(3, 330)] },
        setup: { ...setup, chronograph },
      },
      distance,
    );
    if (!spread.ok) throw new Error(spread.problem.sentence);
    expect(Math.abs(spread.value.fromMass.value / height - 1)).toBeLessThan(0.001);
    expect([spread.value.lightest, spread.value.heaviest]).toEqual([1, 3]);
  });
});
