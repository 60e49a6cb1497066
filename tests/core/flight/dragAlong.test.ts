import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alongNotes, dragAlong, trajectory } from '../../../core/flight/index.ts';
import { defaultPreferences } from '../../../core/model/preferences.ts';
import type { FlightSpeed } from '../../../core/model/readings.ts';
import { inside } from '../inside.ts';

const { units } = defaultPreferences;
const [foot, yard] = [0.3048, 0.9144];
const along = (readings: readonly FlightSpeed[]) => {
  const found = dragAlong(readings);
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
};
const flatly = (k: number, launch: number, distances: readonly number[]): FlightSpeed[] =>
  distances.map((distance) => ({ distance, speed: launch * Math.exp(-k * distance) }));

describe('drag out of speeds along the flight', () => {
  // Two speeds: k = ln(v1/v2)/s, the closed form of quadratic drag without gravity (any textbook on mechanics).
  it('is ln(v₁/v₂)/s of two speeds, with a band, and nothing to check it by', () => {
    const { k, launch, readings, holds } = along(flatly(0.002, 57, [0, 40]));
    expect(k.value).toBeCloseTo(0.002, 12);
    expect(launch.value).toBeCloseTo(57, 10);
    // Each speed out by 1 % (95 %): the difference of two logarithms by √2 %.
    expect(k.high - k.value).toBeCloseTo((0.01 * Math.SQRT2) / 40, 12);
    expect(holds).toBe(true);
    expect(readings.map(({ verdict }) => verdict)).toEqual(['cannot tell', 'cannot tell']);
  });

  it('comes back, with the launch speed, from any number of speeds that quadratic drag makes', () => {
    fc.assert(
      fc.property(
        inside(0.0004, 0.006),
        inside(40, 100),
        fc.uniqueArray(fc.integer({ min: 0, max: 80 }), { minLength: 2, maxLength: 12 }),
        (k, launch, distances) => {
          fc.pre(Math.max(...distances) - Math.min(...distances) > 2 && launch * Math.exp(-k * 80) > 20);
          const found = along(flatly(k, launch, distances));
          expect(found.k.value).toBeCloseTo(k, 9);
          expect(found.launch.value).toBeCloseTo(launch, 7);
          expect(found.inconsistent).toBeNull();
          expect(found.holds).toBe(true);
        },
      ),
    );
  });

  it('does not depend on the order of the readings, nor on the unit of speed', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(inside(0, 80), inside(40, 60)), { minLength: 3, maxLength: 8 }), (pairs) => {
        const readings = pairs.map(([distance, speed]) => ({ distance, speed }));
        const [there, back] = [dragAlong(readings), dragAlong([...readings].reverse())];
        expect(there.ok).toBe(back.ok);
        if (!there.ok || !back.ok) return;
        expect(back.value.k.value).toBeCloseTo(there.value.k.value, 12);
        expect([...back.value.readings].reverse().map(({ verdict }) => verdict)).toEqual(
          there.value.readings.map(({ verdict }) => verdict),
        );
        const scaled = dragAlong(readings.map(({ distance, speed }) => ({ distance, speed: 1.1 * speed })));
        expect(scaled.ok && scaled.value.k.value).toBeCloseTo(there.value.k.value, 12);
      }),
    );
  });

  it('is the drag that an arched flight was flown with, read where the arrow is back at the height of the loose', () => {
    const flight = trajectory({ speed: 57, elevation: 0.08, k: 0.0021, until: { y: 0 } });
    const down = flight.downTo(0)!;
    const readings = [
      { distance: 0, speed: 57 },
      { distance: down.x, speed: Math.hypot(down.vx, down.vy) },
    ];
    expect(down.x).toBeGreaterThan(45);
    expect(Math.abs(along(readings).k.value / 0.0021 - 1)).toBeLessThan(0.005);
  });
});

