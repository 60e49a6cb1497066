import { describe, expect, it } from 'vitest';
import { smallestShiftFound } from '../../../../core/group/index.ts';
import { exampleFletched } from '../../../../core/model/index.ts';
import { archerSpread, brief, newTrialPlan, type SpreadAt } from '../../../../core/trials/index.ts';
import { errorsFound } from '../../../../core/trials/guided/foundBy.ts';
import { walkBackFinds } from '../../../../core/trials/guided/walkBackFinds.ts';
import { setUp, withContext } from '../build.ts';
import { trialOf, units } from './build.ts';

const SPREAD: SpreadAt = { perMetre: 0.001, degreesOfFreedom: 30, from: '4 groups at 18 m' };
const plan = (ends: number, arrows: number, others: number, distances = [18]) => ({ distances, ends, arrows, others, steps: [] });
const briefOf = (...[kind, own, spread = SPREAD]: [Parameters<typeof trialOf>[0], ReturnType<typeof plan>, (SpreadAt | null)?]) =>
  brief(trialOf(kind, [], { trial: { plan: own }, spread }));

describe('before the first arrow', () => {
  it('promises nothing of the trade\u2019s habit of 3 and 2, which takes 9 spreads, and of 6 and 4 a shift of 2.4 (6000 draws, computed independently)', () => {
    const habit = briefOf('bare shaft', plan(1, 3, 2));
    expect(habit.canShow).toEqual([]);
    expect(habit.cannotShow[0]).toContain('not even one of nine spreads shows four times in five');
    expect(habit.cannotShow.join(' ')).toContain('repeat the ends before you turn anything');
    expect(briefOf('bare shaft', plan(2, 3, 2)).canShow[0]).toContain('(2.4 spreads)');
    // 2.4 spreads of 1 mm per metre at 18 m.
    expect(briefOf('bare shaft', plan(2, 3, 2)).canShow[0]).toMatch(/a shift of 4[34] mm/);
  });

  it('tells the shift of 6 and 6 as 2.0 and of 12 and 12 as 1.3 spreads at 5 %, where the best test of round groups finds 1.94 and 1.31 (table, computed independently)', () => {
    expect(smallestShiftFound(6, 6, 0.8)).toBeCloseTo(1.94, 2);
    expect(briefOf('bare shaft', plan(2, 3, 3)).canShow[0]).toContain('(2.0 spreads)');
    expect(briefOf('bare shaft', plan(4, 3, 3)).canShow[0]).toContain('(1.3 spreads)');
  });

  it('tells the size that 12 and 12 show as 2.0 times, at 2.5 % as 2.2, and promises none of 3 and 3 (60,000 draws: 2.01, 2.22 and never)', () => {
    const sweep = (arrows: number) => briefOf('brace height', plan(1, arrows, 0));
    expect(sweep(12).canShow[0]).toContain('show one group 2.0 times as wide as the other four times in five');
    expect(briefOf('a against b', plan(4, 3, 3)).canShow.join(' ')).toContain('show one group 2.2 times as wide');
    expect(sweep(3).canShow.join(' ')).not.toContain('as wide');
    expect(sweep(3).cannotShow[0]).toContain('3 and 3 arrows miss even one ten times as wide');
  });

  it('tells what A against B shows at the 2.5 % that each of its two questions has: 2.2 and 1.5 spreads, where the best test of round groups finds 2.15 and 1.44 (noncentral F, computed independently)', () => {
    expect(smallestShiftFound(6, 6, 0.8, 0.025)).toBeCloseTo(2.15, 2);
    expect(smallestShiftFound(12, 12, 0.8, 0.025)).toBeCloseTo(1.44, 2);
    expect(briefOf('a against b', plan(2, 3, 3)).canShow[0]).toContain('(2.2 spreads)');
    expect(briefOf('a against b', plan(4, 3, 3)).canShow[0]).toContain('(1.5 spreads)');
  });

  it('says what it rests on: groups on record, or a guess that is called one', () => {
    // 68.27 of 100 lie within one standard deviation of a normal distribution on one axis, about two of three (published tables).
    const meaning = 'two arrows of three strike within it to the side, and two of three in height.';
    expect(briefOf('bare shaft', plan(2, 3, 2)).canShow.at(-1)).toBe(
      `One spread is 18 mm at 18 m, from 4 groups at 18 m: ${meaning}`,
    );
    expect(briefOf('bare shaft', plan(2, 3, 2), null).canShow.at(-1)).toBe(
      `One spread is 36 mm at 18 m, a guess for a settled archer, not checked against a source: ${meaning}`,
    );
  });

  it('promises nothing of one bare shaft', () => {
    const { canShow, cannotShow } = briefOf('bare shaft', plan(1, 3, 1));
    expect(canShow).toEqual([]);
    expect(cannotShow[0]).toMatch(/^Anything at all: at least two arrows of each/);
  });

  it('says that three clean shots leave room for 63 of 100 that touch: 1 \u2212 0.05^(1/3) = 0.632 (closed form)', () => {
    expect(briefOf('clearance', plan(1, 3, 0)).canShow[0]).toBe(
      '3 shots without a mark show that it touches in fewer than 64 of 100 shots, 19 times in 20.',
    );
  });

  it('finds a t four times in five at 3.2009 standard errors with 8 degrees of freedom, 3.1100 with 10 (noncentral t, computed independently)', () => {
    expect(errorsFound(8)).toBeCloseTo(3.2009196, 5);
    expect(errorsFound(10)).toBeCloseTo(3.1099681, 5);
    expect(() => errorsFound(0)).toThrow(RangeError);
  });

  it('finds a slant of 1.226 and a bend of 0.902 spreads at 30 m with three arrows at six distances (computed independently)', () => {
    const found = walkBackFinds(plan(1, 3, 0, [5, 10, 15, 20, 25, 30]));
    expect(found?.slant).toBeCloseTo(1.22605118, 5);
    expect(found?.bow).toBeCloseTo(0.90204139, 5);
  });

  it('finds less with fewer arrows, in every kind of plan', () => {
    const slant = (arrows: number) => walkBackFinds(plan(1, arrows, 0, [5, 10, 20, 30]))?.slant ?? Infinity;
    expect([2, 3, 6, 12].map(slant)).toEqual([2, 3, 6, 12].map(slant).sort((a, b) => b - a));
  });

  it('shows paper\u2019s limits: to the side up to about 2 in says nothing of a finger release (common practice)', () => {
    expect(briefOf('paper tear', plan(1, 3, 0, [2, 3, 4])).cannotShow[0]).toContain('up to 50 mm');
  });
});

