import { describe, expect, it } from 'vitest';
import { shiftOfGroups, type Point } from '../../../../core/group/index.ts';
import { levelPlace } from '../../../../core/trials/guided/levelPlace.ts';
import { meanOf, meansDiffer } from '../../../../core/trials/guided/meanOf.ts';
import { shiftOver } from '../../../../core/trials/guided/shiftOver.ts';
import { sizedSets } from '../../../../core/trials/guided/sizedSets.ts';
import { sizesCompared } from '../../../../core/trials/guided/sizes.ts';
import { lastTouches, shareOf } from '../../../../core/trials/guided/touches.ts';
import { randomFrom } from '../../../../fixtures/random.ts';
import { normalShots } from '../../group/shots.ts';
import { scattered } from './build.ts';

const mm = (places: readonly (readonly [number, number])[]): Point[] => places.map(([x, y]) => ({ x: x / 1000, y: y / 1000 }));
const near = {
  distance: 10,
  first: mm([
    [-12, 7],
    [4, -10],
    [9, 4],
    [-3, 11],
    [-8, -6],
    [5, -1],
  ]),
  second: mm([
    [14, -20],
    [25, -6],
    [12, -9],
    [20, -25],
  ]),
};
const far = {
  distance: 18,
  first: mm([
    [-24, 14],
    [8, -20],
    [18, 9],
    [-6, 22],
    [-15, -11],
    [10, -2],
  ]),
  second: mm([
    [38, -32],
    [52, -10],
    [30, -14],
    [48, -36],
  ]),
};

describe('a shift over several distances', () => {
  it('is that of the formula, computed independently with another package', () => {
    const found = shiftOver([near, far]);
    if (!found.ok) throw new Error(found.problem.sentence);
    const { dx, dy, shape, df, f, p, radius, half, n } = found.value;
    expect(dx).toBeCloseTo(0.038475, 9);
    expect(dy).toBeCloseTo(-0.02675, 9);
    expect([shape, n]).toEqual([0.5, [12, 8]]);
    expect(df[1]).toBeCloseTo(29.187332632, 6);
    expect(f).toBeCloseTo(27.766601458, 6);
    expect(p / 1.76252235e-7).toBeCloseTo(1, 6);
    expect(radius).toBeCloseTo(0.016216754632, 9);
    expect(half.x).toBeCloseTo(0.012225528585, 9);
    expect(half.y).toBeCloseTo(0.014634133788, 9);
  });

  it('of one distance is the shift of the two groups itself', () => {
    expect(shiftOver([far])).toEqual(shiftOfGroups(far.first, far.second));
  });

  it('gives a refusal of its worst pair', () => {
    expect(shiftOver([{ ...near, second: near.second.slice(0, 1) }, far])).toMatchObject({
      ok: false,
      problem: { code: 'one-shot' },
    });
  });

  it('calls a shift that is not there real in about 1 of 20 trials, whatever the arrows, and finds a real one more often with two distances', () => {
    const random = randomFrom(20);
    const trials = 1200;
    let [alarms, one, two] = [0, 0, 0];
    for (let i = 0; i < trials; i++) {
      const pairs = [10, 18].map((distance) => ({
        distance,
        first: scattered(random, 'fletched', 6, [0, 0], 2 * distance).shots,
        second: scattered(random, 'bare', 4, [0, 0], 2 * distance).shots,
      }));
      const moved = pairs.map((pair) => ({
        ...pair,
        second: pair.second.map(({ x, y }) => ({ x: x + (2.2 * pair.distance) / 1000, y })),
      }));
      const real = (of: typeof moved) => {
        const found = shiftOver(of);
        return Number(found.ok && found.value.verdict === 'real');
      };
      alarms += real(pairs);
      one += real(moved.slice(1));
      two += real(moved);
    }
    // Standard error 0.006.
    expect(alarms / trials).toBeGreaterThan(0.03);
    expect(alarms / trials).toBeLessThan(0.065);
    expect(two).toBeGreaterThan(1.4 * one);
  });

  it('is held back along its own line as one distance is, where round groups stand beside ovals', () => {
    // .0735 of 7,500 trials by the formula alone, without the line (computed independently).
    const random = randomFrom(5);
    const trials = 3000;
    let alarms = 0;
    for (let i = 0; i < trials; i++) {
      const pairs = [10, 18].map((distance) => ({
        distance,
        first: normalShots(random, 6, [0.001 * distance, 0.001 * distance]),
        second: normalShots(random, 3, [0.005 * distance, 0.001 * distance]),
      }));
      const found = shiftOver(pairs);
      alarms += Number(found.ok && found.value.verdict === 'real');
    }
    // Standard error 0.004.
    expect(alarms / trials).toBeGreaterThan(0.025);
    expect(alarms / trials).toBeLessThan(0.06);
  });
});

