import fc from 'fast-check';
import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { bareAndFletched, flightBasis } from '../../../core/aim/index.ts';
import { buildArrow } from '../../../core/arrow/index.ts';
import { exampleBundle, type Bundle } from '../../../core/model/index.ts';
import { inside } from '../inside.ts';

const degree = Math.PI / 180;
const told = <T>(found: { ok: true; value: T } | { ok: false; problem: { sentence: string } }): T => {
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};
const basis = told(flightBasis(exampleBundle));
const flown = (angle: number, distances: readonly number[] = [18], bundle: Bundle = exampleBundle) =>
  told(bareAndFletched(bundle, basis, angle, distances));
const bands = (one: ReturnType<typeof flown>) =>
  one.at.flatMap(({ bare, fletched, apart }) => [bare.angle, bare.aside, fletched.angle, fletched.aside, apart]);

describe('a bare and a fletched arrow of the same loose', () => {
  it('fly alike when the nose is on the path', () => {
    for (const band of bands(flown(0, [5, 18, 30]))) expect([band.low, band.value, band.high].map(Math.abs)).toEqual([0, 0, 0]);
  });

  it('do the mirror image when the nose points to the other side', () => {
    fc.assert(
      fc.property(inside(0.001, 0.06), inside(1, 40), (angle, far) => {
        const [right, left] = [bands(flown(angle, [far])), bands(flown(-angle, [far]))];
        right.forEach((band, index) => {
          expect(left[index]?.value).toBeCloseTo(-band.value, 12);
          expect(left[index]?.low).toBeCloseTo(-band.high, 12);
        });
      }),
    );
  });

  it('begin together, with bands that hold their own middle', () => {
    const all = flown(degree, [0, 3, 10, 18, 30]);
    expect(bands({ ...all, at: all.at.slice(0, 1) })[4]).toEqual({ value: 0, low: 0, high: 0 });
    for (const { low, value, high } of bands(all)) {
      expect(low).toBeLessThanOrEqual(value);
      expect(value).toBeLessThanOrEqual(high);
    }
    // The vanes turn the nose back, so the fletched one's is nearer to its path before the first swing is over.
    expect(all.at[2]!.fletched.angle.value).toBeLessThan(all.at[2]!.bare.angle.low);
  });

  it('carry the bare shaft as far aside as the equations do, over all that is not known of it (odex 2.0.4 at 1e-12)', () => {
    const build = told(buildArrow({ ...exampleBundle.arrowSet, fletchingMass: 0 }));
    const [angle, far, diameter] = [degree, 18, basis.diameter.value];
    const area = (Math.PI * diameter ** 2) / 4;
    const rod = (1.2 * 4 * build.length * angle) / (Math.PI * diameter);
    const asides = [0, 1, 2].flatMap((share) =>
      [0, 0.5, 1].map((place) => {
        const slope = 2 + share * rod;
        const at = build.balance + place * (build.wholeLength / 2 - build.balance);
        const half = (basis.air * area * slope) / 2;
        const turning = (half * (build.balance - at)) / build.inertia;
        const damping = (half * ((at - build.balance) ** 2 + build.wholeLength ** 2 / 12)) / build.inertia;
        const solver = new Solver(4);
        solver.absoluteTolerance = 1e-12;
        solver.relativeTolerance = 1e-12;
        const rates = (_s: number, [nose = 0, turn = 0, path = 0]: number[]) => [
          turn,
          -damping * turn - turning * (nose - path),
          (half / build.mass) * (nose - path),
          path,
        ];
        return solver.solve(rates, 0, [angle, 0, 0, 0], far).y[3] ?? NaN;
      }),
    );
    const { aside } = flown(angle, [far]).at[0]!.bare;
    expect(Math.abs(aside.low - Math.min(...asides))).toBeLessThan(1e-7);
    expect(Math.abs(aside.high - Math.max(...asides))).toBeLessThan(1e-7);
  });

  it('say what was not on record, and no longer once it is', () => {
    const { arrowSet } = exampleBundle;
    expect(flown(degree).assumed).toEqual(['number of vanes', 'length of the fletching', 'height of the vanes']);
    const measured = { ...exampleBundle, arrowSet: { ...arrowSet, vaneCount: 3, vaneLength: 0.05 } };
    expect(flown(degree, [18], measured).assumed).toEqual(['height of the vanes']);
    const four = flown(degree, [18], { ...exampleBundle, arrowSet: { ...arrowSet, vaneCount: 4 } });
    expect(four.vanes.high / flown(degree).vanes.high).toBeCloseTo(4 / 3, 12);
    expect(four.swing!.high).toBeLessThan(flown(degree).swing!.high);
  });

  it('are refused with a sentence for a nose too far off, and name the figure of the arrow that is missing', () => {
    expect(bareAndFletched(exampleBundle, basis, 0.2, [18])).toMatchObject({ ok: false });
    expect(bareAndFletched(exampleBundle, basis, NaN, [18])).toMatchObject({ ok: false });
    expect(bareAndFletched(exampleBundle, basis, degree, [NaN])).toMatchObject({ ok: false });
    const noPoint = { ...exampleBundle, arrowSet: { ...exampleBundle.arrowSet, pointMass: null } };
    expect(bareAndFletched(noPoint, basis, degree, [18])).toMatchObject({ ok: false, problem: { field: 'pointMass' } });
  });
});
