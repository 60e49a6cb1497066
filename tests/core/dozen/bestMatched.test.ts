import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestMatched, closestBox, tolerancesOf, type Placed } from '../../../core/dozen/index.ts';
import { blank, changed, grain, inch, setOf, valueOf } from './arrows.ts';

/** Coarse figures on purpose: ties are where a search goes wrong. */
const figure = fc.integer({ min: 0, max: 6 }).map((n) => n / 2);
const things = (least: number, most: number) =>
  fc
    .array(fc.tuple(figure, figure), { minLength: least, maxLength: most })
    .map((places) => places.map(([x, y], index): Placed => ({ number: index + 1, x, y })));

const range = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
const costOf = (chosen: readonly Placed[]) => range(chosen.map(({ x }) => x)) + range(chosen.map(({ y }) => y));
const choices = <T>(from: readonly T[], count: number): T[][] => {
  if (count === 0) return [[]];
  return from.flatMap((first, i) => choices(from.slice(i + 1), count - 1).map((rest) => [first, ...rest]));
};
/** Every choice in the order of its numbers, so that the first of the least is the one wanted. */
const byForce = (all: readonly Placed[], count: number): readonly number[] => {
  let best: readonly Placed[] = [];
  for (const choice of choices(all, count)) if (best.length === 0 || costOf(choice) < costOf(best) - 1e-9) best = choice;
  return best.map(({ number }) => number);
};

describe('the things that lie closest together', () => {
  it('are those that trying every choice finds, ties and all', () => {
    fc.assert(
      fc.property(things(2, 9), fc.integer({ min: 1, max: 9 }), (all, wanted) => {
        const count = Math.min(wanted, all.length);
        expect(closestBox(all, count)).toEqual(byForce(all, count));
      }),
      { numRuns: 300 },
    );
  });

  it('are the same in whatever order they come', () => {
    fc.assert(
      fc.property(
        things(2, 14).chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        fc.integer({ min: 2, max: 7 }),
        ([all, shuffled], wanted) => {
          const count = Math.min(wanted, all.length);
          expect(closestBox(shuffled, count)).toEqual(closestBox(all, count));
        },
      ),
    );
  });

  it('lie no farther apart when there is one more to choose from, and no closer when one more is wanted', () => {
    fc.assert(
      fc.property(things(3, 20), figure, figure, (all, x, y) => {
        const count = Math.floor(all.length / 2) + 1;
        const of = (from: readonly Placed[], wanted: number) => {
          const numbers = closestBox(from, wanted);
          return costOf(from.filter(({ number }) => numbers.includes(number)));
        };
        const before = of(all, count);
        expect(of([...all, { number: 99, x, y }], count)).toBeLessThanOrEqual(before + 1e-9);
        expect(of(all, count - 1)).toBeLessThanOrEqual(before + 1e-9);
      }),
    );
  });

  it('are none when fewer are there than wanted', () => {
    expect(closestBox([{ number: 1, x: 0, y: 0 }], 2)).toEqual([]);
  });
});

const dozen = setOf([
  [320, 720],
  [322, 721],
  [331, 724],
  [319, 705],
  [321, 719],
  [326, 722],
  [320, 741],
  [318, 718],
  [323, 723],
  [340, 720],
  [321, 722],
  [320, 721],
]);