// 287, 277, 266 and 255 ft/s at 0, 20, 30 and 40 yd imply drag that differs 2.4 times between stretches (computed independently).
describe('speeds whose drag cannot be', () => {
  const bad = (
    [
      [0, 287],
      [20, 277],
      [30, 266],
      [40, 255],
    ] as const
  ).map(([yards, feet]) => ({ distance: yards * yard, speed: feet * foot }));

  it('are named at the first reading, with the speed that the others ask for, and give no drag', () => {
    const found = along(bad);
    expect(found.readings.map(({ verdict }) => verdict)).toEqual(['does not fit', 'agrees', 'agrees', 'agrees']);
    expect(found.inconsistent).toBe(0);
    expect(found.holds).toBe(false);
    expect(found.stretches).toBeCloseTo(2.4, 1);
    // The straight line through ln v of the other three, carried back to the bow: 301 ft/s (computed independently).
    expect(found.readings[0]?.expected).toBeCloseTo(301 * foot, 0);
    expect(alongNotes(found, { ...units, distance: 'yd' })[0]).toMatch(
      /^The first reading, 287 ft\/s at 0 yd, does not fit: the others say 301 ft\/s there\. From stretch to stretch the drag differs 2\.4 times\./,
    );
  });

  it('hold once the first reading is what the others ask for', () => {
    const mended = along([{ distance: 0, speed: 301 * foot }, ...bad.slice(1)]);
    expect(mended.holds).toBe(true);
    expect(alongNotes(mended, units)).toEqual([]);
  });

  it('are named wherever in the list the wrong one stands, and whichever way it is wrong', () => {
    const places = [0, 15, 30, 45, 60];
    for (const wrong of places.keys())
      for (const share of [0.94, 1.06]) {
        const readings = flatly(0.002, 57, places).map((one, index) =>
          index === wrong ? { ...one, speed: one.speed * share } : one,
        );
        expect(along(readings).inconsistent, `${places[wrong]} m by ${share}`).toBe(wrong);
      }
  });

  it('of three places leave open which one is wrong', () => {
    const found = along([
      { distance: 0, speed: 57 },
      { distance: 20, speed: 52 },
      { distance: 40, speed: 52.5 },
    ]);
    expect(found.holds).toBe(false);
    expect(found.inconsistent).toBeNull();
    expect(alongNotes(found, units)[0]).toContain('it cannot be told which');
  });

  it('are refused with a sentence when they rise, stand still, stand at one place, or fall as no arrow’s do', () => {
    const refusal = (...readings: (readonly [number, number])[]) => {
      const found = dragAlong(readings.map(([distance, speed]) => ({ distance, speed })));
      return found.ok ? '' : found.problem.sentence;
    };
    expect(refusal([0, 55], [40, 58])).toContain('an arrow only slows down');
    expect(refusal([0, 55], [40, 55])).toContain('an arrow only slows down');
    expect(refusal([10, 55], [10, 54])).toContain('two distances');
    expect(refusal([10, 55])).toContain('two distances');
    expect(refusal([0, 110], [40, 30])).toContain('more than any arrow');
    expect(refusal([0, 55], [110, 54.9])).toContain('less than any arrow');
    expect(refusal([0, NaN], [40, 50])).toContain('number');
  });

  it('never give a figure that is none, whatever is typed', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(inside(0, 120), inside(20, 120)), { minLength: 0, maxLength: 9 }), (pairs) => {
        const found = dragAlong(pairs.map(([distance, speed]) => ({ distance, speed })));
        if (!found.ok) {
          expect(found.problem.sentence.endsWith('.')).toBe(true);
          return;
        }
        const { k, launch, readings } = found.value;
        for (const figure of [k.low, k.value, k.high, launch.low, launch.value, launch.high])
          expect(Number.isFinite(figure)).toBe(true);
        expect(k.low).toBeLessThanOrEqual(k.value);
        expect(k.value).toBeLessThanOrEqual(k.high);
        for (const { expected } of readings) expect(expected === null || expected > 0).toBe(true);
        for (const note of alongNotes(found.value, units)) expect(note).not.toMatch(/NaN|Infinity/);
      }),
    );
  });

  it('of an archer whose shots scatter widen the band instead of accusing one', () => {
    const shares = [1.012, 0.988, 1.011, 0.99, 1.009, 0.99];
    const found = along(
      flatly(0.002, 57, [0, 10, 20, 30, 40, 50]).map((one, i) => ({ ...one, speed: one.speed * (shares[i] ?? 1) })),
    );
    expect(found.inconsistent).toBeNull();
    expect(found.holds).toBe(true);
    const quiet = along(flatly(0.002, 57, [0, 10, 20, 30, 40, 50]));
    expect(found.k.high - found.k.low).toBeGreaterThan(3 * (quiet.k.high - quiet.k.low));
  });
});
