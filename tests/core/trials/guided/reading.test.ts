import { describe, expect, it } from 'vitest';
import { readTrial, type TrialInput } from '../../../../core/trials/index.ts';
import type { Tear } from '../../../../core/model/index.ts';
import { randomFrom } from '../../../../fixtures/random.ts';
import { setUp } from '../build.ts';
import { bare, changed, fletched, mirrored, scattered, trialOf, units } from './build.ts';

const read = (input: TrialInput) => {
  const { verdict, next } = readTrial(input);
  return [verdict, next.kind, next.title];
};
const bareAt = (x: number, y: number, distance = 18) => ({
  distance,
  first: fletched(8, [0, 0], 20),
  second: bare(6, [x, y], 20),
});

describe('the bare shaft', () => {
  it.each([
    ['low', [0, -60], 'Lower the nocking point 1.6 mm'],
    ['high', [0, 60], 'Raise the nocking point 1.6 mm'],
    ['left, right-handed: stiff', [-60, 0], 'Soften the button half a turn'],
    ['right, right-handed: weak', [60, 0], 'Firm the button half a turn'],
    ['low and left: height before side', [-60, -60], 'Lower the nocking point 1.6 mm'],
  ] as const)('%s (common practice)', (_what, [x, y], title) => {
    expect(read(trialOf('bare shaft', [bareAt(x, y)]))).toEqual(['read', 'change', title]);
    expect(read(mirrored(trialOf('bare shaft', [bareAt(x, y)])))).toEqual(['read', 'change', title]);
  });

  it('reads two distances together, each by its angle, and tells it at the farther', () => {
    const found = readTrial(trialOf('bare shaft', [bareAt(-30, 0, 10), bareAt(-54, 0, 18)]));
    expect(found.headline).toBe('Bare shafts land 54 mm left of fletched, and that is real');
    expect(found.subline).toContain('2 distances together, told at 18 m.');
    expect(found.plot).toMatchObject({
      kind: 'shifts',
      points: [{ distance: 10, dx: expect.closeTo(-0.03, 9) as number }, { distance: 18 }],
    });
  });

  it('gives no reading when one distance says left and the other right', () => {
    expect(readTrial(trialOf('bare shaft', [bareAt(-60, 0, 10), bareAt(60, 0, 18)]))).toMatchObject({
      verdict: 'void',
      headline: 'No reading: the distances disagree',
      next: { kind: 'again' },
    });
  });

  it('gives no reading when the bare shafts are no group, or the fletched scatter far wider than the archer does', () => {
    expect(
      readTrial(trialOf('bare shaft', [{ distance: 18, first: fletched(8, [0, 0], 20), second: bare(6, [60, 0], 120) }])),
    ).toMatchObject({
      verdict: 'void',
      next: { kind: 'stop', title: 'Stop the trial: test the clearance' },
    });
    const spread = { perMetre: 0.0003, degreesOfFreedom: 40, from: '5 groups at 18 m' };
    const loose = readTrial(trialOf('bare shaft', [bareAt(60, 0)], { spread }));
    expect([loose.verdict, loose.headline]).toEqual(['void', 'Fletched arrows scatter 2.8 times as wide as usual']);
    // A guess judges nothing.
    expect(read(trialOf('bare shaft', [bareAt(60, 0)], { spread: { ...spread, degreesOfFreedom: null } }))[0]).toBe('read');
  });

  it('takes no shot that somebody left out, and says how many were', () => {
    const wild = bareAt(0, 0);
    const second = {
      ...bare(6, [0, 0], 20),
      shots: bare(6, [0, 0], 20).shots.map((shot, i) => (i < 3 ? { ...shot, x: 0.3, leftOut: 'the nock burst' } : shot)),
    };
    const found = readTrial(trialOf('bare shaft', [{ ...wild, second }]));
    expect(found.headline).not.toMatch(/real$/);
    expect(found.figures).toContainEqual({ name: 'Left out', value: '3 shots: the nock burst', interval: '' });
    expect(found.figures).toContainEqual({ name: 'Arrows', value: '8 fletched and 3 bare', interval: '' });
  });

  it('says how many more when there are too few, and mends the brace height first all the same', () => {
    const few = readTrial(
      trialOf('bare shaft', [{ distance: 18, first: fletched(6, [0, 0], 20), second: bare(1, [40, 0], 20) }]),
    );
    expect([few.verdict, few.next.title, few.more?.arrows]).toEqual(['too few', 'Shoot 3 bare at 18 m', 3]);
    const low = setUp({ bow: { braceLow: null, braceHigh: null }, settings: { braceHeight: 7.5 * 0.0254 } });
    expect(readTrial(trialOf('bare shaft', [bareAt(60, 0)], { bundle: low })).next.title).toBe('Raise the brace height to 8 in');
  });

  it('stops before anything is read when the set-up may not be shot', () => {
    const bundle = setUp({ bow: { hand: 'left' } });
    expect(readTrial(trialOf('bare shaft', [bareAt(60, 0)], { bundle }))).toMatchObject({
      verdict: 'stopped',
      figures: [],
      plot: null,
      next: { kind: 'stop' },
    });
  });

  it('is void when the form changed between the distances, and weakened by other weather', () => {
    const two = trialOf('bare shaft', [bareAt(60, 0, 10), bareAt(60, 0, 18)]);
    const form = { ...(two.groups.values().next().value?.context.form ?? setUp().setup.form), hook: 'three under' as const };
    const both = changed(changed(two, { form }, 2), { form }, 3);
    expect(readTrial(both)).toMatchObject({ verdict: 'void', headline: 'No reading: two forms' });
    const windy = readTrial(changed(changed(two, { weather: 'windy' }, 2), { weather: 'windy' }, 3));
    expect(windy.verdict).toBe('read');
    expect(windy.subline).toContain('Not everything was the same: see the causes.');
    expect(windy.causes.at(-1)?.cause).toBe('Something else was not the same throughout');
  });

  it('weighs the nock fit on record for and against a tight nock', () => {
    const tight = (nockFit: 'tight' | 'a light tap frees it') =>
      readTrial(trialOf('bare shaft', [bareAt(0, -60)], { bundle: setUp({ settings: { nockFit } }) })).causes.find(({ cause }) =>
        cause.includes('too tight'),
      );
    expect(tight('tight')?.evidenceFor).toHaveLength(1);
    expect(tight('a light tap frees it')?.evidenceAgainst).toHaveLength(1);
  });
});