describe('the best-matched arrows of a set', () => {
  it('weigh mass and spine against each other by their tolerances', () => {
    const { numbers, massRange, spineRange, ofAll, cost, within } = valueOf(bestMatched(dozen, 6));
    // By eye: 1, 2, 5, 11 and 12 lie within 2 gr and .003 in. With 8 it is 4 gr and .004 in, with 9 3 gr and .004 in, with 6 6 gr and .003 in.
    expect(numbers).toEqual([1, 2, 5, 9, 11, 12]);
    expect(massRange / grain).toBeCloseTo(3, 9);
    expect((spineRange ?? 0) / inch).toBeCloseTo(0.004, 9);
    expect(cost).toBeCloseTo(3 / 6 + 0.004 / 0.02, 9);
    expect(within).toBe(true);
    expect(ofAll.arrows).toBe(12);
    expect(ofAll.massRange / grain).toBeCloseTo(22, 9);
  });

  it('leave out what is set aside, has a flaw, is bent or was not weighed, and say so', () => {
    const flaw = { nock: 'sound', shaft: 'flaw', point: 'sound', fletching: 'not looked at' } as const;
    const set = changed(dozen, {
      1: { setAside: true },
      2: { lookOver: flaw },
      5: { straightness: 0.01 * inch },
      11: { mass: null },
      12: { spines: [] },
    });
    const { numbers, leftOut } = valueOf(bestMatched(set, 4));
    for (const out of [1, 2, 5, 11, 12]) expect(numbers).not.toContain(out);
    expect(leftOut).toEqual([
      { number: 2, why: 'a flaw in the shaft' },
      { number: 5, why: 'not straight enough' },
      { number: 11, why: 'not weighed' },
      { number: 12, why: 'spine not read' },
    ]);
  });

  it('are matched by mass alone while too few were spined', () => {
    const unspined = {
      ...dozen,
      arrows: dozen.arrows.map((arrow) => ({ ...arrow, spines: arrow.number < 6 ? arrow.spines : [] })),
    };
    const { numbers, spineRange, massRange } = valueOf(bestMatched(unspined, 6));
    expect(spineRange).toBeNull();
    expect(massRange / grain).toBeCloseTo(2, 9);
    expect(numbers.length).toBe(6);
  });

  it('of wood are matched in pounds, as wood is sorted', () => {
    // On the older tester 26/P in: 40, 41, 46 and 47 lb.
    const pounds = [40, 47, 41, 46].map((p): readonly [number, number] => [400, 26000 / p]);
    const wood = { ...setOf(pounds, 'wood'), convention: '26 in, 2 lb' as const };
    const { numbers, poundsRange } = valueOf(bestMatched(wood, 2));
    expect(numbers).toEqual([1, 3]);
    expect(poundsRange).toBeCloseTo(1, 9);
    expect(valueOf(bestMatched(wood, 4)).within).toBe(false);
  });

  it('are the same when all arrows gain the same mass', () => {
    const heavier = { ...dozen, arrows: dozen.arrows.map((arrow) => ({ ...arrow, mass: (arrow.mass ?? 0) + 25 * grain })) };
    for (const count of [2, 5, 8, 12])
      expect(valueOf(bestMatched(heavier, count)).numbers).toEqual(valueOf(bestMatched(dozen, count)).numbers);
  });

  it('are found in a set of the greatest size', () => {
    const many = setOf(Array.from({ length: 144 }, (_, i) => [300 + ((i * 37) % 41), 700 + ((i * 53) % 47)] as const));
    const { numbers } = valueOf(bestMatched(many, 72));
    expect(new Set(numbers).size).toBe(72);
  });

  it.each([
    { what: 'one arrow', count: 1 },
    { what: 'none', count: 0 },
    { what: 'half an arrow', count: 2.5 },
    { what: 'what is no number', count: Number.NaN },
    { what: 'more than there are', count: 13 },
  ])('are refused for $what', ({ count }) => {
    expect(bestMatched(dozen, count).ok).toBe(false);
  });

  it('are refused of a set that is not numbered, or holds what cannot be', () => {
    expect(bestMatched({ ...dozen, arrows: [] }, 2).ok).toBe(false);
    expect(bestMatched(changed(dozen, { 3: { mass: Number.NaN } }), 2).ok).toBe(false);
    expect(bestMatched({ ...dozen, arrows: [blank, { ...blank, number: 2 }] }, 2).ok).toBe(false);
  });

  it('take a match twice as seriously in mass as the club, and no wider anywhere', () => {
    const [club, match] = [tolerancesOf('wood', 'club'), tolerancesOf('wood', 'match')];
    expect(match.mass).toBeLessThan(club.mass);
    expect(match.spine).toBeLessThan(club.spine);
    expect(match.straightness).toBeLessThanOrEqual(club.straightness);
  });
});
