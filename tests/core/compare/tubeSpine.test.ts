import { describe, expect, it } from 'vitest';
import { compareSetups } from '../../../core/compare/index.ts';
import { setupFigures } from '../../../core/compare/setupFigures.ts';
import { exampleBundle, type ArrowSet, type ShotBundle } from '../../../core/model/index.ts';

const inch = 0.0254;

const tubes = (change: Partial<ArrowSet> = {}): ShotBundle => ({
  ...exampleBundle,
  arrowSet: {
    ...exampleBundle.arrowSet,
    material: 'aluminium',
    deflection: null,
    linearDensity: null,
    weighed: null,
    diameter: (18 / 64) * inch,
    wall: 0.016 * inch,
    ...change,
  },
});
const figure = (bundle: ShotBundle, key: string) => {
  const found = setupFigures(bundle).find((one) => one.key === key);
  if (found === undefined) throw new Error(`No figure ${key}.`);
  return found;
};

describe('a set-up whose tube nobody spined', () => {
  it('has its spine, stiffness, bending and mass from the geometry, doubted by wall, diameter and alloy', () => {
    // 18/64 in by .016 in: 0.72 to 0.75 in [practice notes, computed independently].
    const spine = figure(tubes(), 'deflection');
    expect(spine.value ?? 0).toBeGreaterThan(0.72 * inch);
    expect(spine.value ?? 0).toBeLessThan(0.75 * inch);
    expect([...spine.doubts.keys()].some((name) => name === 'modulus of aluminium')).toBe(true);
    expect(spine.doubts.size).toBe(3);
    for (const key of ['stiffness', 'frequency', 'mass']) expect(figure(tubes(), key).value).not.toBeNull();
  });

  it('waits for the spine in a few words where there is no wall', () => {
    expect(figure(tubes({ wall: null }), 'deflection').note).toBe('Waits for the spine deflection.');
  });

  it('shares the alloy with another such set-up, so that their difference is surer than either', () => {
    const [one, other] = [tubes(), tubes({ wall: 0.017 * inch })];
    const row = compareSetups(one, other).find(({ key }) => key === 'stiffness');
    const alloy = Math.abs(figure(one, 'stiffness').doubts.get('modulus of aluminium') ?? 0);
    const half = figure(one, 'stiffness').half ?? 0;
    expect(alloy).toBeGreaterThan(0);
    expect(row?.difference ?? 0).toBeGreaterThan(0);
    // Both walls and the diameters stay in doubt; most of the alloy does not.
    expect(row?.noise ?? Number.POSITIVE_INFINITY).toBeLessThan(Math.SQRT2 * half);
  });
});