const tears = (across: number, up: number): Tear[] =>
  [2, 3, 4].flatMap((distance) =>
    [-1, 0, 1].map((k): Tear => ({ distance, across: (across + k) / 1000, up: (up + k) / 1000, fletching: 'fletched' })),
  );
const paper = (across: number, up: number) => trialOf('paper tear', [], { trial: { tears: tears(across, up) } });

describe('the paper tear', () => {
  it.each([
    ['nock high: lower the nocking point', [0, 25], ['read', 'change', 'Lower the nocking point 1.6 mm']],
    ['nock low: raise it', [0, -25], ['read', 'change', 'Raise the nocking point 1.6 mm']],
    ['less than a shaft is thick: nothing', [0, 3], ['nothing shown', 'leave', 'Leave it: nothing to change by paper']],
    [
      'to the side up to 2 in: nothing, right-handed or left',
      [45, 0],
      ['nothing shown', 'leave', 'Leave it: nothing to change by paper'],
    ],
    [
      'grossly right, right-handed: stiff, so bare shafts first',
      [80, 0],
      ['read', 'shoot', 'Shoot bare shafts before anything is turned to the side'],
    ],
    ['grossly left, right-handed: weak or touching, so clearance first', [-80, 0], ['read', 'change', 'Test the clearance']],
    ['height before side', [-80, 25], ['read', 'change', 'Lower the nocking point 1.6 mm']],
  ] as const)('%s (common practice; to the side from memory)', (_what, [across, up], wanted) => {
    expect(read(paper(across, up))).toEqual(wanted);
    expect(read(mirrored(paper(across, up)))).toEqual(wanted);
  });

  it('turns round when only the hand changes', () => {
    const left = setUp({ archer: { hand: 'left' }, bow: { hand: 'left' } });
    expect(read({ ...paper(-80, 0), bundle: left })[2]).toBe('Shoot bare shafts before anything is turned to the side');
  });

  it('never turns a button for a tear, however gross', () => {
    for (const across of [-250, -80, 80, 250]) {
      const { next, others } = readTrial(paper(across, 0));
      expect([next, ...others].some(({ patch }) => patch !== null && 'buttonTurns' in patch)).toBe(false);
    }
  });

  it('counts each distance as one tear when the height changes with it', () => {
    const turning = tears(0, 0).map((tear) => ({ ...tear, up: tear.up + (tear.distance - 3) * 0.03 }));
    const found = readTrial(trialOf('paper tear', [], { trial: { tears: turning } }));
    expect(found.verdict).toBe('nothing shown');
    expect(found.subline).toContain('each distance counts as one tear');
  });

  it('wants three tears of a kind', () => {
    expect(readTrial(trialOf('paper tear', [], { trial: { tears: tears(0, 25).slice(0, 2) } }))).toMatchObject({
      verdict: 'too few',
      more: { arrows: 1 },
    });
  });
});

