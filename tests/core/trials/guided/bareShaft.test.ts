import { describe, expect, it } from 'vitest';
import { readTrial } from '../../../../core/trials/index.ts';
import { setUp } from '../build.ts';
import { bare, changed, fletched, mirrored, read, trialOf } from './build.ts';

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
    expect(found.subline).toContain('Both distances together; the shift is given for 18 m.');
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
