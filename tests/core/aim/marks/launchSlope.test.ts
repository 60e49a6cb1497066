import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fallBelowLine, launchSlope } from '../../../../core/aim/index.ts';
import { launchElevation, trajectory } from '../../../../core/flight/index.ts';
import { slopesOver } from '../../../../core/aim/marks/slopesOver.ts';
import { inside } from '../../inside.ts';

const arrows = fc.record({ speed: inside(40, 90), k: inside(1e-5, 0.005), eyeHeight: inside(0, 0.2) });

describe('The quick slope of a launch', () => {
  it('is that of the full trajectory', () => {
    fc.assert(
      fc.property(arrows, inside(1, 90), ({ speed, k, eyeHeight }, distance) => {
        const full = launchElevation({ speed, k, eyeHeight, x: distance, y: 0 });
        expect(full.ok).toBe(true);
        expect(full.ok && Math.abs(Math.atan(launchSlope(speed, k, eyeHeight, distance)) - full.value)).toBeLessThan(1e-6);
      }),
    );
  });

  it('falls as far as the full trajectory, within 0.02 mm at 90 m', () => {
    fc.assert(
      fc.property(arrows, inside(-0.1, 0.3), inside(1, 90), ({ speed, k }, slope, ahead) => {
        const full = trajectory({ speed, k, elevation: Math.atan(slope), until: { x: ahead } }).at(ahead);
        expect(Math.abs(slope * ahead - fallBelowLine(speed, k, slope, ahead) - (full?.y ?? NaN))).toBeLessThan(2e-5);
      }),
    );
  });

  it('is no number where the full trajectory does not carry, and for a distance within the eye', () => {
    expect(launchElevation({ speed: 25, k: 0.003, eyeHeight: 0.1, x: 90, y: 0 }).ok).toBe(false);
    expect(launchSlope(25, 0.003, 0.1, 90)).toBeNaN();
    expect(launchSlope(50, 0.003, 0.1, 0.05)).toBeNaN();
    expect(launchSlope(50, 0.003, 0.1, NaN)).toBeNaN();
    expect(launchSlope(NaN, 0.003, 0.1, 20)).toBeNaN();
  });
});

describe('Slopes at many distances', () => {
  const farOff = Array.from({ length: 86 }, (_, i) => 5 + i);

  it('are those at one distance after the other', () => {
    const slopesOf = slopesOver(farOff);
    fc.assert(
      fc.property(arrows, ({ speed, k, eyeHeight }) => {
        const slopes = slopesOf(speed, k, eyeHeight);
        for (const [i, distance] of farOff.entries())
          expect(Math.abs((slopes[i] ?? NaN) - launchSlope(speed, k, eyeHeight, distance))).toBeLessThan(1e-6);
      }),
    );
  });

  it('end where a slow arrow does', () => {
    const slopes = slopesOver(farOff)(27, 0.004, 0.1);
    expect(slopes[20]).toBe(launchSlope(27, 0.004, 0.1, 25));
    expect(slopes.at(-1)).toBeNaN();
  });
});
