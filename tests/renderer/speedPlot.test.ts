import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { grain } from '../../core/units/exact.ts';
import { speedAt, speedMassData, type Fit, type SpeedMassData } from '../../renderer/plots/speedMass/data.ts';
import { speedMassMarks } from '../../renderer/plots/speedMass/marks.ts';
import { bandName, beneath, headline, note, saidAt, table } from '../../renderer/plots/speedMass/words.ts';
import { expectApart, textsOf } from './labelsApart.ts';

const inches = defaultPreferences.units;
const metric: UnitChoice = { ...inches, mass: 'g', speed: 'm/s' };
const widths = [200, 240, 320, 400, 560, 800];

interface Given {
  readonly energy: number;
  readonly virtualMass: number;
  readonly doubt: number;
  readonly arrow: number;
  readonly least: number | null;
  readonly shot: readonly number[];
}

/** A bow of a given energy and virtual mass: (m + K) v² / 2 = E. */
function bow({ energy, virtualMass, doubt, arrow, least, shot }: Given): SpeedMassData {
  const speed = (mass: number) => {
    const value = Math.sqrt((2 * energy) / (mass + virtualMass));
    return { value, low: value * (1 - doubt), high: value * (1 + doubt) };
  };
  const start = Math.max(arrow * 0.8, least ?? 0);
  const end = Math.max(arrow * 1.35, start * 1.5);
  return {
    samples: Array.from({ length: 41 }, (_, i) => start + ((end - start) * i) / 40).map((mass) => ({ mass, ...speed(mass) })),
    from: doubt > 0.04 ? 'estimated' : 'fitted',
    read: shot.map((mass) => ({ mass, speed: speed(mass).value * 1.004 })),
    arrow: { mass: arrow, speed: least !== null && arrow < least ? null : speed(arrow) },
    least: least === null ? null : { mass: least, from: 'common practice' },
    stored: energy / 0.95,
    fit: null,
  };
}
const usual = bow({ energy: 43, virtualMass: 0.006, doubt: 0.01, arrow: 0.021, least: 0.0155, shot: [0.019, 0.0225, 0.026] });
const fit: Fit = {
  virtualMass: { value: 0.006, low: 0.005, high: 0.007 },
  readings: 3,
  from: 'several masses',
  credible: true,
  why: null,
  cannotSeparate: 'Speeds alone cannot tell stored energy from its loss.',
  notes: [],
};

const any: fc.Arbitrary<Given> = fc.record({
  energy: fc.double({ min: 8, max: 120, noNaN: true }),
  virtualMass: fc.double({ min: 0.002, max: 0.02, noNaN: true }),
  doubt: fc.double({ min: 0.001, max: 0.12, noNaN: true }),
  arrow: fc.double({ min: 0.012, max: 0.05, noNaN: true }),
  least: fc.option(fc.double({ min: 0.01, max: 0.05, noNaN: true })),
  shot: fc.array(fc.double({ min: 0.012, max: 0.06, noNaN: true }), { maxLength: 12 }),
});

