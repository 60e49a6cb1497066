import { describe, expect, it } from 'vitest';
import { anchorMoved, holdTable, type Launch } from '../../core/aim/index.ts';
import { flightByOdex, seeded } from './flightByOdex.ts';

const TIP = 0.73;
const DISTANCES = [10, 25, 45];

/** Without a sight as it is shot: from wooden arrows of a light bow to a fast recurve, the eye close over the arrow or a hand above it. */
function randomLaunches(count: number, seed: number): Launch[] {
  const next = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  return Array.from({ length: count }, () => ({
    speed: between(35, 62),
    k: between(0.0008, 0.004),
    eyeHeight: between(0.04, 0.13),
    targetDrop: between(-0.2, 0.4),
  }));
}

/** The tip held `hold` over the middle of a target: rotate the triangle of eye, foot and tip until its tip lies on that line, and fly. */
function strikes({ speed, k, targetDrop = 0 }: Launch, eyeHeight: number, distance: number, hold: number): number {
  const line = Math.atan2(hold - targetDrop, distance);
  const elevation = line + Math.atan(eyeHeight / TIP);
  const [x, y] = [eyeHeight * Math.sin(elevation), -eyeHeight * Math.cos(elevation)];
  const [at] = flightByOdex({ speed, elevation, k, wind: { x: 0, y: 0, z: 0 } }, [distance - x], 1e-11);
  return y + at!.y + targetDrop;
}

// Source: odex 2.0.4, a port of Hairer and Wanner's extrapolation code ODEX, at a tolerance of 1e-11.
describe('points of aim beside a general-purpose library', () => {
  const launches = randomLaunches(40, 20260701);

  it('strike the middle with the tip held there, and go where the table says with the tip on the middle, within 0.01 mm', () => {
    let [worstHeld, worstOver, rows] = [0, 0, 0];
    for (const launch of launches) {
      const table = holdTable({ value: launch, corners: [] }, TIP, DISTANCES, 1.6);
      if (!table.ok) throw new Error(table.problem.sentence);
      for (const { distance, hold, over } of table.value) {
        rows++;
        worstHeld = Math.max(worstHeld, Math.abs(strikes(launch, launch.eyeHeight, distance, hold.value)));
        worstOver = Math.max(worstOver, Math.abs(strikes(launch, launch.eyeHeight, distance, 0) - (over?.value ?? NaN)));
      }
    }
    expect(rows).toBe(launches.length * DISTANCES.length);
    expect(worstHeld).toBeLessThan(1e-5);
    expect(worstOver).toBeLessThan(1e-5);
  });

  it('move the arrows with another anchor as the same triangle does with the eye at that height', () => {
    let [worst, rows] = [0, 0];
    for (const launch of launches) {
      const corners = { value: launch, corners: [] };
      const table = holdTable(corners, TIP, DISTANCES, 1.6);
      const moved = anchorMoved(corners, TIP, 0.09, DISTANCES);
      if (!table.ok || !moved.ok) throw new Error('a table was expected');
      moved.value.rows.forEach(({ distance, moved: there }, i) => {
        rows++;
        worst = Math.max(worst, Math.abs(strikes(launch, 0.09, distance, table.value[i]!.hold.value) - there.value));
      });
    }
    expect(rows).toBe(launches.length * DISTANCES.length);
    expect(worst).toBeLessThan(1e-5);
  });
});