describe('the archer\u2019s own spread', () => {
  it('of the example\u2019s six arrows is 0.91 mm per metre: s = 16.042 mm, c4 of 10 degrees of freedom 0.97535 (table of small groups)', () => {
    const found = archerSpread([exampleFletched], 18, units);
    expect(found?.perMetre).toBeCloseTo(0.016042 / 0.97535 / 18, 6);
    expect(found).toMatchObject({ degreesOfFreedom: 10, from: '1 group at 18 m' });
  });

  it('takes the groups at the distance where there are enough, else all of them, by angle', () => {
    const far = withContext(
      { ...exampleFletched, shots: exampleFletched.shots.map((shot) => ({ ...shot, x: shot.x * 3, y: shot.y * 3 })) },
      { distance: 54 },
    );
    expect(archerSpread([exampleFletched, far], 18, units)?.from).toBe('1 group at 18 m');
    const both = archerSpread([exampleFletched, far], 30, units);
    expect(both?.from).toBe('2 groups from 18 m to 54 m');
    expect(both?.degreesOfFreedom).toBe(20);
  });

  it('leaves out bare shafts, single shots, one hole and shots left out', () => {
    const out = {
      ...exampleFletched,
      shots: exampleFletched.shots.map((shot, i) => ({ ...shot, leftOut: i > 0 ? 'a nock burst' : null })),
    };
    expect(
      archerSpread([{ ...exampleFletched, fletching: 'bare' }, out, { ...exampleFletched, shots: [] }], 18, units),
    ).toBeNull();
  });
});

