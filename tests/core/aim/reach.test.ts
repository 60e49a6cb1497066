import { describe, expect, it } from 'vitest';
import { comesDown, farthestOffered, reachBand, setSight } from '../../../core/aim/index.ts';
import { levelReach } from '../../../core/flight/index.ts';

const g = 9.80665;
const exactly = (value: number) => ({ value, low: value, high: value });
const noAir = exactly(0);

describe('how far an arrow carries', () => {
  it('along level ground without air is v² sin 2θ / g (closed form)', () => {
    for (const angle of [0.1, 0.35, Math.PI / 4, 1.1])
      expect(levelReach(30, 0, angle, 0)).toBeCloseTo((900 * Math.sin(2 * angle)) / g, 4);
  });

  it('from a height without air is v cos θ (v sin θ + √(v² sin² θ + 2 g h)) / g (closed form)', () => {
    const [v, angle, h] = [30, 0.35, 1.5];
    const [along, up] = [v * Math.cos(angle), v * Math.sin(angle)];
    expect(levelReach(v, 0, angle, h)).toBeCloseTo((along * (up + Math.sqrt(up * up + 2 * g * h))) / g, 4);
  });

  it('at worst without air is v √(v² + 2 g h) / g (closed form), with its band over the speed', () => {
    const most = (v: number) => (v * Math.sqrt(v * v + 2 * g * 1.5)) / g;
    const reach = reachBand({ value: 30, low: 28, high: 33 }, noAir);
    expect(reach.low).toBeCloseTo(most(28), 2);
    expect(reach.value).toBeCloseTo(most(30), 2);
    expect(reach.high).toBeCloseTo(most(33), 2);
  });

  it('is offered no farther than 20 degrees of the slowest arrow reach, nor past the limit of a distance', () => {
    const bound = (v: number) => (v * v * Math.sin((40 * Math.PI) / 180)) / g;
    const offered = farthestOffered({ value: 30, low: 29, high: 31 }, { value: 0.002, low: 0.001, high: 0.003 });
    expect(offered).toBeLessThan(bound(29) + 0.5);
    expect(offered).toBeGreaterThan(0.8 * bound(29));
    expect(farthestOffered(exactly(60), noAir)).toBe(120);
  });
});

describe('where a flight comes down', () => {
  const [v, R, eye] = [50, 30, 1.6];
  const set = (farthest: number) => {
    const sight = setSight({ speed: v, k: 0, eyeHeight: 0 }, R, farthest);
    if (!sight.ok) throw new Error(sight.problem.sentence);
    return sight.value;
  };

  it('is the second root of x tan θ − g x²/(2 v² cos² θ) = −H without air (closed form)', () => {
    const angle = Math.asin((R * g) / v ** 2) / 2;
    const [a, b] = [g / (2 * (v * Math.cos(angle)) ** 2), Math.tan(angle)];
    expect(comesDown(set(200), eye)).toBeCloseTo((b + Math.sqrt(b * b + 4 * a * eye)) / (2 * a), 2);
  });

  it('is not known where the flight was not flown so far', () => {
    expect(comesDown(set(31), 40)).toBeNull();
  });

  it('is on level ground, which the line of sight draws near on its way to the target', () => {
    const sight = setSight({ speed: v, k: 0.002, eyeHeight: 0.11, targetDrop: 0.3 }, R, 200);
    expect(sight.ok).toBe(true);
    if (!sight.ok) return;
    const down = comesDown(sight.value, eye) ?? 0;
    // The height over the line of sight, which falls from the eye to the gold 1.3 m up at 30 m, is that line's own height over the ground.
    expect(sight.value.heightOverLine(down)).toBeCloseTo(-(1.6 - (0.3 * down) / R), 6);
  });
});
