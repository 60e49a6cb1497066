import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setupSpeed, speedByMass, speedFor, virtualMassOf } from '../../../core/bow/index.ts';
import { exampleBundle, type Bundle } from '../../../core/model/index.ts';
import { bowRead, chronographed, inch, pound, steadyRows, valueOf } from './readings.ts';

/** Speeds of a bow that gives back so much energy [J] with this virtual mass [g]. */
const speedsOf = (returned: number, virtualG: number, masses: readonly number[]) =>
  masses.map((massG) => [massG, Math.sqrt((2 * returned) / ((massG + virtualG) / 1000))] as const);
const bow = bowRead(steadyRows, {}, { braceHeight: 8.5 * inch });
const fitOf = (bundle: Bundle) => valueOf(virtualMassOf(bundle));
const withSpeed = (bundle: Bundle, arrowSpeed: number, settings = {}): Bundle => ({
  ...bundle,
  setup: { ...bundle.setup, settings: { ...bundle.setup.settings, arrowSpeed, ...settings } },
});

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
          expect(1000 * fit.virtualMass.value).toBeCloseTo(virtualG, 6);
          expect(fit.returned.value).toBeCloseTo(returned, 6);
          expect(fit.virtualMass.low).toBeLessThan(fit.virtualMass.value);
          expect(fit.virtualMass.high).toBeGreaterThan(fit.virtualMass.value);
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
    expect((other?.virtualMass.value ?? 0) / (one?.virtualMass.value ?? 1)).toBeCloseTo(1, 9);
    expect((other?.returned.value ?? 0) / (one?.returned.value ?? 1)).toBeCloseTo(1.0201, 9);
  });

  it('is surer with masses farther apart, and of two rests on the chronograph’s 1 %', () => {
    const width = (masses: readonly number[]) => {
      const { low, high } = fitOf(chronographed(speedsOf(33, 6, masses), bow)).virtualMass;
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
        const { low, high } = fitOf(chronographed(speeds, bow)).virtualMass;
        held += Number(low <= 0.006 && 0.006 <= high);
      }
      expect(held / 500).toBeGreaterThan(0.91);
      expect(held / 500).toBeLessThan(0.995);
    }
  });
});

