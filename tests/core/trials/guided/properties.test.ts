import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shiftOver } from '../../../../core/trials/guided/shiftOver.ts';
import { newTrialPlan, readTrial, sheet, type TrialInput } from '../../../../core/trials/index.ts';
import { TrialKind, TrialPlan } from '../../../../core/model/index.ts';
import { randomFrom } from '../../../../fixtures/random.ts';
import { anyUnits } from '../../anyRecords.ts';
import { anyTrial } from '../../anyTrial.ts';
import { setUp } from '../build.ts';
import { scattered, trialOf, units } from './build.ts';

const seeds = fc.integer({ min: 1, max: 1e6 });
const pairs = (seed: number, ends: number) => {
  const random = randomFrom(seed);
  return [10, 18].map((distance) => ({
    distance,
    first: scattered(random, 'fletched', 3 * ends, [0, 0], 2 * distance).shots,
    second: scattered(random, 'bare', 2 * ends, [1.5 * distance, 0], 2 * distance).shots,
  }));
};

describe('whatever is shot', () => {
  it('twice as large on the face is twice the shift, and the same verdict', () => {
    fc.assert(
      fc.property(seeds, fc.constantFrom(0.25, 0.5, 2, 4), (seed, by) => {
        const given = pairs(seed, 3);
        const grown = given.map((pair) => ({
          ...pair,
          first: pair.first.map(({ x, y }) => ({ x: by * x, y: by * y })),
          second: pair.second.map(({ x, y }) => ({ x: by * x, y: by * y })),
        }));
        const [one, other] = [shiftOver(given), shiftOver(grown)];
        if (!one.ok || !other.ok) throw new Error('two shifts were expected');
        expect(other.value.verdict).toBe(one.value.verdict);
        expect(other.value.dx / by).toBeCloseTo(one.value.dx, 9);
        expect(other.value.radius / by).toBeCloseTo(one.value.radius, 9);
        expect(other.value.p).toBeCloseTo(one.value.p, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('more ends make the circle about the shift narrower, on average', () => {
    const mean = (ends: number) => {
      let sum = 0;
      for (let seed = 1; seed <= 60; seed++) {
        const found = shiftOver(pairs(seed, ends));
        sum += found.ok ? found.value.radius : Number.NaN;
      }
      return sum / 60;
    };
    const radii = [2, 4, 8].map(mean);
    expect(radii).toEqual([...radii].sort((a, b) => b - a));
    // Four times the arrows: half the circle, and a little less since the spread is known better.
    expect((radii[0] ?? 0) / (radii[2] ?? 1)).toBeGreaterThan(2);
  });

  it('the order in which places were entered changes nothing', () => {
    fc.assert(
      fc.property(anyTrial, (input) => {
        const turned: TrialInput = { ...input, trial: { ...input.trial, groups: input.trial.groups.toReversed() } };
        const [one, other] = [readTrial(input), readTrial(turned)];
        expect([other.verdict, other.headline, other.next.title]).toEqual([one.verdict, one.headline, one.next.title]);
      }),
      { numRuns: 120 },
    );
  });

  it('a group moved as a whole, bare and fletched together, reads the same', () => {
    fc.assert(
      fc.property(seeds, fc.integer({ min: -100, max: 100 }), fc.integer({ min: -100, max: 100 }), (seed, dx, dy) => {
        const random = randomFrom(seed);
        const at = {
          distance: 18,
          first: scattered(random, 'fletched', 9, [0, 0], 25),
          second: scattered(random, 'bare', 6, [30, -20], 25),
        };
        const shift = (group: typeof at.first) => ({
          ...group,
          shots: group.shots.map((shot) => ({ ...shot, x: shot.x + dx / 1000, y: shot.y + dy / 1000 })),
        });
        const moved = { ...at, first: shift(at.first), second: shift(at.second) };
        const [one, other] = [at, moved].map((place) => readTrial(trialOf('bare shaft', [place])));
        expect([other?.headline, other?.next.title]).toEqual([one?.headline, one?.next.title]);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a plan', () => {
  it('as it is usual is one the notebook takes, inside the bow\u2019s range, for any kind and units', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...TrialKind.options),
        anyUnits,
        fc.option(fc.integer({ min: 4, max: 12 })),
        (kind, own, braceIn) => {
          const bundle = setUp({ settings: { braceHeight: braceIn === null ? null : braceIn * 0.0254 } });
          const plan = newTrialPlan(kind, bundle, own);
          expect(TrialPlan.parse(plan)).toEqual(plan);
          if (kind === 'brace height')
            for (const step of plan.steps) expect(step >= 8.25 * 0.0254 - 1e-6 && step <= 9.25 * 0.0254 + 1e-6).toBe(true);
        },
      ),
      { numRuns: 80 },
    );
  });
});

describe('the sheet', () => {
  it('alternates A and B by turns, A B, B A, so that neither has the fresher arm (common practice)', () => {
    const { rows } = sheet(
      trialOf('a against b', [], { trial: { plan: { distances: [18], ends: 3, arrows: 3, others: 3, steps: [] } } }),
    );
    expect(rows.map(({ which }) => which)).toEqual(['first', 'second', 'second', 'first', 'first', 'second']);
    expect(rows[1]?.text).toBe('18 m, end 1 of 3: 3 of B');
  });

  it('goes up through the brace heights and down again, with the speeds left to whoever has a chronograph', () => {
    const plan = { distances: [18], ends: 2, arrows: 6, others: 0, steps: [0.21, 0.216] };
    const { rows, next } = sheet(trialOf('brace height', [], { trial: { plan } }));
    expect(rows.filter(({ which }) => which === 'first').map(({ place }) => place?.step)).toEqual([0.21, 0.216, 0.216, 0.21]);
    expect(rows.filter(({ optional }) => optional).map(({ which }) => which)).toEqual(['speeds', 'speeds']);
    expect(next).toBe(rows[0]?.key);
  });

  it('is taken up where it was left: an end is done once its shots are there, by their end or by their count', () => {
    const plan = { distances: [18], ends: 2, arrows: 3, others: 2, steps: [] };
    const random = randomFrom(3);
    const first = scattered(random, 'fletched', 3, [0, 0], 20);
    const some = trialOf('bare shaft', [{ distance: 18, first, second: null }], { trial: { plan } });
    expect(sheet(some).rows.map(({ done }) => done)).toEqual([true, false, false, false]);
    expect(sheet(some).next).toBe('18//second/1');
    const inTwo = { ...first, shots: first.shots.map((shot) => ({ ...shot, end: 2 })) };
    const noted = trialOf('bare shaft', [{ distance: 18, first: inTwo, second: null }], { trial: { plan } });
    expect(
      sheet(noted)
        .rows.filter(({ done }) => done)
        .map(({ end }) => end),
    ).toContain(2);
  });

  it('shows the person\u2019s own units', () => {
    const yards = { ...trialOf('walk-back', []), units: { ...units, distance: 'yd' as const } };
    expect(sheet(yards).rows[0]?.text).toBe('5.5 yd: 3 arrows');
  });
});
