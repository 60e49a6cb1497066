import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadAtTarget } from '../../../core/dozen/index.ts';
import { exampleBundle, type Bundle } from '../../../core/model/index.ts';
import { changed, grain, setOf, valueOf } from './arrows.ts';

const bundleOf = (massesGr: readonly number[], change: Partial<Bundle['bow']> = {}): Bundle => ({
  ...exampleBundle,
  bow: { ...exampleBundle.bow, ...change },
  arrowSet: setOf(massesGr.map((mass) => [mass, 720] as const)),
});

describe('what the spread in mass does at the target', () => {
  it('grows with the spread and with the distance, and is nought for arrows that weigh the same', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10 }), fc.integer({ min: 10, max: 60 }), (more, distance) => {
        const height = (masses: readonly number[], at: number) => valueOf(spreadAtTarget(bundleOf(masses), at)).fromMass.value;
        const here = height([320, 320 + more], distance);
        expect(here).toBeGreaterThan(0);
        expect(height([320, 321 + more], distance)).toBeGreaterThan(here);
        expect(height([320, 320 + more], distance + 5)).toBeGreaterThan(here);
      }),
      { numRuns: 15 },
    );
    const same = valueOf(spreadAtTarget(bundleOf([320, 320, 320]), 50));
    expect(same.fromMass.value).toBeCloseTo(0, 9);
    expect(same.fromMassSd.value).toBeCloseTo(0, 9);
  });

  it('holds its value between the ends of its band, and the deviation below the whole', () => {
    const { fromMass, fromMassSd, weighed, lightest, heaviest } = valueOf(spreadAtTarget(bundleOf([320, 316, 330, 324]), 50));
    expect(fromMass.low).toBeLessThan(fromMass.value);
    expect(fromMass.value).toBeLessThan(fromMass.high);
    expect(fromMassSd.value).toBeLessThan(fromMass.value);
    expect([weighed, lightest, heaviest]).toEqual([4, 2, 3]);
    // s of 316, 320, 324 and 330 gr is 5.972 gr of 14.
    expect(fromMassSd.value / fromMass.value).toBeCloseTo(5.97216 / 14, 5);
  });

  it('does not care for the order of the arrows', () => {
    const [one, other] = [bundleOf([320, 316, 330]), bundleOf([330, 320, 316])].map((bundle) =>
      valueOf(spreadAtTarget(bundle, 30)),
    );
    expect(one?.fromMass).toEqual(other?.fromMass);
  });

  it('says of spine that it cannot tell', () => {
    expect(valueOf(spreadAtTarget(bundleOf([320, 316]), 30)).fromSpine).toContain('cannot be told');
  });

  it('is refused for one arrow, for none weighed, for a compound, and for a distance that cannot be', () => {
    expect(spreadAtTarget(bundleOf([320]), 30).ok).toBe(false);
    expect(spreadAtTarget(exampleBundle, 30).ok).toBe(false);
    const two = bundleOf([320, 330]);
    expect(spreadAtTarget({ ...two, arrowSet: changed(two.arrowSet, { 1: { mass: null } }) }, 30).ok).toBe(false);
    expect(spreadAtTarget(bundleOf([320, 330], { bowKind: 'compound' }), 30).ok).toBe(false);
    for (const bad of [Number.NaN, 0, -5, 1000, Number.POSITIVE_INFINITY]) expect(spreadAtTarget(two, bad).ok).toBe(false);
  });

  it('takes the virtual mass from chronographed arrows: the more rides with the arrow, the less its own mass matters', () => {
    const { setup } = exampleBundle;
    // 45 m/s for the example's 326 gr with either virtual mass.
    const own = 326 * grain;
    const chronograph = (virtual: number) =>
      [0.018, own, 0.024, 0.03].map((mass) => ({ mass, speed: 45 * Math.sqrt((own + virtual) / (mass + virtual)) }));
    const height = (virtual: number) =>
      valueOf(spreadAtTarget({ ...bundleOf([320, 330]), setup: { ...setup, chronograph: chronograph(virtual) } }, 18)).fromMass
        .value;
    // Free fall goes with (m + K)/2W, so that the two differ as 1/(m + K) does; drag makes little of it at 18 m.
    expect(height(0.012) / height(0.004) / ((own + 0.004) / (own + 0.012))).toBeCloseTo(1, 1);
    expect(height(0.012)).toBeLessThan(height(0.004));
    const compound = bundleOf([320, 330], { bowKind: 'compound' });
    expect(spreadAtTarget({ ...compound, setup: { ...setup, chronograph: chronograph(0.008) } }, 30).ok).toBe(true);
  });
});
