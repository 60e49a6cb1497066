import { describe, expect, it } from 'vitest';
import {
  examplePriors,
  exampleScale,
  fitMarks,
  launchSlope,
  movedMarks,
  readingAt,
  turningDistance,
} from '../../core/aim/index.ts';
import { dragParameter } from '../../core/flight/index.ts';
import { valueOf } from '../core/group/shots.ts';

// Computed independently: 57 m/s, eye 0.12 m above the arrow, sight radius 0.85 m, 20 g, 5.5 mm, C_D 1.5 in air of 1.225 kg/m³ [mm].
const independent = [
  [18, 29.083],
  [30, 42.827],
  [50, 69.001],
  [70, 97.229],
] as const;
const k = dragParameter(1.5, 0.0055, 0.02, 1.225);
const about = (value: number, share: number) => ({ value, low: value * (1 - share), high: value * (1 + share) });

describe('Sight marks', () => {
  it.each(independent)('for %i m stand %f mm below the level arrow', (distance, millimetres) => {
    expect(Math.abs(850 * launchSlope(57, k, 0.12, distance) - millimetres)).toBeLessThan(1e-3);
  });

  it('that are exact give back the figures they were computed from, and each one the others', () => {
    const marks = independent.map(([distance, reading]) => ({ distance, reading: reading + 10, shots: 10_000 }));
    const priors = {
      ...examplePriors,
      speed: about(57.4, 0.07),
      k: about(k, 0.001),
      eyeHeight: about(0.12, 0.001),
      sightRadius: about(0.85, 0.001),
    };
    const { figures, judged, wider, notes } = valueOf(fitMarks(marks, exampleScale, priors));
    expect(Math.abs(figures.speed.value - 57)).toBeLessThan(0.02);
    expect(Math.abs(figures.zero.value - 10)).toBeLessThan(0.03);
    expect(wider).toBe(1);
    expect(notes).toEqual([]);
    expect(judged).toHaveLength(4);
    for (const { reading, expected } of judged) expect(Math.abs((expected?.value ?? NaN) - reading)).toBeLessThan(0.1);
  });

  it('fitted at 18 and 70 m give those at 30 and 50 m within their intervals', () => {
    const two = independent.filter(([distance]) => distance === 18 || distance === 70);
    const fit = valueOf(
      fitMarks(
        two.map(([distance, reading]) => ({ distance, reading })),
        exampleScale,
        { ...examplePriors, k: about(1.2 * k, 0.4) },
      ),
    );
    for (const [distance, millimetres] of independent) {
      const { low, high, value } = readingAt(fit, distance) ?? { low: NaN, high: NaN, value: NaN };
      expect(low).toBeLessThan(millimetres);
      expect(high).toBeGreaterThan(millimetres);
      expect(Math.abs(value - millimetres)).toBeLessThan(1);
    }
  });

  // Lavender: 0.30 m at 60 yd is about 5 mm on a sight radius of 1 yd.
  it('move by about 5 mm on a sight a yard away for 0.30 m at 60 yd', () => {
    const fit = valueOf(
      fitMarks([{ distance: 54.864, reading: 80 }], exampleScale, { ...examplePriors, sightRadius: about(0.9144, 1e-6) }),
    );
    const angle = 0.3 / 54.864;
    const [row] = movedMarks(fit, { launchAngle: { value: angle, low: angle, high: angle } }, [54.864]);
    // A bow that now shoots higher wants its pin higher: a lower reading where the numbers grow downward.
    expect(Math.abs((row?.moved.value ?? NaN) + 5)).toBeLessThan(0.05);
  });

  // Closed form without air, own derivation to first order: e/R + g R/(2 v²) is least at v √(2 e/g).
  it.each([
    [40, 0.08],
    [57, 0.12],
    [75, 0.1],
  ])('turn at v √(2 e/g) for %f m/s and an eye %f m above the arrow', (speed, eyeHeight) => {
    expect(turningDistance(speed, 0, eyeHeight) / (speed * Math.sqrt((2 * eyeHeight) / 9.80665))).toBeCloseTo(1, 2);
  });
});
