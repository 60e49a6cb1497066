import { describe, expect, it } from 'vitest';
import { readTrial } from '../../../../core/trials/index.ts';
import { helmertRadii, momentsOf, shiftTest } from '../../../../core/group/index.ts';
import { meansDiffer } from '../../../../core/trials/guided/meanOf.ts';
import { randomFrom } from '../../../../fixtures/random.ts';
import { setUp } from '../build.ts';
import { bare, changed, fletched, read, scattered, trialOf, units } from './build.ts';

describe('the brace height', () => {
  const random = randomFrom(5);
  const heights = [0.21, 0.216, 0.222, 0.228];
  const sweep = (spreads: readonly number[], speeds: readonly number[] = []) =>
    trialOf(
      'brace height',
      heights.map((step, i) => ({
        distance: 18,
        step,
        first: scattered(random, 'fletched', 12, [0, 0], spreads[i] ?? 30),
        speeds: speeds.length === 0 ? [] : [0, 0.2, -0.2].map((by) => (speeds[i] ?? 50) + by),
      })),
    );

  it('chooses none within the noise, and goes by quietness instead', () => {
    const found = readTrial(sweep([30, 30, 30, 30]));
    expect([found.verdict, found.next.kind, found.headline]).toEqual([
      'nothing shown',
      'leave',
      'No brace height groups tighter than another',
    ]);
    expect(found.plot).toMatchObject({ kind: 'sizes', sizes: [{ amongBest: null }, {}, {}, {}] });
  });

  it('sets one that is told from the others, as a setting on record', () => {
    const found = readTrial(sweep([90, 90, 15, 90]));
    expect([found.verdict, found.headline]).toEqual(['read', 'Groups are tightest at 8 3/4 in, and that is real']);
    expect(found.next).toMatchObject({ kind: 'change', patch: { braceHeight: 0.222 } });
  });

  it('reads speed by a straight line: 53, 52, 51, 50 m/s over 18 mm are \u22120.53 m/s for each 1/8 in (closed form)', () => {
    const metric = { ...sweep([30, 30, 30, 30], [53, 52, 51, 50]), units: { ...units, speed: 'm/s' as const } };
    expect(readTrial(metric).figures.find(({ name }) => name.startsWith('Speed'))?.value).toBe('\u22120.53 m/s');
  });
});

describe('the nocking point', () => {
  const places = (heightsMm: readonly number[]) =>
    trialOf(
      'nocking point',
      [0.0044, 0.006, 0.0076].map((step, i) => ({
        distance: 18,
        step,
        first: fletched(9, [0, 0], 20),
        second: bare(6, [0, heightsMm[i] ?? 0], 20),
      })),
    );

  it('is read where the bare shafts cross the fletched: heights of 50, 0 and \u221250 mm cross at the middle place (closed form)', () => {
    const found = readTrial(places([50, 0, -50]));
    expect(found.headline).toBe('Bare and fletched strike level at 6 mm above square');
    expect(found.next).toMatchObject({ kind: 'leave' });
    const up = readTrial(places([75, 25, -25]));
    expect(up.headline).toBe('Bare and fletched strike level at 6.8 mm above square');
    expect(up.next).toMatchObject({
      kind: 'change',
      title: 'Set the nocking point to 6.8 mm above square',
      patch: { nockingPoint: 0.0068 },
    });
  });

  it('reads nothing far beyond the places tried', () => {
    expect(read(places([150, 120, 90]))).toEqual(['read', 'shoot', 'Try 9.2 mm above square as well']);
  });

  it('gives no reading when a higher nocking point brings bare shafts higher: the shaft bounces (common practice)', () => {
    expect(readTrial(places([-50, 0, 50]))).toMatchObject({ verdict: 'void', next: { kind: 'stop' } });
  });

  it('cannot tell while moving it does nothing that is shown', () => {
    expect(readTrial(places([2, 0, -2]))).toMatchObject({ verdict: 'too few', more: { arrows: 45 } });
  });
});

