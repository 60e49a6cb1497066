import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AimPlan, aimPlan, atCorners, bandOver } from '../../../core/aim/index.ts';
import { ok, refuse } from '../../../core/model/index.ts';
import { inside } from '../inside.ts';

describe('corners', () => {
  it('hand on the first refusal and stop there', () => {
    const asked: number[] = [];
    const step = (x: number) => {
      asked.push(x);
      return x === 2 ? refuse('two', 'Not two.') : ok(x);
    };
    expect(atCorners({ value: 1, corners: [2, 3] }, step)).toEqual({ ok: false, problem: { code: 'two', sentence: 'Not two.' } });
    expect(asked).toEqual([1, 2]);
  });

  it('bound a figure even where the value lies outside them', () => {
    expect(bandOver({ value: 5, corners: [1, 3] }, (x) => x)).toEqual({ value: 5, low: 1, high: 5 });
  });
});

// A flight anywhere inside the bands of speed and drag stays inside every band of the plan: the corners do bound it.
describe('the bands of a plan', () => {
  const rest = {
    mass: 0.021,
    diameter: 0.0058,
    airDensity: 1.22,
    eyeHeight: 0.11,
    arrowLength: 0.71,
    distances: [18, 30, 60],
  };
  const plan = (speed: readonly [number, number, number], drag: readonly [number, number, number], setFor: number): AimPlan => {
    const band = ([value, low, high]: readonly [number, number, number]) => ({ value, low, high });
    const made = aimPlan({ ...rest, setFor, speed: band(speed), drag: band(drag) });
    if (!made.ok) throw new Error(made.problem.sentence);
    return made.value;
  };
  const figures = (made: AimPlan) => [
    made.elevation,
    made.apex.x,
    made.apex.height,
    ...made.table.flatMap((row) => [row.height, row.drop, row.time, row.speed, row.angle]),
    ...(made.pointOn.ok ? [made.pointOn.value] : []),
  ];

  it('are in order and hold every flight between their corners', () => {
    fc.assert(
      fc.property(
        inside(45, 70),
        inside(0.0008, 0.003),
        inside(15, 60),
        inside(0, 1),
        inside(0, 1),
        (v, k, setFor, shareV, shareK) => {
          const wide = figures(plan([v, 0.95 * v, 1.05 * v], [k, 0.7 * k, 1.3 * k], setFor));
          const [v1, k1] = [v * (0.95 + 0.1 * shareV), k * (0.7 + 0.6 * shareK)];
          const narrow = figures(plan([v1, v1, v1], [k1, k1, k1], setFor));
          expect(wide.length).toBe(19);
          expect(narrow).toHaveLength(wide.length);
          wide.forEach((band, index) => {
            expect(band.low).toBeLessThanOrEqual(band.value);
            expect(band.value).toBeLessThanOrEqual(band.high);
            // The place of the apex is searched to a millimetre; all else is solved.
            const slack = band === wide[1] ? 3e-3 : 3e-6;
            expect(narrow[index]!.value).toBeGreaterThan(band.low - slack);
            expect(narrow[index]!.value).toBeLessThan(band.high + slack);
          });
        },
      ),
      { numRuns: 20 },
    );
  });
});