describe('what forbids a trial', () => {
  it('is every stop of the set-up, and nothing is read past it', () => {
    const input = trialOf('bare shaft', [], {
      bundle: setUp({ bow: { dryFired: { at: '2026-05-02T10:00:00Z', offsetMinutes: 60 } } }),
    });
    expect(brief(input).stops.map(({ id }) => id)).toEqual(['dryFired']);
  });

  const sweepOf = (steps: readonly number[], bow: NonNullable<Parameters<typeof setUp>[0]>['bow'] = {}) =>
    brief(
      trialOf('brace height', [], {
        bundle: setUp({ bow }),
        trial: { plan: { distances: [18], ends: 2, arrows: 6, others: 0, steps: [...steps] } },
      }),
    ).stops;

  it('is a brace height outside the maker\u2019s own range in the plan, and any on a compound (common practice)', () => {
    expect(sweepOf([0.2096, 0.2159, 0.25])).toMatchObject([
      { id: 'bracePlan', level: 'stop', title: '9.84 in is not tried: too high for this bow', action: null },
    ]);
    expect(sweepOf([0.2096, 0.2159, 0.25])[0]?.detail).toMatch(
      /^The bow maker allows 8 1\/4 to 9 1\/4 in\. Too high, .* only the bow maker can allow it\./,
    );
    expect(sweepOf([0.2096, 0.2159])).toEqual([]);
    const compound = setUp({ bow: { bowKind: 'compound' } });
    expect(brief(trialOf('brace height', [], { bundle: compound })).stops.map(({ id }) => id)).toEqual(['compoundBrace']);
  });

  it('is a brace height outside common practice for that kind and length where the maker\u2019s range is not on record (recurves of 66 to 68 in: 8 to 9 in, common practice)', () => {
    const inches = [5, 8.5, 13].map((height) => height * 0.0254);
    const [stop, ...more] = sweepOf(inches, { braceLow: null, braceHigh: null });
    expect(more).toEqual([]);
    expect(stop).toMatchObject({ id: 'bracePlan', level: 'stop', action: { label: 'Enter the maker\u2019s range' } });
    expect(stop?.title).toBe('5 in and 13 in are not tried: too low and too high for this bow');
    expect(stop?.detail).toContain('common practice for recurves of 66 to 68 in is 8 to 9 in');
    expect(stop?.detail).toContain('slaps the wrist');
    expect(stop?.detail).toContain('only the bow maker can allow it');
    expect(sweepOf([8.5 * 0.0254], { braceLow: null, braceHigh: null })).toEqual([]);
    // Longbows 6 to 7 in (common practice): what suits a recurve does not suit one.
    expect(sweepOf([8.5 * 0.0254], { bowKind: 'longbow', braceLow: null, braceHigh: null })[0]?.detail).toContain(
      'longbows is 6 to 7 in',
    );
  });
});

describe('the usual brace heights', () => {
  const stepsOf = (parts: NonNullable<Parameters<typeof setUp>[0]>, length: 'in' | 'cm' = 'in') =>
    newTrialPlan('brace height', setUp(parts), { ...units, length }).steps.map((si) => Math.round((si / 0.0254) * 1000) / 1000);
  const common = { braceLow: null, braceHigh: null };

  it('stand about today\u2019s, an eighth apart and five at most (common practice: 3 mm, three to six twists)', () => {
    expect(stepsOf({ bow: common })).toEqual([8.25, 8.375, 8.5, 8.625, 8.75]);
    expect(stepsOf({ bow: common }, 'cm')[1]).toBeCloseTo(8.5 - 3 / 25.4, 3);
  });

  it('move over as far as the range asks, and never leave it', () => {
    // Recurves of 66 to 68 in: 8 to 9 in (common practice); longbows 6 to 7 in.
    expect(stepsOf({ bow: common, settings: { braceHeight: 8.1 * 0.0254 } })).toEqual([8.1, 8.225, 8.35, 8.475, 8.6]);
    expect(stepsOf({ bow: common, settings: { braceHeight: 9 * 0.0254 } })).toEqual([8.5, 8.625, 8.75, 8.875, 9]);
    expect(stepsOf({ bow: { ...common, bowKind: 'self bow' }, settings: { braceHeight: 6 * 0.0254 } })).toEqual([
      5.75, 5.875, 6, 6.125, 6.25,
    ]);
    expect(stepsOf({ bow: { braceLow: 8.4 * 0.0254, braceHigh: 8.6 * 0.0254 } })).toEqual([8.5]);
    expect(stepsOf({ bow: common, settings: { braceHeight: 7 * 0.0254 } })).toEqual([8, 8.125, 8.25, 8.375, 8.5]);
  });

  it('ask for the length of a recurve that has none on record, and for today\u2019s height', () => {
    const asks = (parts: NonNullable<Parameters<typeof setUp>[0]>) =>
      brief(trialOf('brace height', [], { bundle: setUp(parts) })).asks.map(({ action }) => action.label);
    expect(asks({ bow: { ...common, length: null }, settings: { braceHeight: null } })).toEqual([
      'Enter the brace height',
      'Enter the length',
    ]);
    expect(asks({ bow: { length: null } })).toEqual([]);
    expect(asks({ bow: { ...common, bowKind: 'longbow', length: null } })).toEqual([]);
  });
});