describe('the clearance', () => {
  const shots = (...touched: ('fletching' | 'rest' | 'arm or clothing')[][]) =>
    trialOf('clearance', [], { trial: { clearance: touched.map((parts) => ({ touched: parts, nockTurn: 0 })) } });

  it('turns the nock by a thirty-second when the fletching touches, and leaves off after three turns (common practice)', () => {
    expect(read(shots(['fletching'], [], []))).toEqual(['read', 'change', 'Turn the nock by a thirty-second of a turn']);
    const turned = [0, 1, 2, 3].map((k) => ({ touched: ['fletching' as const], nockTurn: k / 32 }));
    expect(read(trialOf('clearance', [], { trial: { clearance: turned } }))[2]).toBe('Shorten or turn in the arm of the rest');
  });

  it('does not try twice what is on record as tried', () => {
    const input = shots(['rest']);
    expect(read(input)[2]).toBe('Shorten or turn in the arm of the rest');
    const tried = {
      ...input,
      trial: { ...input.trial, changes: [{ at: input.now, title: 'Shorten or turn in the arm of the rest', patch: null }] },
    };
    expect(read(tried)[2]).toBe('Try lower or shorter fletching');
  });

  it('clears the arm before anything else', () => {
    expect(read(shots(['arm or clothing', 'fletching']))[2]).toBe('Clear arm and clothing');
  });

  it('says after three clean shots that up to 63 of 100 may touch (closed form), and wants three', () => {
    expect(readTrial(shots([], [], []))).toMatchObject({ verdict: 'nothing shown', headline: 'Nothing is touched in 3 shots' });
    expect(readTrial(shots([], [], [])).subline).toBe('It touches in fewer than 64 of 100 shots, 19 times in 20.');
    expect(readTrial(shots([]))).toMatchObject({ verdict: 'too few', more: { arrows: 2 } });
  });
});

describe('A against B', () => {
  const random = randomFrom(9);
  const pair = (a: number, b: number, dx: number) =>
    trialOf(
      'a against b',
      [
        {
          distance: 18,
          first: scattered(random, 'fletched', 18, [0, 0], a),
          second: scattered(random, 'fletched', 18, [dx, 0], b),
        },
      ],
      { trial: { between: 'heavier points' } },
    );

  it('keeps the tighter, puts back the looser, and calls a mere shift neither better nor worse', () => {
    expect(read(pair(60, 20, 0))).toEqual(['read', 'change', 'Keep B']);
    expect(read(pair(20, 60, 0))).toEqual(['read', 'change', 'Put A back']);
    expect(read(pair(20, 20, 80))).toEqual(['read', 'leave', 'Neither is better: B only strikes elsewhere']);
  });

  it('says something of unchanged pairs in at most about 5 trials of 100, though it asks two things, and says in its why that these share them', () => {
    const trials = 1500;
    let [told, onlyAtFive, asked] = [0, 0, 0];
    for (let i = 0; i < trials; i++) {
      const input = pair(20, 20, 0);
      const [a, b] = [...input.groups.values()].map(({ shots }) => shots);
      if (a === undefined || b === undefined) throw new Error('two groups were expected');
      const moments = [momentsOf(a), momentsOf(b)] as const;
      const sizes = meansDiffer([helmertRadii(a), helmertRadii(b)]);
      const least = Math.min(shiftTest(...moments).p, sizes ?? 1);
      told += Number(least < 0.025);
      onlyAtFive += Number(least >= 0.025 && least < 0.05);
      // A reading takes long beside its two chances: the others of more than 5 % are taken as read.
      if (least >= 0.05 && i >= 20) continue;
      asked++;
      expect([least, readTrial(input).verdict === 'read']).toEqual([least, least < 0.025]);
    }
    // Either of two at 2.5 %: 0.05 at most in theory, standard error 0.006. At 5 % each it would be 0.0975.
    expect(told / trials).toBeLessThan(0.06);
    expect(told / trials).toBeGreaterThan(0.025);
    expect(onlyAtFive / trials).toBeGreaterThan(0.025);
    expect(asked).toBeGreaterThan(100);
    const { why } = readTrial(pair(20, 20, 0));
    expect(why.text).toContain('each has half of the 5 %');
    expect(why.text).toContain('less than once in 40');
  });

  it('is void when the form changed, and weakened when the day did', () => {
    const input = pair(60, 20, 0);
    const form = { ...setUp().setup.form, hook: 'three under' as const };
    expect(readTrial(changed(input, { form }, 1)).verdict).toBe('void');
    const other = readTrial(changed(input, { shotAt: { at: '2026-05-09T10:30:00Z', offsetMinutes: 60 } }, 1));
    expect(other.verdict).toBe('read');
    expect(other.causes[0]?.evidenceAgainst.join(' ')).toContain('Shot on');
  });
});
