import { describe, expect, it } from 'vitest';
import { flightBasis } from '../../../core/aim/index.ts';
import { exampleBundle, type Bundle } from '../../../core/model/index.ts';

const basisOf = (bundle: Bundle) => {
  const basis = flightBasis(bundle);
  if (!basis.ok) throw new Error(basis.problem.sentence);
  return basis.value;
};
const { arrowSet, setup } = exampleBundle;

describe('what a flight rests on', () => {
  it('is the drag of a cylinder across the flow, ½ ρ C_D A / m with C_D of 1.5 to 2.6, for a measured shaft', () => {
    const { drag, mass, air, diameter } = basisOf(exampleBundle);
    // Miyazaki 2013: a laminar boundary layer gives 1.5, a turbulent one 2.6.
    const k = (coefficient: number) => (0.5 * air * coefficient * Math.PI * (diameter.value / 2) ** 2) / mass;
    expect(diameter).toMatchObject({ measured: true, low: diameter.value, high: diameter.value });
    expect(drag.low).toBeCloseTo(k(1.5), 12);
    expect(drag.high).toBeCloseTo(k(2.6), 12);
  });

  it('has a wider band of drag around a shaft that nobody measured, and says so', () => {
    const assumed = basisOf({ ...exampleBundle, arrowSet: { ...arrowSet, diameter: null } });
    const known = basisOf(exampleBundle);
    expect(assumed.diameter.measured).toBe(false);
    expect(assumed.drag.low).toBeLessThan(known.drag.low);
    expect(assumed.drag.high).toBeGreaterThan(known.drag.high);
  });

  it('takes the eye as measured, else by the anchor', () => {
    const withForm = (form: Partial<Bundle['setup']['form']>) =>
      basisOf({ ...exampleBundle, setup: { ...setup, form: { ...setup.form, ...form } } }).eyeHeight;
    expect(withForm({ eyeHeight: 0.12 })).toEqual({ value: 0.12, measured: true });
    const [jaw, face] = [
      withForm({ eyeHeight: null, anchor: 'under the jaw' }),
      withForm({ eyeHeight: null, anchor: 'side of the face' }),
    ];
    // Common practice: an anchor under the jaw stands farther below the eye than one at the side of the face.
    expect(jaw.value).toBeGreaterThan(face.value);
    expect([jaw.measured, face.measured]).toEqual([false, false]);
  });

  it('names the figure that is missing', () => {
    const found = flightBasis({ ...exampleBundle, arrowSet: { ...arrowSet, weighed: null, linearDensity: null } });
    expect(found.ok).toBe(false);
    expect(!found.ok && found.problem.sentence).toContain('mass');
  });
});
