import { describe, expect, it } from 'vitest';
import { dormandPrinceStep, type OdeSystem } from '../../../core/flight/dormandPrinceStep.ts';
import { integrate, readDense } from '../../../core/flight/index.ts';

// Problems with closed solutions, as in any textbook.
const decay: OdeSystem = { size: 1, rate: (_t, y, out) => void (out[0] = -y[0]!) };
const circle: OdeSystem = {
  size: 2,
  rate: (_t, y, out) => {
    out[0] = -y[1]!;
    out[1] = y[0]!;
  },
};
const tight = { absoluteTolerance: 1e-10, relativeTolerance: 1e-10, firstStep: 0.1 };

describe('the Dormand-Prince method', () => {
  it('is of fifth order: half the step leaves a thirty-second of the error', () => {
    const errorWith = (steps: number) => {
      const stepper = dormandPrinceStep(circle, [1, 0], 1, 1);
      for (let step = 0; step < steps; step++) {
        stepper.attempt((step * 2) / steps, 2 / steps);
        stepper.accept(2 / steps, []);
      }
      return Math.hypot(stepper.state()[0]! - Math.cos(2), stepper.state()[1]! - Math.sin(2));
    };
    expect(errorWith(10) / errorWith(20)).toBeGreaterThan(28);
    expect(errorWith(10) / errorWith(20)).toBeLessThan(37);
  });

  it('follows decay and a circle to their closed solutions at every step and between the steps', () => {
    for (const [system, start, exact] of [
      [decay, [1], (t: number) => [Math.exp(-t)]],
      [circle, [1, 0], (t: number) => [Math.cos(t), Math.sin(t)]],
    ] as const) {
      const solution = integrate(system, start, { ...tight, lastTime: 7 });
      expect(solution.steps).toBeGreaterThan(10);
      expect(solution.times.at(-1)).toBe(7);
      for (let step = 0; step < solution.steps; step++)
        for (const share of [0, 0.25, 0.5, 0.9, 1]) {
          const t = solution.times[step]! + share * (solution.times[step + 1]! - solution.times[step]!);
          exact(t).forEach((value, i) => expect(Math.abs(readDense(solution, step, i, share) - value)).toBeLessThan(3e-8));
        }
    }
  });

  it('reads a polynomial of fourth degree between the steps without error', () => {
    const quartic: OdeSystem = { size: 1, rate: (t, _y, out) => void (out[0] = 4 * t ** 3 - 3 * t ** 2) };
    const solution = integrate(quartic, [1], { absoluteTolerance: 1, relativeTolerance: 1, firstStep: 2, lastTime: 2 });
    expect(solution.steps).toBe(1);
    for (const share of [0.1, 0.35, 0.5, 0.8]) {
      const t = 2 * share;
      expect(readDense(solution, 0, 0, share)).toBeCloseTo(1 + t ** 4 - t ** 3, 12);
    }
  });

  it('shortens a first step that is far too long, and stops when it is told to', () => {
    const solution = integrate(decay, [1], { ...tight, firstStep: 50, lastTime: 50, enough: (_t, y) => y[0]! < 0.5 });
    expect(readDense(solution, solution.steps - 1, 0, 0)).toBeGreaterThanOrEqual(0.5);
    expect(readDense(solution, solution.steps - 1, 0, 1)).toBeLessThan(0.5);
  });

  it('gives up with an error, not for ever, on a right-hand side that is no number', () => {
    const broken: OdeSystem = { size: 1, rate: (_t, _y, out) => void (out[0] = NaN) };
    expect(() => integrate(broken, [1], { ...tight, lastTime: 1 })).toThrow(RangeError);
  });
});
