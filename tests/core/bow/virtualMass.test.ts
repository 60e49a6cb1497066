import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { virtualMassOf } from '../../../core/bow/index.ts';
import type { Band } from '../../../core/model/band.ts';
import { defaultPreferences, exampleBundle, type Bundle } from '../../../core/model/index.ts';
import { bowRead, chronographed, inch, speedsOf, steadyRows, valueOf, withSpeed } from './readings.ts';

const bow = bowRead(steadyRows, {}, { braceHeight: 8.5 * inch });
const fitOf = (bundle: Bundle) => valueOf(virtualMassOf(bundle));
const there = (band: Band | null): Band => {
  if (band === null) throw new Error('A figure was expected.');
  return band;
};

describe('virtual mass from several masses', () => {
  it('gives back the virtual mass and the energy that the speeds were made from [closed form]', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 25, noNaN: true }),
        fc.double({ min: 25, max: 36, noNaN: true }),
        fc.uniqueArray(fc.integer({ min: 15, max: 45 }), { minLength: 3, maxLength: 8 }),
        (virtualG, returned, masses) => {
          fc.pre(Math.max(...masses) - Math.min(...masses) > 8);
          const fit = fitOf(chronographed(speedsOf(returned, virtualG, masses), bow));
          expect(1000 * there(fit.virtualMass).value).toBeCloseTo(virtualG, 6);
          expect(there(fit.returned).value).toBeCloseTo(returned, 6);
          expect(there(fit.virtualMass).low).toBeLessThan(there(fit.virtualMass).value);
          expect(there(fit.virtualMass).high).toBeGreaterThan(there(fit.virtualMass).value);
          expect(fit.from).toBe('several masses');
        },
      ),
    );
  });

  it('does not depend on the order of the readings', () => {
    const speeds = speedsOf(35, 6.3, [18, 31, 22, 40, 26]).map(([massG, speed], i) => [massG, speed + (i % 2) / 7] as const);
    expect(fitOf(chronographed([...speeds].reverse(), bow))).toEqual(fitOf(chronographed(speeds, bow)));
  });

  it('keeps K when the chronograph is out by one factor, and moves the energy by twice that', () => {
    const speeds = speedsOf(33, 6, [18, 24, 33]);
    const [one, other] = [1, 1.01].map((factor) =>
      fitOf(
        chronographed(
          speeds.map(([m, v]) => [m, v * factor] as const),
          bow,
        ),
      ),
    );
    expect((other?.virtualMass?.value ?? 0) / (one?.virtualMass?.value ?? 1)).toBeCloseTo(1, 9);
    expect((other?.returned?.value ?? 0) / (one?.returned?.value ?? 1)).toBeCloseTo(1.0201, 9);
  });

  it('is surer with masses farther apart, and of two rests on the chronograph’s 1 %', () => {
    const width = (masses: readonly number[]) => {
      const { low, high } = there(fitOf(chronographed(speedsOf(33, 6, masses), bow)).virtualMass);
      return high - low;
    };
    expect(width([20, 40])).toBeLessThan(width([20, 30]));
    expect(width([20, 30])).toBeLessThan(width([20, 25]));
    // Of two, by hand: 1 % of each speed moves (m2 + K)/(m1 + K) by 2 √2 %, so K by that times (m1 + K)(m2 + K)/(m2 - m1).
    expect(1000 * width([20, 40])).toBeCloseTo((2 * 0.02 * Math.SQRT2 * 26 * 46) / 20, 1);
  });

  it('holds the true virtual mass about 19 times in 20, for 2, 3, 5 and 9 arrows that scatter by half a per cent', () => {
    // Seeded normal draws by the polar method; 95 % with a standard error of .01 for 500 draws.
    let state = 12345;
    const uniform = () => (state = (state * 48271) % 2147483647) / 2147483647;
    const normal = (): number => {
      const [x, y] = [2 * uniform() - 1, 2 * uniform() - 1];
      const s = x * x + y * y;
      return s > 0 && s < 1 ? x * Math.sqrt((-2 * Math.log(s)) / s) : normal();
    };
    for (const masses of [
      [18, 36],
      [18, 25, 36],
      [16, 20, 25, 30, 36],
      [15, 17, 20, 22, 25, 28, 31, 34, 38],
    ]) {
      let held = 0;
      for (let draw = 0; draw < 500; draw++) {
        const speeds = speedsOf(33, 6, masses).map(([m, v]) => [m, v * (1 + 0.005 * normal())] as const);
        const band = fitOf(chronographed(speeds, bow)).virtualMass;
        // Where the line might be level, K may be anything.
        held += Number(band === null || (band.low <= 0.006 && 0.006 <= band.high));
      }
      expect(held / 500).toBeGreaterThan(0.91);
      expect(held / 500).toBeLessThan(0.995);
    }
  });
});

