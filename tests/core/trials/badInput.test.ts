import { describe, expect, it } from 'vitest';
import { defaultPreferences, exampleBare, exampleFletched, type ShotGroup } from '../../../core/model/index.ts';
import { readBareShaft, readTwoGroups } from '../../../core/trials/index.ts';
import { ring, setUp, withContext } from './build.ts';

const { units } = defaultPreferences;
const shots = (group: ShotGroup, count: number): ShotGroup => ({ ...group, shots: group.shots.slice(0, count) });
const read = (fletched: ShotGroup, bare: ShotGroup, bundle = setUp()) => readBareShaft(bundle, fletched, bare, units);

describe('groups that give no reading', () => {
  it('says how many shots were expected when there are none or one', () => {
    const none = read(exampleFletched, shots(exampleBare, 0));
    expect([none.problem?.code, none.shift, none.lateral, none.vertical]).toEqual(['no-shots', null, null, null]);
    expect(none.subline).toBe('There are no bare shots: at least two were expected, better four.');
    const one = read(shots(exampleFletched, 1), exampleBare);
    expect(one.subline).toBe('One fletched shot cannot show its scatter: at least two were expected, better six.');
    expect([one.next.kind, one.next.title]).toEqual(['again', 'Shoot 6 fletched and 4 bare']);
  });

  it('refuses both groups in one hole, since nothing shows the scatter', () => {
    const { problem, headline, next } = read(ring('fletched', 6, [0, 0], 0), ring('bare', 4, [40, 0], 0));
    expect(problem?.code).toBe('one-hole');
    expect(headline).toBe('No reading: all in one hole');
    expect(next.kind).toBe('again');
  });

  it('refuses places that are no places, and lets no NaN out', () => {
    const bad = {
      ...exampleBare,
      shots: exampleBare.shots.map((shot, index) => (index === 1 ? { ...shot, x: Number.NaN } : shot)),
    };
    const reading = read(exampleFletched, bad);
    expect(reading.problem?.code).toBe('bad-position');
    expect(reading.subline).toContain('Shot 2 of the bare group');
    expect(JSON.stringify(reading)).not.toMatch(/NaN|undefined|Infinity/);
  });

  it('refuses two distances, and says to shoot both at the nearer one', () => {
    const reading = read(exampleFletched, withContext(exampleBare, { distance: 30 }));
    expect([reading.headline, reading.subline]).toEqual([
      'No reading: two distances',
      'Fletched shot at 18 m, bare at 30 m: one distance was expected.',
    ]);
    expect(reading.next).toMatchObject({ kind: 'again', title: 'Shoot both at 18 m', patch: null });
  });

  it('refuses two forms', () => {
    const reading = read(
      exampleFletched,
      withContext(exampleBare, { form: { ...exampleBare.context.form, hook: 'three under' } }),
    );
    expect([reading.problem?.code, reading.next.title]).toEqual(['form', 'Shoot both in one form']);
    expect(reading.shift).toBeNull();
  });

  it('refuses groups of two set-ups, and two groups of one kind', () => {
    const elsewhere = { ...exampleBare, setupId: '20000000-0000-4000-8000-000000000009' };
    expect(read(exampleFletched, elsewhere).problem?.code).toBe('setup');
    expect(read(exampleFletched, exampleFletched).problem?.code).toBe('fletching');
  });

  it('gives a compound its shift, but neither stiff nor weak nor a change', () => {
    const reading = read(exampleFletched, exampleBare, setUp({ bow: { bowKind: 'compound' } }));
    expect(reading.shift?.verdict).toBe('real');
    expect([reading.lateral, reading.vertical, reading.next.kind]).toEqual([null, null, 'leave']);
    expect(reading.subline).toContain('Stiff and weak are read from a finger release');
  });

  it('reads nothing while bow and archer are of different hands', () => {
    const off = setUp({ bow: { hand: 'left' } });
    expect(read(exampleFletched, exampleBare, off).next.kind).toBe('stop');
    const bareHand = setUp({ bow: { hand: 'left', arrowPass: 'hand', bowKind: 'self bow' } });
    expect(read(exampleFletched, exampleBare, bareHand)).toMatchObject({ lateral: null, next: { kind: 'measure' } });
  });

  it('adds that the brace height is outside common practice when the groups must be shot again anyway', () => {
    const bow = { braceLow: null, braceHigh: null };
    const reading = read(exampleFletched, shots(exampleBare, 1), setUp({ bow, settings: { braceHeight: 7.875 * 0.0254 } }));
    expect(reading.next.text).toContain('Mend the brace height first: it is 7 7/8 in, low.');
    expect(reading.others[0]?.title).toBe('Raise the brace height to 8 in');
  });

  it('lets nothing be shot again before a brace height outside the maker\u2019s range is mended', () => {
    const reading = read(exampleFletched, shots(exampleBare, 1), setUp({ settings: { braceHeight: 8.125 * 0.0254 } }));
    expect([reading.next.title, reading.others.map(({ title }) => title)]).toEqual([
      'Raise the brace height to 8 1/4 in',
      ['Shoot 6 fletched and 4 bare'],
    ]);
    expect(reading.next.caution).toContain('shoot nothing until it is mended');
  });

  it('sends a compound outside its maker\u2019s range to a technician, without a word of twists', () => {
    const { next } = read(exampleFletched, exampleBare, setUp({ bow: { bowKind: 'compound' }, settings: { braceHeight: 0.2 } }));
    expect([next.kind, next.title, next.patch]).toEqual(['stop', 'Have the brace height set: it is 7 7/8 in, low', null]);
    expect(next.text).toContain('a technician sets it on a press');
    expect(JSON.stringify(next)).not.toMatch(/twist/);
  });

  it('reads a bare group beside fletched arrows that all went into one hole', () => {
    const reading = read(ring('fletched', 6, [0, 0], 0), ring('bare', 4, [60, 0], 15));
    expect([reading.problem, reading.erratic, reading.lateral]).toEqual([null, false, 'weak']);
  });
});

