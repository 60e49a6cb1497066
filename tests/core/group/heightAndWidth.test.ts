import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightAndWidth, leaningOval, powerForTall, type Point } from '../../../core/group/index.ts';
import { randomFrom } from '../../../fixtures/random.ts';
import { anyShots, group, moved, place300 } from './arbitraries.ts';
import { millimetres, normalShots, numbersIn, refusalOf, valueOf } from './shots.ts';

const five = millimetres([
  [-9, 6],
  [4, 11],
  [-14, -3],
  [2, -8],
  [-6, 15],
]);
const swapped = (points: readonly Point[]): Point[] => points.map(({ x, y }) => ({ x: y, y: x }));

describe('Height against width', () => {
  it('has the F of the axes, the test for leaning ovals and the test of roundness (computed independently with SciPy 1.17)', () => {
    const found = valueOf(heightAndWidth([five]));
    expect(found.vertical).toBeCloseTo(0.00957601169589929, 12);
    expect(found.lateral).toBeCloseTo(0.007536577472566709, 12);
    expect(found.ratio ** 2).toBeCloseTo(1.6144366197183095, 10);
    expect(found.p).toBeCloseTo(0.6539650796453618, 9);
    expect(found.leaningP).toBeCloseTo(0.702699471368854, 9);
    expect(found.interval[0]).toBeCloseTo(0.4099892257371083, 8);
    expect(found.interval[1]).toBeCloseTo(3.937753771006443, 8);
    expect(found.oval.p).toBeCloseTo(0.909876099401714, 9);
    // By inversion of the test: the height is divided by a ratio until the correlation of x + y with x - y has p 0.05.
    expect(found.leaningInterval[0]).toBeCloseTo(0.3242429079810607, 9);
    expect(found.leaningInterval[1]).toBeCloseTo(4.979096165194909, 9);
    // By search over all directions and stretches that the test of roundness does not refute.
    expect(found.oval.times[1]).toBeCloseTo(6.740744779855863, 4);
    expect(found.oval.times[0]).toBe(1);
    expect((found.oval.lean * 180) / Math.PI).toBeCloseTo(90 - 81.02948403784838, 9);
    expect(found.oval.leanHalf).toBeNull();
    expect(found.verdict).toBe('cannot tell');
    expect(found.shotsNeeded).toBeGreaterThan(12);
  });

  it('is found for a true 2 to 1 in 27 of 100 groups of six and 59 of twelve (computed independently with SciPy 1.17)', () => {
    expect(powerForTall(2, 5)).toBeCloseTo(0.27092551373931406, 9);
    expect(powerForTall(2, 11)).toBeCloseTo(0.5904766962251021, 9);
    expect(() => powerForTall(0.5, 5)).toThrow(RangeError);
  });

  it('turns round when height and width are exchanged, and stays when ends are moved', () => {
    fc.assert(
      fc.property(group(3), group(3), place300, (a, b, by) => {
        const plain = heightAndWidth([a, b]);
        const other = heightAndWidth([swapped(moved(a, by)), swapped(b)]);
        const same = heightAndWidth([moved(a, by), b]);
        if (!plain.ok || !other.ok || !same.ok) return;
        const turn = { taller: 'wider', wider: 'taller', oval: 'oval', 'cannot tell': 'cannot tell' } as const;
        expect(other.value.verdict).toBe(turn[plain.value.verdict]);
        expect(other.value.ratio * plain.value.ratio).toBeCloseTo(1, 6);
        expect(same.value.leaningP).toBeCloseTo(plain.value.leaningP, 6);
        expect(same.value.p).toBeCloseTo(plain.value.p, 6);
      }),
    );
  });

  it('sees four times as much height in twenty-four shots, and about 5 false ones in 100 leaning ovals (seeded)', () => {
    const random = randomFrom(61);
    const tall = [1, 2, 3, 4].map(() => normalShots(random, 6, [0.01, 0.04]));
    expect(valueOf(heightAndWidth(tall)).verdict).toBe('taller');
    expect(valueOf(heightAndWidth(tall.map(swapped))).verdict).toBe('wider');
    let wrong = 0;
    for (let i = 0; i < 1000; i++) {
      // Turned by 45 degrees an oval of 3 to 1 is as tall as it is wide.
      const oval = normalShots(random, 12, [0.03, 0.01]).map(({ x, y }) => ({
        x: (x - y) / Math.SQRT2,
        y: (x + y) / Math.SQRT2,
      }));
      if (['taller', 'wider'].includes(valueOf(heightAndWidth([oval])).verdict)) wrong++;
    }
    expect(wrong / 1000).toBeGreaterThan(0.03);
    expect(wrong / 1000).toBeLessThan(0.075);
  });

  it('calls a group taller or wider only with 1 outside its interval, and an oval only with 1 outside that', () => {
    fc.assert(
      fc.property(group(3), group(3), (a, b) => {
        const found = heightAndWidth([a, b]);
        if (!found.ok) return;
        const {
          verdict,
          ratio,
          leaningInterval: [low, high],
          oval,
        } = found.value;
        expect(low < ratio && ratio < high).toBe(true);
        expect(verdict === 'taller').toBe(low > 1);
        expect(verdict === 'wider').toBe(high < 1);
        expect(oval.times[0] > 1).toBe(oval.p < 0.05);
        if (verdict === 'oval') expect(oval.leanHalf).not.toBeNull();
      }),
    );
  });

  it('says which way an oval leans, from upright: drawn at 40 degrees to the right and to the left (seeded)', () => {
    const random = randomFrom(62);
    for (const degrees of [40, -40]) {
      const by = (degrees * Math.PI) / 180;
      const shots = normalShots(random, 36, [0.01, 0.04]).map(({ x, y }) => ({
        x: x * Math.cos(by) + y * Math.sin(by),
        y: -x * Math.sin(by) + y * Math.cos(by),
      }));
      const { lean, leanHalf, times } = valueOf(heightAndWidth([shots])).oval;
      expect(Math.abs(lean - by)).toBeLessThan(leanHalf ?? 0);
      expect(times[0] < 4 && 4 < times[1]).toBe(true);
    }
  });

  it('holds the true long over short, and the true lean where it gives one, in at least 95 of 100 groups (seeded)', () => {
    const random = randomFrom(63);
    for (const [n, long] of [
      [6, 1],
      [6, 2],
      [12, 2],
      [12, 5],
    ] as const) {
      let [held, leant] = [0, 0];
      for (let i = 0; i < 2000; i++) {
        const { times, lean, leanHalf } = valueOf(heightAndWidth([normalShots(random, n, [0.01, 0.01 * long])])).oval;
        if (times[0] <= long && long <= times[1]) held++;
        if (leanHalf === null || Math.abs(Math.asin(Math.sin(2 * lean))) <= 2 * leanHalf) leant++;
      }
      // Three standard errors of 2,000 draws below 0.95.
      expect(held / 2000, `${n} shots ${long} to 1`).toBeGreaterThan(0.935);
      if (long > 1) expect(leant / 2000, `lean of ${n} shots ${long} to 1`).toBeGreaterThan(0.935);
    }
  });

  it('refuses no scatter at all, and takes a line for a very long oval', () => {
    expect(() => leaningOval({ xx: 0, xy: 0, yy: 0 }, 5, 0.05)).toThrow(RangeError);
    const line = leaningOval({ xx: 1, xy: 1, yy: 1 }, 5, 0.05);
    expect([line.ratio, line.p, line.leanHalf]).toEqual([0, 0, 0]);
    expect((line.lean * 180) / Math.PI).toBeCloseTo(45, 9);
  });

  it('is refused or finite for any groups', () => {
    fc.assert(
      fc.property(fc.array(anyShots(), { maxLength: 4 }), (groups) => {
        const result = heightAndWidth(groups);
        if (result.ok) expect(numbersIn(result.value).every(Number.isFinite)).toBe(true);
        else expect(['too-few', 'one-hole', 'on-a-line']).toContain(result.problem.code);
      }),
    );
    expect(refusalOf(heightAndWidth([five.slice(0, 2)]))).toBe('too-few');
    expect(refusalOf(heightAndWidth([[...five, { x: 9, y: 0 }]]))).toBe('bad-position');
    expect(refusalOf(heightAndWidth([five.map(({ x }) => ({ x, y: 0 }))]))).toBe('on-a-line');
    expect(refusalOf(heightAndWidth([five.map(() => ({ x: 0, y: 0 }))]))).toBe('one-hole');
  });
});