/** Offsets from the plumb line in mm per metre and per square metre, three arrows a distance, evenly either side. */
const walk = (slope: number, bend: number) =>
  trialOf(
    'walk-back',
    [5, 10, 15, 20, 25, 30].map((distance) => {
      const middle = slope * distance + bend * distance ** 2;
      const group = fletched(3, [0, 0], 0);
      return {
        distance,
        first: {
          ...group,
          shots: group.shots.map((shot, i) => ({ ...shot, x: (middle + (i - 1) * 0.4 * distance) / 1000, y: -distance / 100 })),
        },
      };
    }),
  );

describe('the walk-back', () => {
  it.each([
    [
      'slanting left: outward for the right hand',
      [-4, 0],
      'School A: soften the button',
      'School B: bring the centre shot in 0.5 mm',
    ],
    ['slanting right: inward', [4, 0], 'School A: firm the button', 'School B: bring the centre shot out 0.5 mm'],
  ] as const)(
    '%s: sight and cant first, then the two schools, shown as disputed (from memory)',
    (_what, [slope, bend], schoolA, schoolB) => {
      for (const input of [walk(slope, bend), mirrored(walk(slope, bend))]) {
        const found = readTrial(input);
        expect([found.verdict, found.next.kind, found.next.title]).toEqual([
          'read',
          'measure',
          'Check the sight and the cant first',
        ]);
        expect(found.others.map(({ title }) => title)).toEqual([expect.stringContaining(schoolA), schoolB]);
        expect(found.disputed[0]).toMatch(/^School A .* school B /);
        const checked = {
          ...input,
          trial: { ...input.trial, changes: [{ at: input.now, title: found.next.title, patch: null }] },
        };
        expect(readTrial(checked).next.title).toContain(schoolA);
      }
    },
  );

  it('bulging left: the centre shot is out for the right hand, 0.5 mm in; to the right it is in (from memory)', () => {
    for (const input of [walk(-8, 0.3), mirrored(walk(-8, 0.3))])
      expect(read(input)).toEqual(['read', 'change', 'Bring the centre shot in 0.5 mm']);
    expect(readTrial(walk(-8, 0.3)).headline).toMatch(/^The line bends: it bulges \d+ mm to the left$/);
    expect(read(walk(8, -0.3))[2]).toBe('Bring the centre shot out 0.5 mm');
  });

  it('upright: nothing to turn', () => {
    expect(read(walk(0, 0))).toEqual(['nothing shown', 'leave', 'Leave it: the line stands upright']);
  });

  it('runs through the places by weights 1/z\u00b2, so that a slant of 4 mm a metre is 120 mm at 30 m (closed form)', () => {
    expect(readTrial(walk(-4, 0)).headline).toBe('The line slants to the left: 120 mm at 30 m');
  });

  it('wants three distances, and says how many more', () => {
    const { distances } = walk(0, 0).trial.plan;
    const near = walk(0, 0);
    expect(distances.length).toBeGreaterThan(2);
    const two = { ...near, trial: { ...near.trial, groups: near.trial.groups.slice(0, 2) } };
    expect(readTrial(two)).toMatchObject({ verdict: 'too few', more: { arrows: 9 } });
  });

  it('gives a compound its line and no change', () => {
    const found = readTrial({ ...walk(-4, 0), bundle: setUp({ bow: { bowKind: 'compound' } }) });
    expect([found.verdict, found.next.kind, found.figures.length > 2]).toEqual(['void', 'leave', true]);
  });
});

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

  it('is void when the form changed, and weakened when the day did', () => {
    const input = pair(60, 20, 0);
    const form = { ...setUp().setup.form, hook: 'three under' as const };
    expect(readTrial(changed(input, { form }, 1)).verdict).toBe('void');
    const other = readTrial(changed(input, { shotAt: { at: '2026-05-09T10:30:00Z', offsetMinutes: 60 } }, 1));
    expect(other.verdict).toBe('read');
    expect(other.causes[0]?.evidenceAgainst.join(' ')).toContain('Shot on');
  });
});
