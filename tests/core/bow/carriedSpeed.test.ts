import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carriedSentence, kindFigures, setupSpeed } from '../../../core/bow/index.ts';
import { allFindings, speedCarriedFinding } from '../../../core/findings/index.ts';
import { defaultPreferences, exampleBundle, exampleNow, type Bundle, type Settings } from '../../../core/model/index.ts';
import { inch, valueOf } from './readings.ts';

const grain = 6.479891e-5;
const { units } = defaultPreferences;
/** No weight on record, so that K is the kind's own. */
const shot = (weighedGr: number, settings: Partial<Settings>, more: Partial<Bundle> = {}): Bundle => ({
  ...exampleBundle,
  bow: { ...exampleBundle.bow, markedWeight: null, forceDraw: [] },
  arrowSet: { ...exampleBundle.arrowSet, weighed: weighedGr * grain },
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, weightOnFingers: null, weightDraw: null, arrowSpeed: 54.56, ...settings },
  },
  ...more,
});
const then = { speedMass: 352 * grain, speedBrace: 8.5 * inch };

describe('a speed that was measured before the arrow was altered', () => {
  it('is measured as long as arrow and brace height are the same as a scale and a square read again, or were not noted', () => {
    for (const bundle of [
      shot(352, then),
      shot(353, then),
      shot(392, { speedBrace: 8.5 * inch }),
      shot(392, {}),
      shot(352, { ...then, braceHeight: 8.5 * inch + 0.0015 }),
      shot(352, { ...then, braceHeight: null }),
    ])
      expect(valueOf(setupSpeed(bundle))).toMatchObject({ value: 54.56, from: 'measured', carried: null });
    expect(valueOf(setupSpeed(shot(354, then))).from).toBe('carried');
    expect(valueOf(setupSpeed(shot(352, { ...then, braceHeight: 8.5 * inch + 0.002 }))).from).toBe('carried');
  });

  it('falls as √((m₀ + K)/(m + K)) says (Klopsteg 1943): 179 ft/s with 352 gr is 171.5 with 392 on a bow of K = 6 g', () => {
    const speed = valueOf(setupSpeed(shot(392, then)));
    // √((22.8092 + 6)/(25.4012 + 6)) = 0.957843, computed independently.
    expect(speed.value / 54.56).toBeCloseTo(0.957843, 5);
    const { low, high } = kindFigures['take-down recurve']?.virtualMass ?? { low: 0, high: 0 };
    const at = (k: number) => 54.56 * Math.sqrt((352 * grain + k) / (392 * grain + k));
    expect(speed.high - speed.value).toBeCloseTo(Math.hypot(at(high) - speed.value, 0.01 * speed.value), 9);
    expect(speed.value - speed.low).toBeCloseTo(Math.hypot(at(low) - speed.value, 0.01 * speed.value), 9);
    expect(carriedSentence(speed, units)).toBe('179 ft/s, measured with 352 gr; about 171 with 392 gr: measure it again.');
  });

  it('falls with a higher brace height as the stroke does where nothing is known of the weight, and is less sure of it', () => {
    const speed = valueOf(setupSpeed(shot(352, { ...then, braceHeight: 9 * inch })));
    // AMO draw 27.5 in is 25.75 in to the pivot: strokes of 17.25 and 16.75 in; speeds go with the root of a like bow's energy.
    expect(speed.value / 54.56).toBeCloseTo(Math.sqrt(16.75 / 17.25), 9);
    expect(speed.high / speed.value - 1).toBeGreaterThan(0.01);
    expect(speed.carried).toMatchObject({ mass: null, brace: { then: 8.5 * inch, now: 9 * inch } });
    expect(carriedSentence(speed, units)).toMatch(
      /measured with a brace height of 8 1\/2 in; about 176 with a brace height of 9 in/,
    );
  });

  it('is carried over for a compound too, with a wider band than for a recurve', () => {
    const compound = { ...exampleBundle.bow, bowKind: 'compound' as const };
    const width = (bundle: Bundle) => {
      const { low, high, value } = valueOf(setupSpeed(bundle));
      return (high - low) / value;
    };
    expect(width(shot(500, then, { bow: compound }))).toBeGreaterThan(width(shot(500, then)));
  });

  it('is slower for every heavier arrow, faster for every lighter one, inside its band, and the same there and back', () => {
    const gr = fc.integer({ min: 150, max: 900 });
    fc.assert(
      fc.property(gr, gr, (m0, m1) => {
        fc.pre(Math.abs(m1 - m0) > 1);
        const speed = valueOf(setupSpeed(shot(m1, { ...then, speedMass: m0 * grain })));
        expect(Math.sign(speed.value - 54.56)).toBe(Math.sign(m0 - m1));
        expect(speed.low < speed.value && speed.value < speed.high).toBe(true);
        const back = valueOf(setupSpeed(shot(m0, { ...then, arrowSpeed: 60, speedMass: m1 * grain })));
        expect((back.value / 60) * (speed.value / 54.56)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('the finding of a speed that was carried over', () => {
  it('cautions, says what it was measured with and asks for it again', () => {
    const finding = speedCarriedFinding(shot(392, then), units);
    expect(finding).toMatchObject({
      level: 'caution',
      title: 'Speed measured with another arrow',
      detail: '179 ft/s, measured with 352 gr; about 171 with 392 gr: measure it again.',
      action: { screen: 'bow', field: 'settings.arrowSpeed' },
    });
    expect(speedCarriedFinding(shot(352, then), units)).toBeNull();
    expect(allFindings(shot(392, then), { units, now: exampleNow }).map(({ id }) => id)).toContain('speedCarried');
    expect(allFindings(shot(352, then), { units, now: exampleNow }).map(({ id }) => id)).not.toContain('speedCarried');
  });
});
