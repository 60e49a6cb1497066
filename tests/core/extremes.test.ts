import { describe, expect, it } from 'vitest';
import { allowance, landing, slopeShot } from '../../core/aim/index.ts';
import { launchElevation, solveShot } from '../../core/flight/index.ts';
import { valueOf } from './group/shots.ts';

describe('At the ends of what can be entered', () => {
  it('a slow and draggy arrow shot far and steeply is solved or refused in a sentence, and nothing is thrown', () => {
    const wind = { x: -20, y: 0, z: 0 };
    let solved = 0;
    for (const speed of [20, 40])
      for (const k of [0.001, 0.01])
        for (const distance of [1, 60, 120])
          for (const slope of [-60, -50, 0, 60].map((degrees) => (degrees * Math.PI) / 180)) {
            const launch = { speed, k, eyeHeight: 0.1 };
            const launches = { value: launch, corners: [launch] };
            const found = [
              slopeShot(launch, distance, slope),
              solveShot({ ...launch, distance, slope, wind }),
              allowance(launches, distance, slope, wind),
              landing(launches, { setFor: distance, distance, slope, wind }),
            ];
            for (const one of found)
              if (one.ok) solved++;
              else expect(one.problem.sentence).toMatch(/expected/);
          }
    expect(solved).toBeGreaterThan(50);
  });

  it('a steep shot near the end of an arrow’s reach strikes what it is meant for', () => {
    // A general-purpose integrator (scipy, DOP853, rtol 1e-12) and a bracketing root, computed independently.
    const place = { speed: 20, k: 0.006, x: 110 * Math.cos(-Math.PI / 3), y: 110 * Math.sin(-Math.PI / 3) };
    expect(valueOf(launchElevation(place))).toBeCloseTo(-0.472299, 6);
  });
});
