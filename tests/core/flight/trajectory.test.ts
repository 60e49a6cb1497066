import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FlightPoint, type Shot, trajectory } from '../../../core/flight/index.ts';
import { inside } from '../inside.ts';

const g = 9.80665;
const breeze = fc.record({ x: inside(-6, 6), y: inside(-2, 2), z: inside(-6, 6) });
const aimed = fc.record({ speed: inside(30, 80), elevation: inside(-0.1, 0.4), k: inside(0.0003, 0.005) });
const at = (shot: Omit<Shot, 'until'>, x: number): FlightPoint => {
  const point = trajectory({ ...shot, until: { x } }).at(x);
  if (!point) throw new Error('the flight did not get there');
  return point;
};

describe('a trajectory', () => {
  it('is the same in a wind of nought as in still air', () => {
    fc.assert(
      fc.property(aimed, inside(1, 90), (shot, x) => {
        expect(at({ ...shot, wind: { x: 0, y: 0, z: 0 } }, x)).toEqual(at(shot, x));
      }),
    );
  });

  it('drifts as far left in a wind from the right as right in a wind from the left, and is otherwise the same', () => {
    fc.assert(
      fc.property(aimed, breeze, inside(1, 90), (shot, wind, x) => {
        const [one, other] = [at({ ...shot, wind }, x), at({ ...shot, wind: { ...wind, z: -wind.z } }, x)];
        expect(other.z).toBeCloseTo(-one.z, 12);
        expect(other.y).toBeCloseTo(one.y, 12);
      }),
    );
  });

  it('drifts with the wind', () => {
    fc.assert(
      fc.property(aimed, inside(0.5, 6), (shot, across) => {
        expect(at({ ...shot, wind: { x: 0, y: 0, z: across } }, 50).z).toBeGreaterThan(0);
      }),
    );
  });

  it('comes to the parabola as the drag goes to nought', () => {
    fc.assert(
      fc.property(inside(30, 80), inside(-0.1, 0.4), inside(1, 90), (speed, elevation, x) => {
        const parabola = x * Math.tan(elevation) - (g * x * x) / (2 * (speed * Math.cos(elevation)) ** 2);
        expect(Math.abs(at({ speed, elevation, k: 0 }, x).y - parabola)).toBeLessThan(1e-6);
        expect(Math.abs(at({ speed, elevation, k: 1e-9 }, x).y - parabola)).toBeLessThan(1e-4);
      }),
    );
  });

  it('never gains energy in still air, and loses none without drag', () => {
    fc.assert(
      fc.property(aimed, (shot) => {
        const flight = trajectory({ ...shot, until: { x: 90 } });
        const energies = Array.from({ length: 31 }, (_, i) => flight.at(3 * i)!).map(
          (p) => (p.vx ** 2 + p.vy ** 2 + p.vz ** 2) / 2 + g * p.y,
        );
        for (let i = 1; i < energies.length; i++) expect(energies[i]!).toBeLessThan(energies[i - 1]!);
        const free = at({ ...shot, k: 0 }, 90);
        expect((free.vx ** 2 + free.vy ** 2) / 2 + g * free.y).toBeCloseTo(shot.speed ** 2 / 2, 4);
      }),
    );
  });

  // Lengths times c, times times √c leaves g alone: the same flight in other units of length.
  it('does not care for the unit of length', () => {
    fc.assert(
      fc.property(aimed, inside(0.3, 3), inside(5, 60), (shot, c, x) => {
        const scaled = { ...shot, speed: shot.speed * Math.sqrt(c), k: shot.k / c };
        expect(Math.abs(at(scaled, c * x).y - c * at(shot, x).y)).toBeLessThan(3e-6);
      }),
    );
  });

  // In a steady wind the flight is that of still air seen from a train: launch velocity less the wind, and the wind's way added.
  it('in a wind along the shot is the flight in still air, moved along with the air', () => {
    fc.assert(
      fc.property(aimed, inside(-6, 6), (shot, along) => {
        const inWind = at({ ...shot, wind: { x: along, y: 0, z: 0 } }, 60);
        const [vx, vy] = [shot.speed * Math.cos(shot.elevation) - along, shot.speed * Math.sin(shot.elevation)];
        const still = at({ speed: Math.hypot(vx, vy), elevation: Math.atan2(vy, vx), k: shot.k }, 60 - along * inWind.t);
        expect(Math.abs(still.t - inWind.t)).toBeLessThan(1e-7);
        expect(Math.abs(still.y - inWind.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('in any steady wind is the flight in still air, seen from the air that moves', () => {
    fc.assert(
      fc.property(aimed, breeze, (shot, wind) => {
        const seen = at({ ...shot, wind }, 60);
        const [ux, uy, uz] = [
          shot.speed * Math.cos(shot.elevation) - wind.x,
          shot.speed * Math.sin(shot.elevation) - wind.y,
          -wind.z,
        ];
        const level = Math.hypot(ux, uz);
        const moved = { x: seen.x - wind.x * seen.t, y: seen.y - wind.y * seen.t, z: seen.z - wind.z * seen.t };
        const ahead = Math.hypot(moved.x, moved.z);
        const still = at({ speed: Math.hypot(level, uy), elevation: Math.atan2(uy, level), k: shot.k }, ahead);
        expect(Math.abs(still.t - seen.t)).toBeLessThan(1e-7);
        expect(Math.abs(still.y - moved.y)).toBeLessThan(1e-6);
        // It flies in one plane there, the one it was loosed in.
        expect(Math.abs(moved.z / ahead - uz / level)).toBeLessThan(1e-7);
      }),
    );
  });

  it('comes back along its own path when time runs backwards without drag', () => {
    fc.assert(
      fc.property(inside(30, 80), inside(0.05, 1.2), (speed, elevation) => {
        const flight = trajectory({ speed, elevation, k: 0, until: { y: 0 } });
        const [down, top] = [flight.downTo(0)!, flight.apex()];
        for (const share of [0.2, 0.5, 0.9])
          expect(Math.abs(flight.at(top.x - share * top.x)!.y - flight.at(top.x + share * top.x)!.y)).toBeLessThan(1e-6);
        expect(Math.abs(down.x - 2 * top.x)).toBeLessThan(1e-5);
      }),
    );
  });

  it('carries no farther the more drag there is', () => {
    fc.assert(
      fc.property(inside(30, 80), inside(0.05, 0.7), inside(0, 0.004), inside(0.0001, 0.002), (speed, elevation, k, more) => {
        const carry = (drag: number) => trajectory({ speed, elevation, k: drag, until: { y: 0 } }).downTo(0)!.x;
        expect(carry(k + more)).toBeLessThan(carry(k));
      }),
    );
  });
});

describe('reading a trajectory', () => {
  const flight = trajectory({ speed: 50, elevation: 0.1, k: 0.002, until: { y: -20 } });

  it('starts where the arrow left', () => {
    expect(flight.at(0)).toMatchObject({ t: 0, x: 0, y: 0, z: 0 });
  });

  it('finds the place at exactly the distance or the height that was asked', () => {
    expect(flight.at(33)!.x).toBeCloseTo(33, 11);
    const low = flight.downTo(-10)!;
    expect(low.y).toBeCloseTo(-10, 11);
    expect(low.vy).toBeLessThan(0);
    expect(flight.at(low.x)!.t).toBeCloseTo(low.t, 10);
  });

  it('comes down through the height it left, not at the start', () => {
    expect(flight.downTo(0)!.x).toBeGreaterThan(30);
    expect(trajectory({ speed: 30, elevation: 0.002, k: 0.001, until: { y: 0 } }).downTo(0)!.x).toBeGreaterThan(0.1);
  });

  it('has its apex where it flies level, above every other place', () => {
    const apex = flight.apex();
    expect(apex.vy).toBeCloseTo(0, 9);
    for (const x of [1, 10, 20, 24, 26, 40, 60]) expect(flight.at(x)!.y).toBeLessThan(apex.y + 1e-12);
    expect(trajectory({ speed: 50, elevation: -0.1, k: 0, until: { x: 20 } }).apex()).toMatchObject({ t: 0, y: 0 });
    expect(trajectory({ speed: 50, elevation: 0.3, k: 0, until: { x: 20 } }).apex().x).toBeGreaterThanOrEqual(20);
  });

  it('says null for what it does not reach', () => {
    expect(flight.at(-1)).toBeNull();
    expect(flight.at(NaN)).toBeNull();
    expect(flight.at(flight.end().x + 1)).toBeNull();
    expect(flight.downTo(50)).toBeNull();
    expect(flight.downTo(NaN)).toBeNull();
    expect(flight.downTo(flight.end().y - 1)).toBeNull();
    expect(trajectory({ speed: 20, elevation: Math.PI / 2, k: 0.01, until: { x: 10 } }).at(10)).toBeNull();
  });

  it.each([
    { speed: NaN, elevation: 0, k: 0, until: { x: 1 } },
    { speed: 0, elevation: 0, k: 0, until: { x: 1 } },
    { speed: 50, elevation: Infinity, k: 0, until: { x: 1 } },
    { speed: 50, elevation: 0, k: -0.001, until: { x: 1 } },
    { speed: 50, elevation: 0, k: 0, until: { y: NaN } },
    { speed: 50, elevation: 0, k: 0, wind: { x: 0, y: 0, z: NaN }, until: { x: 1 } },
  ])('refuses %j', (shot) => expect(() => trajectory(shot)).toThrow(RangeError));
});