describe('The plot of speed against arrow mass', () => {
  it('lets no two texts touch and keeps them inside, for any bow at any width', () => {
    fc.assert(
      fc.property(any, fc.constantFrom(...widths), fc.constantFrom(inches, metric), (given, width, units) => {
        const marks = speedMassMarks(bow(given), width, units);
        expectApart([...marks.labels, ...textsOf(marks.across), ...textsOf(marks.up)], width, marks.height, `${width} px`);
        expect([marks.curve, marks.band, ...marks.edges].join('')).not.toMatch(/NaN|Infinity/);
      }),
      { numRuns: 300, seed: 13 },
    );
  });

  it('names this arrow’s speed, its energy and the limit wherever there is room', () => {
    for (const width of widths.filter((one) => one >= 320)) {
      const texts = speedMassMarks(usual, width, metric).labels.map(({ text }) => text);
      for (const expected of [/^56\.4 m\/s$/, /^33\.4 J/, /15\.5 g$/, /^95 %$/])
        expect(
          texts.some((text) => expected.test(text)),
          `${width}: ${expected} in ${texts.join('; ')}`,
        ).toBe(true);
    }
  });

  it('shows no speed in the zone of arrows that are too light, and none for such an arrow', () => {
    const light = bow({ energy: 43, virtualMass: 0.006, doubt: 0.01, arrow: 0.013, least: 0.0155, shot: [] });
    const marks = speedMassMarks(light, 400, inches);
    expect(marks.arrow).toBeNull();
    expect(headline(light, metric)).toBe('13 g is too light for this bow');
    expect(note(light, metric)).toMatch(/^Least 15\.5 g, common practice\. Do not shoot it/);
    expect(saidAt(light, 0.013, metric).figures).toEqual(['too light: no speed is shown']);
    const first = Number(/^M([\d.]+)/.exec(marks.curve)?.[1]);
    expect(first).toBeGreaterThanOrEqual((marks.tooLight?.x ?? Infinity) - 0.01);
  });

  it('takes the example set-up’s own figures, slower for every heavier arrow', () => {
    const data = speedMassData(exampleBundle, inches);
    if (!data.ok) throw new Error(data.problem.sentence);
    const speeds = data.value.samples.map(({ value }) => value);
    expect(speeds.length).toBeGreaterThan(30);
    for (const [i, speed] of speeds.entries()) if (i > 0) expect(speed).toBeLessThan(speeds[i - 1] ?? 0);
    expect(data.value.arrow.mass).toBeCloseTo(326 * grain, 9);
    // The maker's 7 gr/lb at 33 lb on the fingers are 231 gr.
    expect(data.value.least?.mass).toBeCloseTo(231 * grain, 6);
    expect(data.value.samples[0]?.mass).toBeGreaterThanOrEqual(231 * grain - 1e-9);
    expect(headline(data.value, inches)).toMatch(/^About \d+ ft\/s with 326 gr$/);
  });

  it('gives no speed to an arrow under the floor, and a sentence where the bow says too little', () => {
    const light: Bundle = { ...exampleBundle, arrowSet: { ...exampleBundle.arrowSet, weighed: 150 * grain } };
    const data = speedMassData(light, inches);
    expect(data.ok && data.value.arrow.speed).toBeNull();
    const unknown = speedMassData({ ...exampleBundle, archer: { ...exampleBundle.archer, drawLength: null } }, inches);
    expect(!unknown.ok && unknown.problem.sentence).toMatch(/\.$/);
  });

  it('says what the fit is worth', () => {
    expect(note({ ...usual, fit }, metric)).toBe('Virtual mass 6 g, 95 % 5 to 7 g, from 3 speeds.');
    expect(beneath({ ...usual, fit })).toEqual(['Speeds alone cannot tell stored energy from its loss.']);
    const single = { ...fit, from: 'one mass', readings: 1 } as const;
    expect(note({ ...usual, fit: single }, metric)).toBe('Virtual mass 6 g, 5 to 7 g, from 1 speed.');
    expect(bandName({ ...usual, fit: single })).toBe('from one mass');
    const doubtful = { ...fit, credible: false, why: 'a virtual mass of 138 g is more than the arrow’s own.' };
    expect(note({ ...usual, fit: doubtful }, metric)).toMatch(/^Flagged, not used: a virtual mass of 138 g/);
    expect(note(usual, metric)).toMatch(/^Estimated from the kind of bow/);
  });

  it('reads between samples, and nothing outside them', () => {
    const first = usual.samples[0];
    if (first === undefined) throw new Error('no samples');
    expect(speedAt(usual.samples, first.mass)?.value).toBeCloseTo(first.value, 9);
    expect(speedAt(usual.samples, first.mass * 0.9)).toBeNull();
    expect(speedAt(usual.samples, 1)).toBeNull();
    expect(table(usual, metric).rows).toHaveLength(41 + 3);
  });
});
