import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  estimatedSpeed,
  forceDrawOf,
  forceDrawCurve,
  launchSpeed,
  looseFromCurve,
  powerStroke,
  setupSpeed,
  storedEnergy,
  strokeOf,
} from '../../../core/bow/index.ts';
import { exampleBundle, type Result } from '../../../core/model/index.ts';

const inch = 0.0254;
const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

describe('power stroke', () => {
  it('is AMO draw less 1 3/4 in less brace height: 28 in at 8 1/2 in leaves 17 3/4 in [ASTM F1880]', () => {
    expect(valueOf(powerStroke(28 * inch, 8.5 * inch)) / inch).toBeCloseTo(17.75, 9);
  });

  it('rests on the middle of the range when the brace height was not measured, and says so', () => {
    const guessed = valueOf(strokeOf(exampleBundle.bow, exampleBundle.archer, { braceHeight: null }));
    expect(guessed.braceFrom).toBe('middle of its range');
    expect(guessed.braceHeight / inch).toBeCloseTo(8.75, 9);
  });

  it('begins where the force-draw curve begins, whatever of the brace height is on record', () => {
    for (const forceDrawBrace of [null, 0.2])
      for (const braceHeight of [null, 0.21]) {
        const bow = { ...exampleBundle.bow, forceDrawBrace };
        const settings = { ...exampleBundle.setup.settings, braceHeight };
        const { stroke, brace } = valueOf(forceDrawOf({ ...exampleBundle, bow, setup: { ...exampleBundle.setup, settings } }));
        const said = valueOf(strokeOf(bow, exampleBundle.archer, settings));
        expect([said.stroke, said.braceHeight]).toEqual([stroke, brace]);
        expect(said.braceFrom).toBe(forceDrawBrace === null && braceHeight === null ? 'middle of its range' : 'measured');
      }
  });

  it('refuses draws and braces that leave no stroke, and figures that cannot be', () => {
    expect(powerStroke(14 * inch, 10 * inch).ok).toBe(false);
    for (const bad of [Number.NaN, 0, -1, 99])
      expect(powerStroke(bad, 8 * inch).ok || powerStroke(28 * inch, bad).ok).toBe(false);
  });
});

describe('energy and curve', () => {
  it('gives the energy that the fullness says, by the area under the curve', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.34, max: 0.66, noNaN: true }), (fullness) => {
        const curve = forceDrawCurve(180, 0.45, fullness);
        // Simpson's rule is exact for a parabola.
        const area = (0.45 / 6) * (curve(0) + 4 * curve(0.225) + curve(0.45));
        expect(area / storedEnergy(180, 0.45, fullness)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('gives all its energy to the arrow and the virtual mass', () => {
    const loose = looseFromCurve(forceDrawCurve(180, 0.45, 0.6), 0.45, 0.026, 0.9);
    const speed = launchSpeed({ mass: 0.02, energy: storedEnergy(180, 0.45, 0.6), virtualMass: 0.006, hysteresis: 0.9 });
    expect(loose.speed / speed).toBeCloseTo(1, 8);
  });

  it('refuses curves that cannot drive an arrow', () => {
    expect(() => forceDrawCurve(180, 0.45, 0.8)).toThrow(RangeError);
    expect(() => looseFromCurve(() => 0, 0.45, 0.026, 1)).toThrow(RangeError);
    expect(() => looseFromCurve((draw) => (draw > 0.4 ? 10 : -50), 0.45, 0.026, 1)).toThrow(RangeError);
    expect(() => looseFromCurve(() => Number.NaN, 0.45, 0.026, 1)).toThrow(RangeError);
    expect(() => storedEnergy(180, 0, 0.5)).toThrow(RangeError);
  });
});

describe('launch speed', () => {
  const figures = { mass: 0.02, energy: 45, virtualMass: 0.006, hysteresis: 0.95 };

  it('rises with energy and hysteresis factor, falls with either mass', () => {
    const speed = launchSpeed(figures);
    expect(launchSpeed({ ...figures, energy: 46 })).toBeGreaterThan(speed);
    expect(launchSpeed({ ...figures, hysteresis: 1 })).toBeGreaterThan(speed);
    expect(launchSpeed({ ...figures, mass: 0.021 })).toBeLessThan(speed);
    expect(launchSpeed({ ...figures, virtualMass: 0.007 })).toBeLessThan(speed);
  });

  it('throws a RangeError for figures that cannot be', () => {
    for (const bad of [Number.NaN, -1, Number.POSITIVE_INFINITY])
      for (const key of ['mass', 'energy', 'virtualMass', 'hysteresis'] as const)
        expect(() => launchSpeed({ ...figures, [key]: bad })).toThrow(RangeError);
    expect(() => launchSpeed({ ...figures, hysteresis: 1.1 })).toThrow(RangeError);
  });

  it('is estimated with a band that widens with the energy’s', () => {
    const sure = valueOf(estimatedSpeed('take-down recurve', { value: 41, low: 41, high: 41 }, 0.02));
    const unsure = valueOf(estimatedSpeed('take-down recurve', { value: 41, low: 38, high: 44 }, 0.02));
    expect(sure.low).toBeLessThan(sure.value);
    expect(sure.value).toBeLessThan(sure.high);
    expect(unsure.low).toBeLessThan(sure.low);
    expect(unsure.high).toBeGreaterThan(sure.high);
  });

  it('stays within efficiencies that have been measured: .60 to .85 for recurves, .5 to .8 for straight limbs [from memory]', () => {
    for (const [kind, fullness, least, most] of [
      ['take-down recurve', 0.581, 0.6, 0.85],
      ['longbow', 0.51, 0.5, 0.8],
    ] as const) {
      const energy = storedEnergy(170, 0.45, fullness);
      const { low, high } = valueOf(estimatedSpeed(kind, { value: energy, low: energy, high: energy }, 0.022));
      const efficiency = (speed: number) => (0.5 * 0.022 * speed ** 2) / energy;
      expect(efficiency(low)).toBeGreaterThan(least);
      expect(efficiency(high)).toBeLessThan(most);
    }
  });

  it('is not estimated for a compound', () => {
    const refused = estimatedSpeed('compound', { value: 50, low: 50, high: 50 }, 0.025);
    expect(refused.ok ? '' : refused.problem.sentence).toContain('chronograph');
  });

  it('is the chronograph’s whenever there is a reading, else estimated', () => {
    const { setup } = exampleBundle;
    const withSpeed = (arrowSpeed: number) => ({
      ...exampleBundle,
      setup: { ...setup, settings: { ...setup.settings, arrowSpeed } },
    });
    const measured = valueOf(setupSpeed(withSpeed(54)));
    expect(measured).toMatchObject({ value: 54, from: 'measured' });
    const guessed = valueOf(setupSpeed(exampleBundle));
    expect(guessed.from).toBe('estimated');
    // 33 lb, 326 gr: some 160 to 185 ft/s from memory.
    expect(guessed.value).toBeGreaterThan(160 * 0.3048);
    expect(guessed.value).toBeLessThan(185 * 0.3048);
    expect(setupSpeed(withSpeed(Number.NaN)).ok).toBe(false);
  });

  it('says what is missing', () => {
    const noArrow = { ...exampleBundle.arrowSet, weighed: null, pointMass: null };
    const refused = setupSpeed({ ...exampleBundle, arrowSet: noArrow });
    expect(refused.ok ? '' : refused.problem.sentence).toContain('point mass');
  });
});