describe('very many shots', () => {
  it('are read like few: a hundred thousand in one group', () => {
    const many = ring('fletched', 100_000, [0, 0], 20);
    expect(read(many, ring('bare', 8, [60, 0], 20)).lateral).toBe('weak');
  });
});

describe('one group beside another of its kind', () => {
  const second = ring('fletched', 6, [44, 0], 20);
  const first = ring('fletched', 6, [0, 0], 20);

  it('says where the second lies and how sure that is, without stiff or weak', () => {
    const found = readTwoGroups(first, second, units);
    expect(found.headline).toBe('The second group lands 44 mm right of the first, and that is real');
    expect(found.subline).toMatch(/^Chance alone would do that once in [\d,]+ tries\.$/);
    expect(JSON.stringify(found)).not.toMatch(/stiff|weak/);
  });

  it('says that the difference is not the equipment\u2019s alone when weather, day or face differ, but not for the settings on trial', () => {
    const windy = readTwoGroups(first, withContext(second, { weather: 'windy' }), units);
    expect(windy.subline).toMatch(/not the equipment\u2019s alone\.$/);
    const turned = readTwoGroups(first, withContext(second, { settings: { ...second.context.settings, tiller: 0.005 } }), units);
    expect(turned.subline).not.toMatch(/alone\.$/);
    expect(turned.differences).toHaveLength(1);
    const settings = { ...second.context.settings, tiller: 0.005, nockingPoint: 0.004 };
    expect(readTwoGroups(first, withContext(second, { settings }), units).subline).toMatch(
      /Two things of the equipment differ: which of them did it cannot be told\.$/,
    );
  });

  it('refuses two distances, one shot, and bare beside fletched', () => {
    expect(readTwoGroups(first, withContext(second, { distance: 30 }), units).problem?.code).toBe('distance');
    expect(readTwoGroups(first, shots(second, 1), units).subline).toMatch(/^One shot in the second group/);
    expect(readTwoGroups(first, ring('bare', 4, [0, 0], 20), units).problem?.code).toBe('fletching');
  });
});
