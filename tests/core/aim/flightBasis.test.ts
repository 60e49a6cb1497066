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
  it('is ½ ρ C_D A / m on the shaft’s cross-section with C_D of 1.5 to 2.6, for a measured shaft', () => {
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

describe('the drag of a flight', () => {
  const withSpeeds = (...pairs: (readonly [distance: number, speed: number])[]): Bundle => ({
    ...exampleBundle,
    setup: {
      ...setup,
      settings: { ...setup.settings, arrowSpeed: 55 },
      flightSpeeds: pairs.map(([distance, speed]) => ({ distance, speed })),
    },
  });

  it('is measured once two speeds along the flight tell it better than the coefficients of others', () => {
    const measured = basisOf(withSpeeds([0, 55], [60, 55 * Math.exp(-0.1)]));
    expect(measured.dragFrom).toBe('speeds');
    expect(measured.drag.value).toBeCloseTo(0.1 / 60, 12);
    // C_D = 2 k m/(ρ A), by hand.
    const area = (Math.PI * 0.0058 ** 2) / 4;
    expect(measured.coefficient.value).toBeCloseTo(((2 * 0.1) / 60) * (measured.mass / (measured.air * area)), 9);
  });

  it('stays the band where the two speeds were read too near to each other, and says that they tell less', () => {
    const near = basisOf(withSpeeds([0, 55], [8, 54.3]));
    expect([near.dragFrom, near.unused]).toEqual(['band', 'wider']);
    expect(near.drag).toEqual(basisOf(withSpeeds()).drag);
  });

  it('stays the band where a reading does not fit, or no arrow has such a coefficient, and keeps what the speeds say', () => {
    const [ft, yd] = [0.3048, 0.9144];
    const odd = basisOf(withSpeeds([0, 287 * ft], [20 * yd, 277 * ft], [30 * yd, 266 * ft], [40 * yd, 255 * ft]));
    expect(odd.dragFrom).toBe('band');
    expect(odd.along?.ok === true && odd.along.value.inconsistent).toBe(0);
    const absurd = basisOf(withSpeeds([0, 55], [50, 55 * Math.exp(-0.4)]));
    expect([absurd.dragFrom, absurd.unused]).toEqual(['band', 'no arrow']);
    const rising = basisOf(withSpeeds([0, 55], [50, 57]));
    expect([rising.dragFrom, rising.along?.ok]).toEqual(['band', false]);
  });

  it('is as much less as the air is thinner, for one and the same boundary layer', () => {
    const air = { temperature: null, pressure: null, altitude: 2500, humidity: null };
    const [high, low] = [flightBasis(withSpeeds(), air), basisOf(withSpeeds())];
    if (!high.ok) throw new Error(high.problem.sentence);
    expect([high.value.airGiven, low.airGiven]).toEqual([true, false]);
    expect(high.value.layer).toBe(low.layer);
    expect(high.value.drag.value / low.drag.value).toBeCloseTo(high.value.air / low.air, 12);
    expect(high.value.air).toBeLessThan(0.82 * low.air);
  });

  it('can come down to a smooth layer’s for how far an arrow could fly, whatever is known of it at a target’s distance', () => {
    const thick: Bundle = { ...withSpeeds(), arrowSet: { ...arrowSet, diameter: 0.0093 } };
    const { layer, drag, leastDrag, mass, air } = basisOf(thick);
    expect(layer).toBe('turbulent');
    // Miyazaki 2013: 1.5 with a laminar boundary layer.
    expect(leastDrag).toBeCloseTo((0.5 * air * 1.5 * Math.PI * (0.0093 / 2) ** 2) / mass, 12);
    expect(leastDrag).toBeLessThan(drag.low);
    const measured = basisOf(withSpeeds([0, 55], [60, 55 * Math.exp(-0.15)]));
    expect(measured.dragFrom).toBe('speeds');
    expect(measured.leastDrag).toBeLessThan(measured.drag.low);
  });

  it('refuses air that cannot be with a sentence', () => {
    const found = flightBasis(exampleBundle, { temperature: null, pressure: 101325, altitude: 3000, humidity: null });
    expect(!found.ok && found.problem.field).toBe('airPressure');
  });
});
