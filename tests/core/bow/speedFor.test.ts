import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setupSpeed, speedByMass, speedFor, virtualMassOf } from '../../../core/bow/index.ts';
import { exampleBundle, type Bundle } from '../../../core/model/index.ts';
import { bowRead, chronographed, inch, pound, speedsOf, steadyRows, valueOf, withSpeed } from './readings.ts';

const bow = bowRead(steadyRows, {}, { braceHeight: 8.5 * inch });
const fitOf = (bundle: Bundle) => valueOf(virtualMassOf(bundle));

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

  it('is never below nought at its low end, however little the readings leave', () => {
    // Readings that fall away before full draw leave a stored energy whose band begins at nothing.
    const doubtful = bowRead([
      [12, 60],
      [28, 0.1],
    ]);
    for (const massG of [8, 20, 60]) {
      const speed = speedFor(doubtful, massG / 1000);
      if (speed.ok) expect(speed.value.low).toBeGreaterThanOrEqual(0);
    }
    expect(valueOf(speedFor(doubtful, 0.02)).low).toBe(0);
  });
});