describe('the figures of the other trials', () => {
  it('gives a mean its t interval and p, and means their analysis of variance (computed independently)', () => {
    const found = meanOf([18, 22, 25, 17]);
    expect(found?.low).toBeCloseTo(14.617493845, 8);
    expect(found?.high).toBeCloseTo(26.382506155, 8);
    expect(found?.p).toBeCloseTo(0.0015705288, 9);
    expect(
      meansDiffer([
        [1, 2, 3, 4],
        [2, 3, 5, 4],
        [6, 7, 5, 8],
      ]),
    ).toBeCloseTo(0.004572125, 8);
    expect([
      meanOf([1]),
      meansDiffer([[1], [2]]),
      meansDiffer([
        [1, 1],
        [2, 2],
      ]),
    ]).toEqual([null, null, null]);
  });

  it('gives a share its exact interval: 1 of 10 is 0.0025 to 0.4450, 5 of 10 is 0.1871 to 0.8129 (Clopper and Pearson, computed independently)', () => {
    for (const [k, n, low, high] of [
      [1, 10, 0.00252857854, 0.44501611703],
      [5, 10, 0.18708602845, 0.81291397155],
      [2, 3, 0.094299324, 0.99159624134],
      [3, 20, 0.0320709372, 0.37892682655],
    ] as const) {
      const found = shareOf(k, n);
      expect(found.low).toBeCloseTo(low, 8);
      expect(found.high).toBeCloseTo(high, 8);
    }
    expect(shareOf(0, 3).high).toBeCloseTo(1 - 0.05 ** (1 / 3), 12);
    expect(shareOf(3, 3).low).toBeCloseTo(0.05 ** (1 / 3), 12);
    expect(() => shareOf(4, 3)).toThrow(RangeError);
  });

  it('counts the shots since the nock was last turned', () => {
    const shot = (nockTurn: number, touched: ('fletching' | 'rest')[]) => ({ nockTurn, touched });
    expect(lastTouches([shot(0, ['rest']), shot(0.03125, ['fletching']), shot(0.03125, [])])).toMatchObject({
      touched: 1,
      turns: 2,
      parts: ['fletching'],
      shots: { length: 2 },
    });
  });

  it('reads the level place with Fieller\u2019s interval off a line of three heights (computed independently)', () => {
    const points = [
      { setting: 0.0044, height: 0.05, variance: 1e-4 },
      { setting: 0.006, height: 0.004, variance: 1.5e-4 },
      { setting: 0.0076, height: -0.038, variance: 1e-4 },
    ];
    const found = levelPlace(points, 39);
    expect(found?.slope.value).toBeCloseTo(-27.5, 9);
    expect(found?.level?.value).toBeCloseTo(0.0062, 9);
    expect(found?.level?.low).toBeCloseTo(0.0057418344, 8);
    expect(found?.level?.high).toBeCloseTo(0.0067054244, 8);
    expect((found?.p ?? 0) / 2.54203855e-7).toBeCloseTo(1, 5);
  });

  it('gives no level place while the slope is not told from nought, since it may then be anywhere (Fieller)', () => {
    const flat = [0.0044, 0.006, 0.0076].map((setting, i) => ({ setting, height: 0.002 * (i - 1), variance: 1e-4 }));
    expect(levelPlace(flat, 39)).toMatchObject({ level: null });
    expect(levelPlace(flat.slice(0, 1), 39)).toBeNull();
  });
});

describe('spreads side by side', () => {
  const random = randomFrom(31);
  const sweep = (spreadsMm: readonly number[]) =>
    sizesCompared(
      sizedSets(
        spreadsMm.map((sd, i) => ({
          distance: 18,
          step: 0.21 + 0.003 * i,
          first: scattered(random, 'fletched', 12, [0, 0], sd),
          second: null,
          speeds: [],
        })),
        false,
      ),
    );

  it('calls a brace height better than another in about 1 of 20 sweeps of an unchanged bow, and its least group never by itself', () => {
    const trials = 1000;
    let told = 0;
    for (let i = 0; i < trials; i++) told += Number(sweep([30, 30, 30, 30, 30]).best !== null);
    // Standard error 0.007.
    expect(told / trials).toBeLessThan(0.072);
    expect(told / trials).toBeGreaterThan(0.025);
  });

  it('sees one that is truly a third as wide, and never tells it from the tightest', () => {
    let [told, alone, wrong] = [0, 0, 0];
    for (let i = 0; i < 200; i++) {
      const { best } = sweep([45, 45, 15, 45, 45]);
      told += Number(best !== null);
      alone += Number(best?.[2] === true && best.filter(Boolean).length === 1);
      wrong += Number(best?.[2] === false);
    }
    expect(told).toBeGreaterThan(195);
    expect(alone).toBeGreaterThan(80);
    expect(wrong).toBe(0);
  });

  it('reads the heights of a row alone, whatever their place along it', () => {
    const row = scattered(random, 'fletched', 8, [0, 0], 20);
    const wide = { ...row, shots: row.shots.map((shot, i) => ({ ...shot, x: i / 20 })) };
    const set = (first: typeof row) =>
      sizedSets([{ distance: 18, step: 0.006, first, second: null, speeds: [] }], true)[0]?.lengths;
    expect(set(wide)).toEqual(set(row));
  });
});
