import { describe, expect, it } from 'vitest';
import { hodograph, stretch } from '../../../core/flight/hodograph.ts';
import { standardGravity, trajectory } from '../../../core/flight/index.ts';

const still = { x: 0, y: 0, z: 0 };
const g = standardGravity;

describe('A flight by its hodograph', () => {
  it('sums what grows as a parabola without air exactly: the eight points of Gauss take a polynomial of degree fifteen', () => {
    const base = 1 / 50 ** 2;
    const { along, height, time } = stretch({ base, slope: 0 }, 0.4, -0.3);
    // Without drag s = u² Δp/g, y = u² (p₀² − p²)/(2 g), t = u Δp/g.
    expect(along).toBeCloseTo((2500 * 0.7) / g, 9);
    expect(height).toBeCloseTo((2500 * (0.16 - 0.09)) / (2 * g), 9);
    expect(time).toBeCloseTo((50 * 0.7) / g, 12);
  });

  it('keeps an arrow falling without end at the speed at which its drag bears its weight: √(g/k)', () => {
    const flight = trajectory({ speed: 30, elevation: 0.2, k: 0.01, until: { y: -400 } });
    const { vy, vx } = flight.end();
    expect(Math.hypot(vx, vy)).toBeCloseTo(Math.sqrt(g / 0.01), 1);
  });

  it('does not take what is steeper than 50 up or down, what hardly gets on, nor what a headwind stops', () => {
    const never = () => false;
    expect(hodograph([1, 60, 0], 0.002, still, never)).toBeNull();
    expect(hodograph([2, 0, 0], 0.002, still, never)).toBeNull();
    expect(hodograph([60, 0, 0], 0.01, { x: -30, y: 0, z: 0 }, (x) => x > 400)).toBeNull();
  });

  it('goes on by its time where it is not taken, and the two meet: a loose just too steep and one just not', () => {
    const apex = (elevation: number) => trajectory({ speed: 60, elevation, k: 0.002, until: { y: 0 } }).apex();
    const [below, above] = [Math.atan(49.9), Math.atan(50.1)];
    // Near straight up the top changes with the square of what is left to it: by 60²/g times 2e-8 here, and x by its slope.
    expect(apex(above).y).toBeCloseTo(apex(below).y, 2);
    expect(apex(above).x / Math.cos(above)).toBeCloseTo(apex(below).x / Math.cos(below), 1);
  });

  it('reads no farther than it was asked to fly', () => {
    const flight = trajectory({ speed: 55, elevation: 0.1, k: 0.002, until: { x: 70 } });
    expect(flight.end().x).toBeCloseTo(70, 9);
    expect(flight.at(70.1)).toBeNull();
    expect(flight.at(-1)).toBeNull();
  });
});
