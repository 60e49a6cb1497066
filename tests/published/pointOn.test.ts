import { describe, expect, it } from 'vitest';
import { type Launch, missWithTipOn, pointOfAim, pointOnDistance, widestGap } from '../../core/aim/index.ts';
import type { Result } from '../../core/model/index.ts';

const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

// Invented set-ups of ordinary figures: a learner, a club archer anchoring under the jaw, a strong bow, and three fingers under at the cheek.
const setups: { name: string; launch: Launch; tipForward: number }[] = [
  { name: 'a learner', launch: { speed: 36, k: 0.002, eyeHeight: 0.11, targetDrop: 0.2 }, tipForward: 0.7 },
  { name: 'a club archer', launch: { speed: 52, k: 0.0018, eyeHeight: 0.11, targetDrop: 0.3 }, tipForward: 0.74 },
  { name: 'a strong bow', launch: { speed: 62, k: 0.0012, eyeHeight: 0.12 }, tipForward: 0.78 },
  { name: 'a high anchor', launch: { speed: 50, k: 0.0025, eyeHeight: 0.05, targetDrop: 0.3 }, tipForward: 0.74 },
];

describe('both sides of the point-on distance (common practice)', () => {
  it.each(setups)('for $name: held on the middle, over well inside it and under well beyond', ({ launch, tipForward }) => {
    const pointOn = valueOf(pointOnDistance(launch, tipForward));
    for (const share of [0.25, 0.5, 0.75, 0.95]) expect(missWithTipOn(launch, tipForward, share * pointOn)).toBeGreaterThan(0);
    for (const share of [1.05, 1.25, 1.5]) expect(missWithTipOn(launch, tipForward, share * pointOn)).toBeLessThan(0);
    expect(Math.abs(missWithTipOn(launch, tipForward, pointOn))).toBeLessThan(1e-5);
  });

  it.each(setups)('for $name: the tip is held below the middle inside it, and above beyond', ({ launch, tipForward }) => {
    const pointOn = valueOf(pointOnDistance(launch, tipForward));
    for (const share of [0.25, 0.5, 0.95]) expect(valueOf(pointOfAim(launch, tipForward, share * pointOn))).toBeLessThan(0);
    for (const share of [1.05, 1.25]) expect(valueOf(pointOfAim(launch, tipForward, share * pointOn))).toBeGreaterThan(0);
    expect(Math.abs(valueOf(pointOfAim(launch, tipForward, pointOn)))).toBeLessThan(1e-5);
  });

  it.each(setups)('for $name: the largest gap lies near half of it', ({ launch, tipForward }) => {
    const share = valueOf(widestGap(launch, tipForward)).distance / valueOf(pointOnDistance(launch, tipForward));
    expect(share).toBeGreaterThan(0.42);
    expect(share).toBeLessThan(0.58);
  });

  it.each(setups)('for $name: the correction of a point of aim equals the miss, within a tenth', ({ launch, tipForward }) => {
    for (const distance of [10, 14]) {
      const [hold, miss] = [valueOf(pointOfAim(launch, tipForward, distance)), missWithTipOn(launch, tipForward, distance)];
      expect(Math.abs(hold + miss)).toBeLessThan(0.1 * Math.abs(miss));
    }
  });
});

// Computed independently, without drag, from the quadratic of the parabola: 50 m/s, eye 0.12 m above the arrow, 0.74 m to the tip.
describe('the point-on distance without drag', () => {
  const launch: Launch = { speed: 50, k: 0, eyeHeight: 0.12 };

  it('is 79.84321 m', () => expect(valueOf(pointOnDistance(launch, 0.74))).toBeCloseTo(79.84321414, 5));
  it('leaves a point of aim 2.94321 m low at 30 m', () =>
    expect(valueOf(pointOfAim(launch, 0.74, 30))).toBeCloseTo(-2.94321066, 5));
  it('leaves the largest gap, 3.16698 m, at 40.56 m', () => {
    const gap = valueOf(widestGap(launch, 0.74));
    expect(gap.hold).toBeCloseTo(-3.16698, 4);
    expect(Math.abs(gap.distance - 40.56)).toBeLessThan(0.1);
  });
});