describe('a virtual mass that is not to be believed', () => {
  const doubts = (speeds: readonly (readonly [number, number])[]) => {
    const fit = valueOf(virtualMassOf(chronographed(speeds, bow), { ...defaultPreferences.units, mass: 'g' }));
    return [fit.credible, fit.why];
  };

  it('asks for what no bow has, on either side', () => {
    expect(doubts(speedsOf(33, 60, [20, 40]))).toEqual([false, expect.stringContaining('60 g')]);
    expect(doubts(speedsOf(33, -4, [20, 40]))).toEqual([false, expect.stringContaining('\u22124 g')]);
  });

  it('comes from speeds that rise with the mass, or hardly fall', () => {
    expect(
      doubts([
        [20, 50],
        [30, 52],
      ]),
    ).toEqual([false, expect.stringContaining('do not fall')]);
    expect(
      doubts([
        [20, 50],
        [22, 49.9],
      ]),
    ).toEqual([false, expect.stringContaining('do not fall')]);
  });

  it('has no figure at all where the speeds are level, rise, or might be level', () => {
    for (const speeds of [
      [50, 50],
      [50, 52],
      [50, 49.9],
    ]) {
      const fit = fitOf(chronographed([20, 22].map((massG, i) => [massG, speeds[i] ?? 0] as const)));
      expect([fit.virtualMass, fit.returned, fit.credible]).toEqual([null, null, false]);
    }
  });

  it('takes no share from a let-down that gives nothing back', () => {
    const down = steadyRows.map(([drawIn]) => [drawIn, 0, 'let-down'] as const);
    const fit = fitOf(chronographed([[20, 52]], bowRead([...steadyRows, ...down])));
    expect(fit.share).toBeNull();
    expect([fit.virtualMass?.low, fit.virtualMass?.high].every(Number.isFinite)).toBe(true);
  });

  it('gives back more than was stored', () => {
    expect(doubts(speedsOf(45, 6, [18, 25, 36]))).toEqual([false, expect.stringContaining('cannot be')]);
  });

  it('comes from speeds that scatter as no chronograph does', () => {
    const speeds = speedsOf(33, 6, [16, 20, 24, 28, 32, 36]).map(([m, v], i) => [m, v * (1 + 0.06 * (i % 2))] as const);
    expect(doubts(speeds)).toEqual([false, expect.stringContaining('scatter')]);
  });
});

describe('whether the virtual mass is one figure', () => {
  const curved = [15, 19, 23, 27, 31, 36, 42, 50].map((massG) => {
    const virtualG = 6 + 6 * ((massG - 30) / 20) ** 2;
    return [massG, Math.sqrt(66 / ((massG + virtualG) / 1000))] as const;
  });

  it('is told from enough masses only, and a bend of grams is seen', () => {
    const constant = (speeds: readonly (readonly [number, number])[]) => fitOf(chronographed(speeds, bow)).constant;
    expect(constant(speedsOf(33, 6, [18, 36]))).toBe('cannot tell');
    expect(constant(speedsOf(33, 6, [18, 24, 36]))).toBe('cannot tell');
    expect(constant(speedsOf(33, 6, [15, 19, 23, 27, 31, 36, 42, 50]))).toBe('yes');
    expect(constant(curved)).toBe('no');
  });
});

describe('virtual mass from one mass', () => {
  it('assumes what comes back and says so; readings of letting down take its place', () => {
    const one = fitOf(chronographed([[20, 52]], bow));
    expect([one.from, one.share, one.constant]).toEqual(['one mass', null, 'cannot tell']);
    expect(one.notes.join(' ')).toContain('90 % to 100 % of the energy is assumed to come back');
    expect(one.cannotSeparate).toContain('One arrow\u2019s speed cannot tell');
    const down = steadyRows.map(([drawIn, forceLb]) => [drawIn, 0.92 * forceLb, 'let-down'] as const);
    const letDown = fitOf(chronographed([[20, 52]], bowRead([...steadyRows, ...down])));
    expect(letDown.share?.value).toBeCloseTo(0.92, 9);
    expect(letDown.returned?.value).toBeCloseTo(0.92 * (letDown.stored?.value ?? 0), 9);
    expect(letDown.notes.join(' ')).toContain('out of the readings of letting down');
  });

  it('takes arrows within 5 % of each other for one', () => {
    expect(
      fitOf(
        chronographed(
          [
            [20, 52],
            [20.5, 51.6],
            [20.8, 51.2],
          ],
          bow,
        ),
      ).from,
    ).toBe('one mass');
  });

  it('is the set-up’s own measured speed where nothing else was shot, and that speed counts once', () => {
    const mass = exampleBundle.arrowSet.weighed ?? 0;
    expect(fitOf(withSpeed(bow, 51)).readings).toBe(1);
    const speeds = speedsOf(33, 6, [18, 25, 36]);
    expect(fitOf(withSpeed(chronographed(speeds, bow), 51)).readings).toBe(4);
    expect(fitOf(withSpeed(chronographed([...speeds, [1000 * mass, 51]], bow), 51)).readings).toBe(4);
  });

  it('is refused without a speed, without an energy to hold it against, and for figures that cannot be', () => {
    expect(virtualMassOf(bow).ok).toBe(false);
    const unknown = { ...bow, archer: { ...bow.archer, drawLength: null } };
    const refused = virtualMassOf(chronographed([[20, 52]], unknown));
    expect(refused.ok ? '' : refused.problem.sentence).toContain('stored energy');
    expect(virtualMassOf(chronographed(speedsOf(33, 6, [18, 36]), unknown)).ok).toBe(true);
    for (const bad of [Number.NaN, 0, -5, 1e4]) {
      expect(virtualMassOf(chronographed([[20, bad]], bow)).ok).toBe(false);
      expect(virtualMassOf(chronographed([[bad, 50]], bow)).ok).toBe(false);
    }
  });
});