describe('a virtual mass that is not to be believed', () => {
  const doubts = (speeds: readonly (readonly [number, number])[]) => {
    const fit = fitOf(chronographed(speeds, bow));
    return [fit.credible, fit.why];
  };

  it('asks for what no bow has, on either side', () => {
    expect(doubts(speedsOf(33, 60, [20, 40]))).toEqual([false, expect.stringContaining('60 g')]);
    expect(doubts(speedsOf(33, -4, [20, 40]))).toEqual([false, expect.stringContaining('\u22124.0 g')]);
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
    expect(one.notes.join(' ')).toContain('90.0 % to 100.0 % of the energy is assumed to come back');
    expect(one.cannotSeparate).toContain('One arrow\u2019s speed cannot tell');
    const down = steadyRows.map(([drawIn, forceLb]) => [drawIn, 0.92 * forceLb, 'let-down'] as const);
    const letDown = fitOf(chronographed([[20, 52]], bowRead([...steadyRows, ...down])));
    expect(letDown.share?.value).toBeCloseTo(0.92, 9);
    expect(letDown.returned.value).toBeCloseTo(0.92 * (letDown.stored?.value ?? 0), 9);
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

describe('speed of an arrow of any mass', () => {
  const anySpeeds = fc.array(
    fc.tuple(fc.double({ min: 10, max: 60, noNaN: true }), fc.double({ min: 25, max: 80, noNaN: true })),
    { maxLength: 6 },
  );

  it('falls with mass, always, inside its band', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anySpeeds, fc.option(fc.double({ min: 30, max: 70, noNaN: true })), (speeds, own) => {
        const bundle = chronographed(speeds, bow);
        const at = valueOf(speedByMass(own === null ? bundle : withSpeed(bundle, own)));
        let before = Infinity;
        for (let massG = 6; massG <= 90; massG += 1.5) {
          const { value, low, high, from } = valueOf(at(massG / 1000));
          seen.add(from);
          expect(value).toBeLessThan(before);
          expect(low).toBeLessThan(value);
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeGreaterThan(value);
          before = value;
        }
      }),
      { numRuns: 300 },
    );
    expect([...seen]).toEqual(expect.arrayContaining(['estimated', 'fitted']));
  });

  it('goes through a single reading, and is the chronograph’s there', () => {
    const bundle = chronographed([[20, 52]], bow);
    expect(valueOf(speedFor(bundle, 0.02))).toEqual({
      value: 52,
      low: expect.closeTo(51.48, 9),
      high: expect.closeTo(52.52, 9),
      from: 'chronograph',
    });
    expect(valueOf(speedFor(bundle, 0.03)).from).toBe('fitted');
    expect(valueOf(speedFor(bundle, 0.03)).value).toBeLessThan(52);
  });

  it('is the fit’s where several masses were shot, and this arrow’s own reading still stands for this arrow', () => {
    const bundle = chronographed(speedsOf(33, 6, [18, 25, 36]), bow);
    const speed = valueOf(speedFor(bundle, 0.021));
    expect([speed.from, speed.value]).toEqual(['fitted', expect.closeTo(Math.sqrt(66 / 0.027), 6)]);
    expect(valueOf(setupSpeed(bundle)).from).toBe('fitted');
    expect(valueOf(setupSpeed(withSpeed(bundle, 48)))).toMatchObject({ value: 48, from: 'measured' });
  });

  it('follows the draw and the brace height when they have been altered since, with a word and a wider band', () => {
    const speeds = speedsOf(33, 6, [18, 25, 36]);
    const then = chronographed(speeds, bow);
    const noted = { chronographBrace: 8.5 * inch, chronographDraw: 28 * inch };
    const shot = { ...then, setup: { ...then.setup, ...noted } };
    const shorter = { ...shot, archer: { ...shot.archer, drawLength: 27 * inch } };
    const [was, is] = [shot, shorter].map((bundle) => valueOf(speedFor(bundle, 0.021)));
    expect(is?.value ?? 0).toBeLessThan(was?.value ?? 0);
    expect(((is?.high ?? 0) - (is?.low ?? 0)) / (is?.value ?? 1)).toBeGreaterThan(
      ((was?.high ?? 0) - (was?.low ?? 0)) / (was?.value ?? 1),
    );
    expect(fitOf(shot).notes).toEqual([]);
    expect(fitOf(shorter).notes.join(' ')).toContain('a draw of 28 in, now 27 in');
    const higher = { ...shot, setup: { ...shot.setup, settings: { ...shot.setup.settings, braceHeight: 9 * inch } } };
    expect(valueOf(speedFor(higher, 0.021)).value).toBeLessThan(was?.value ?? 0);
    expect(fitOf(higher).notes.join(' ')).toContain('a brace height of 8 1/2 in, now 9 in');
    expect(fitOf(withSpeed(shorter, 50)).readings).toBe(3);
  });

  it('rises with the energy that readings off the scale give, where nothing was shot', () => {
    const stronger = bowRead(steadyRows.map(([drawIn, forceLb]) => [drawIn, 1.1 * forceLb] as const));
    const [weak, strong] = [bow, stronger].map((bundle) => valueOf(speedFor(bundle, 0.021)));
    expect((strong?.value ?? 0) / (weak?.value ?? 1)).toBeCloseTo(Math.sqrt(1.1), 9);
    expect(strong?.from).toBe('estimated');
  });

  it('of a compound is what was shot, and what two masses let expect', () => {
    const compound = { ...exampleBundle, bow: { ...exampleBundle.bow, bowKind: 'compound', markedWeight: 50 * pound } } as const;
    expect(speedFor(compound, 0.025).ok).toBe(false);
    const one = chronographed([[25, 75]], compound);
    expect(valueOf(speedFor(one, 0.025))).toMatchObject({ value: 75, from: 'chronograph' });
    const other = speedFor(one, 0.03);
    expect(other.ok ? '' : other.problem.sentence).toContain('two masses');
    expect(valueOf(speedFor(chronographed(speedsOf(80, 5, [22, 30]), compound), 0.026)).from).toBe('fitted');
  });

  it('refuses an arrow that no bow shoots', () => {
    for (const bad of [Number.NaN, 0, -0.02, 9]) {
      expect(speedFor(bow, bad).ok).toBe(false);
      expect(speedFor(chronographed([[20, 52]], bow), bad).ok).toBe(false);
    }
  });
});
