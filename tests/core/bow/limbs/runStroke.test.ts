import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleLimbBow, runStroke, type LimbBow, type StrokeRun } from '../../../../core/bow/index.ts';
import { parabolicBow, randomBows } from '../../../published/strokeByOdex.ts';
import { wrongIn, wrongSentence } from '../../plainText.ts';

const ran = (bow: LimbBow, tolerance?: number): StrokeRun => {
  const run = tolerance === undefined ? runStroke(bow) : runStroke(bow, tolerance);
  if (!run.ok) throw new Error(run.problem.sentence);
  return run.value;
};
const sumOf = (sample: StrokeRun['samples'][number]) =>
  sample.arrowEnergy + sample.limbEnergy + sample.stringEnergy + sample.stored + sample.lost;

/** Bows as they come, the seed being chance’s part. */
const bows = fc.integer({ min: 1, max: 1e9 }).map((seed) => randomBows(1, seed)[0]!);
const drawnBows = bows.filter((bow) => runStroke(bow).ok);

describe('the stroke', () => {
  it('keeps its energy to 0.1 % with losses off, and every part of it is at least nought', () => {
    fc.assert(
      fc.property(drawnBows, (bow) => {
        const run = runStroke({ ...bow, stringDamping: 0, hingeDamping: 0, fingers: 0 });
        if (!run.ok) return;
        for (const sample of run.value.samples) {
          expect(sample.lost).toBeCloseTo(0, 9);
          expect(Math.abs(sumOf(sample) / run.value.work - 1)).toBeLessThan(0.001);
          for (const part of [sample.arrowEnergy, sample.limbEnergy]) expect(part).toBeGreaterThanOrEqual(0);
          expect(sample.stringEnergy).toBeGreaterThanOrEqual(-1e-12);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('closes its ledger with losses on, and what is lost never comes back', () => {
    fc.assert(
      fc.property(drawnBows, (bow) => {
        const { samples, work } = ran(bow);
        samples.forEach((sample, i) => {
          expect(Math.abs(sumOf(sample) / work - 1)).toBeLessThan(0.001);
          if (i > 0) expect(sample.lost).toBeGreaterThanOrEqual(samples[i - 1]!.lost - 1e-7 * work);
        });
        expect(samples.at(-1)!.lost).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  it('is sampled evenly from rest at full draw to the exit, where the string no longer pushes', () => {
    const { samples, exit } = ran(exampleLimbBow);
    expect(samples).toHaveLength(121);
    expect(samples[0]).toMatchObject({ t: 0, u: 0.68, speed: 0, lost: 0 });
    expect(Math.abs(samples[0]!.thrust)).toBeLessThan(1e-6);
    expect(samples[60]!.t / exit.time).toBeCloseTo(0.5, 12);
    expect(samples.at(-1)).toMatchObject({ t: exit.time, u: exit.u, speed: exit.speed });
    expect(samples.slice(1, -1).every(({ thrust }) => thrust > 0)).toBe(true);
    expect(Math.abs(samples.at(-1)!.thrust)).toBeLessThan(1e-6);
  });

  it('is faster for a heavier bow and slower for a heavier arrow, which gets more of the energy', () => {
    fc.assert(
      fc.property(drawnBows, fc.double({ min: 1.05, max: 1.3, noNaN: true }), (bow, share) => {
        const run = ran(bow);
        const stronger = runStroke({ ...bow, force: (u) => share * bow.force(u) });
        if (stronger.ok) {
          expect(stronger.value.exit.speed).toBeGreaterThan(run.exit.speed);
          expect(stronger.value.exit.time).toBeLessThan(run.exit.time);
        }
        const heavier = runStroke({ ...bow, arrowMass: share * bow.arrowMass });
        if (heavier.ok) {
          expect(heavier.value.exit.speed).toBeLessThan(run.exit.speed);
          expect(heavier.value.exit.time).toBeGreaterThan(run.exit.time);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its time and speed when all masses and all forces grow alike', () => {
    fc.assert(
      fc.property(drawnBows, fc.double({ min: 0.5, max: 2, noNaN: true }), (bow, share) => {
        const scaled = runStroke({
          ...bow,
          force: (u) => share * bow.force(u),
          arrowMass: share * bow.arrowMass,
          tipMass: share * bow.tipMass,
          stringMass: share * bow.stringMass,
          stringStiffness: share * bow.stringStiffness,
          stringDamping: share * bow.stringDamping,
          hingeDamping: share * bow.hingeDamping,
        });
        const run = ran(bow);
        if (!scaled.ok) throw new Error(scaled.problem.sentence);
        expect(scaled.value.exit.time / run.exit.time).toBeCloseTo(1, 7);
        expect(scaled.value.exit.speed / run.exit.speed).toBeCloseTo(1, 7);
        expect(scaled.value.exit.virtualMass / run.exit.virtualMass / share).toBeCloseTo(1, 5);
      }),
      { numRuns: 40 },
    );
  });

  it('does to a bow twice the size, at twice the force and eight times the mass, what lengths ask: twice the time, the same speed', () => {
    const bow = exampleLimbBow;
    const twice: LimbBow = {
      arrowMass: 8 * bow.arrowMass,
      force: (u) => 4 * bow.force(u / 2),
      brace: 2 * bow.brace,
      draw: 1.2,
      hingeX: 2 * bow.hingeX,
      hingeY: 2 * bow.hingeY,
      limb: 2 * bow.limb,
      tipMass: 8 * bow.tipMass,
      stringStiffness: 4 * bow.stringStiffness,
      stringMass: 8 * bow.stringMass,
      stringDamping: 4 * bow.stringDamping,
      hingeDamping: 16 * bow.hingeDamping,
      fingers: 2 * bow.fingers,
    };
    const once = ran({ ...bow, draw: 0.6 });
    const run = ran(twice);
    expect(run.exit.time / once.exit.time).toBeCloseTo(2, 5);
    expect(run.exit.speed / once.exit.speed).toBeCloseTo(1, 6);
    expect(run.work / once.work).toBeCloseTo(8, 6);
  });

  it('settles as the tolerance of a step shrinks, and is far inside a millimetre a second at the one it uses', () => {
    const finest = ran(exampleLimbBow, 1e-12).exit;
    const misses = [1e-3, 1e-5, 1e-7, 1e-9].map((tolerance) =>
      Math.abs(ran(exampleLimbBow, tolerance).exit.speed - finest.speed),
    );
    for (const [i, miss] of misses.entries()) if (i > 0) expect(miss).toBeLessThan(misses[i - 1]! / 3);
    expect(Math.abs(ran(exampleLimbBow).exit.speed - finest.speed)).toBeLessThan(1e-4);
    expect(Math.abs(ran(exampleLimbBow).exit.time - finest.time)).toBeLessThan(1e-8);
  });

  it('stores what the force-draw curve holds, to the half per cent that its hinge is fitted to', () => {
    // Area under the parabola of a known fullness: φ F d.
    for (const fullness of [0.5, 0.55, 0.581, 0.6]) {
      const bow = parabolicBow(178, fullness, exampleLimbBow);
      expect(Math.abs(ran(bow).work / (fullness * 178 * 0.46) - 1)).toBeLessThan(0.005);
    }
  });
});

/** Anything at all inside the model's limits, most of it no bow; and bows as they come with one figure moved anywhere. */
const wild = fc.record({
  arrowMass: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
  brace: fc.double({ min: 0.02, max: 0.6, noNaN: true }),
  draw: fc.double({ min: 0.05, max: 1.2, noNaN: true }),
  hingeX: fc.double({ min: -0.3, max: 0.5, noNaN: true }),
  hingeY: fc.double({ min: 0.01, max: 1, noNaN: true }),
  limb: fc.double({ min: 0.05, max: 1.2, noNaN: true }),
  tipMass: fc.double({ min: 0.0005, max: 1, noNaN: true }),
  stringStiffness: fc.double({ min: 1e3, max: 1e6, noNaN: true }),
  stringMass: fc.double({ min: 0, max: 0.1, noNaN: true }),
  stringDamping: fc.double({ min: 0, max: 200, noNaN: true }),
  hingeDamping: fc.double({ min: 0, max: 5, noNaN: true }),
  fingers: fc.double({ min: 0, max: 0.05, noNaN: true }),
});
const figures = ['arrowMass', 'brace', 'draw', 'hingeX', 'hingeY', 'limb', 'tipMass', 'stringStiffness', 'stringMass'] as const;
const anyBow: fc.Arbitrary<LimbBow> = fc
  .tuple(
    wild,
    bows,
    fc.constantFrom('all', ...figures),
    fc.oneof(fc.double({ min: 60, max: 260, noNaN: true }), fc.double({ min: 1, max: 1000, noNaN: true })),
    fc.oneof(fc.double({ min: 0.7, max: 1.7, noNaN: true }), fc.double({ min: -1, max: 3, noNaN: true })),
  )
  .map(([any, usual, which, weight, bend]) => {
    const bow = which === 'all' ? any : { ...usual, [which]: any[which] };
    const force = (u: number) => {
      const x = (u - bow.brace) / (bow.draw - bow.brace);
      return weight * x * (bend + (1 - bend) * x);
    };
    return { ...bow, force };
  });

describe('strokes that cannot be', () => {
  it.each([
    ['a draw below the brace height', { draw: 0.2 }],
    ['no force', { force: () => 0 }],
    ['a force that is not a number', { force: () => Number.NaN }],
    ['a curve that falls from the brace height on', { force: (u: number) => (u > 0.6 ? 100 : -10) }],
    ['a limb that cannot reach the brace height', { limb: 0.15 }],
    ['a draw that the string cannot reach', { draw: 1.19 }],
    ['a mass that is not a number', { tipMass: Number.NaN }],
    ['a mass below nought', { stringMass: -0.001 }],
    ['an endless stiffness', { stringStiffness: Infinity }],
    ['a string as soft as a rubber band', { stringStiffness: 1000 }],
  ])('are refused with a sentence: %s', (_what, change) => {
    const run = runStroke({ ...exampleLimbBow, ...change });
    expect(run.ok).toBe(false);
    if (!run.ok) expect(wrongSentence(run.problem.sentence)).toEqual([]);
  });

  it('are refused, or computed in figures only, whatever bow is asked for; and then the ledger closes', () => {
    let computed = 0;
    const refusals = new Set<string>();
    fc.assert(
      fc.property(anyBow, (bow) => {
        const run = runStroke(bow);
        if (run.ok) {
          computed++;
          expect(wrongIn(run.value, 'run')).toEqual([]);
          for (const sample of run.value.samples) expect(Math.abs(sumOf(sample) / run.value.work - 1)).toBeLessThan(0.001);
          expect(run.value.exit.efficiency).toBeLessThanOrEqual(1 + 1e-7);
        } else {
          refusals.add(run.problem.code);
          expect(wrongSentence(run.problem.sentence)).toEqual([]);
        }
      }),
      { numRuns: 1200, endOnFailure: true },
    );
    expect(computed).toBeGreaterThan(100);
    expect(refusals.size).toBeGreaterThan(3);
  });
});
