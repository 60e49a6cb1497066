import { describe, expect, it } from 'vitest';
import { allowance, changeSince, landing, markContext, priorsOf, slopeShot } from '../../core/aim/index.ts';
import { launchElevation, solveShot } from '../../core/flight/index.ts';
import { exampleBundle, exampleNow } from '../../core/model/example.ts';
import type { ArrowSet, Bundle } from '../../core/model/index.ts';
import { valueOf } from './group/shots.ts';

const arrows = (patch: Partial<ArrowSet>): Bundle => ({
  archer: exampleBundle.archer,
  bow: exampleBundle.bow,
  arrowSet: { ...exampleBundle.arrowSet, ...patch },
  setup: exampleBundle.setup,
});

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

  it('a shaft twice as thick, and half as heavy, leaves a drag whose least is above nought and whose band holds what physics says', () => {
    const then = arrows({ diameter: 0.005, weighed: 0.03 });
    const now = arrows({ diameter: 0.0093, weighed: 0.015 });
    const { k } = valueOf(changeSince(markContext(then, exampleNow), now));
    // k = ½ ρ C_D A/m (Miyazaki et al. 2013): (9.3/5)² · 2 = 6.9192, where the coefficient stays.
    expect(k?.value).toBeCloseTo(6.9192, 6);
    expect(k?.low).toBeGreaterThan(0);
    // Back again it is as many times less: a band of a ratio has no preferred side.
    const back = valueOf(changeSince(markContext(now, exampleNow), then)).k;
    expect((back?.low ?? NaN) * (k?.high ?? NaN)).toBeCloseTo(1, 9);
    expect((back?.high ?? NaN) * (k?.low ?? NaN)).toBeCloseTo(1, 9);
  });

  it('two speeds too near to each other to tell a drag from none leave one that sight marks can begin with', () => {
    const wood = arrows({ material: 'wood', diameter: null, weighed: 0.025 });
    const flightSpeeds = [
      { distance: 0, speed: 55 },
      { distance: 20, speed: 55 * Math.exp(-20 * 0.0006) },
    ];
    const { k } = valueOf(
      priorsOf({ ...wood, setup: { ...wood.setup, flightSpeeds } }, { sightRadius: null, spreadPerMetre: null }),
    );
    // Lighter than this in drag no arrow is: from memory.
    expect(k.low).toBeGreaterThanOrEqual(1.5e-4);
    expect(k.low).toBeLessThan(k.value);
  });
});
