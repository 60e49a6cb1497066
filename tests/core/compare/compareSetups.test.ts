import { describe, expect, it } from 'vitest';
import { benchFigures, compareHeadline, compareSetups, frozenFigures } from '../../../core/compare/index.ts';
import {
  defaultPreferences,
  exampleBundle,
  ShownFigure,
  type BenchRecord,
  type Bundle,
  type RecordKind,
  type ShotBundle,
  type ShotGroup,
  type Stamp,
} from '../../../core/model/index.ts';
import { demoRecords, plantedTruths } from '../../../fixtures/demo/index.ts';
import { ring, setUp, withContext } from '../trials/build.ts';

const { units } = defaultPreferences;
const grain = 6.479891e-5;
const shot = (bundle: Bundle, groups: readonly ShotGroup[] = []): ShotBundle => ({ ...bundle, groups });
const other = (parts: Parameters<typeof setUp>[0] = {}, name = 'Example set-up, other'): Bundle => {
  const bundle = setUp(parts);
  return {
    ...bundle,
    arrowSet: { ...bundle.arrowSet, id: '20000000-0000-4000-8000-000000000003' },
    setup: { ...bundle.setup, id: '20000000-0000-4000-8000-000000000004', name },
  };
};
const row = (key: string, a: ShotBundle, b: ShotBundle) => {
  const found = compareSetups(a, b).find((one) => one.key === key);
  if (found === undefined) throw new Error(`no row ${key}`);
  return found;
};

describe('two set-ups side by side', () => {
  it('are the same in every figure when they are one, without noise that would say otherwise', () => {
    const rows = compareSetups(exampleBundle, exampleBundle);
    expect(rows.length).toBeGreaterThan(15);
    for (const { key, verdict, difference } of rows) expect([verdict, difference], key).toEqual(['same', 0]);
  });

  it('swap their differences when they are swapped', () => {
    const [a, b] = [
      shot(setUp(), [ring('fletched', 8, [0, 0], 20)]),
      shot(other({ arrowSet: { weighed: 300 * grain } }), [ring('fletched', 8, [5, 9], 26)]),
    ];
    const back = compareSetups(b, a);
    compareSetups(a, b).forEach(({ key, difference }, index) => {
      if (difference === null) return;
      expect(back[index]?.difference ?? Number.NaN, key).toBeCloseTo(-difference, 12);
    });
  });

  it('take what a scale shows for the noise of two weighed arrows: ½ gr each, so 0.707 gr together (computed independently)', () => {
    const heavier = row('mass', shot(setUp()), shot(other({ arrowSet: { weighed: 327 * grain } })));
    expect(heavier.verdict).toBe('real');
    expect((heavier.noise ?? 0) / grain).toBeCloseTo(Math.SQRT1_2, 6);
    expect(row('mass', shot(setUp()), shot(other({ arrowSet: { weighed: 326.5 * grain } }))).verdict).toBe('noise');
  });

  it('let a doubt that both share cancel: with one bow and no chronograph a lighter arrow is surely faster', () => {
    const light = { arrowSet: { weighed: 300 * grain } };
    const same = row('speed', shot(setUp()), shot(other(light)));
    expect([same.verdict, (same.difference ?? 0) > 0]).toEqual(['real', true]);
    expect(same.reference?.half ?? 0).toBeGreaterThan(same.difference ?? 0);
    const stranger = other(light);
    const another = { ...stranger, bow: { ...stranger.bow, id: '20000000-0000-4000-8000-000000000002' } };
    expect(row('speed', shot(setUp()), shot(another)).verdict).toBe('noise');
  });

  it('add the doubts of two chronograph readings, 1 % each, as squares (computed independently)', () => {
    const speed = row('speed', shot(setUp({ settings: { arrowSpeed: 54 } })), shot(other({ settings: { arrowSpeed: 55 } })));
    expect(speed.noise ?? 0).toBeCloseTo(Math.hypot(0.54, 0.55), 9);
    expect(speed.verdict).toBe('real');
  });

  it('believe a wider group of 12 beside 12 from 1.54 times on, not before (computed for the practice of group tuning)', () => {
    const verdict = (times: number) =>
      row(
        'meanRadius',
        shot(setUp(), [ring('fletched', 12, [0, 0], 20)]),
        shot(other(), [ring('fletched', 12, [0, 0], 20 * times)]),
      ).verdict;
    expect([verdict(1.5), verdict(1.58), verdict(1 / 1.5), verdict(1 / 1.58)]).toEqual(['noise', 'real', 'noise', 'real']);
  });

  it('do not take one flyer for a wider group', () => {
    const tight = ring('fletched', 12, [0, 0], 20);
    const flyer = { ...tight, shots: tight.shots.map((one, index) => (index === 0 ? { ...one, x: 0.11 } : one)) };
    expect(row('meanRadius', shot(setUp(), [tight]), shot(other(), [flyer])).verdict).toBe('noise');
  });

  it('compare groups at one distance only, and say so otherwise', () => {
    const near = ring('fletched', 8, [0, 0], 20);
    const far = withContext(near, { distance: 30 });
    const apart = row('meanRadius', shot(setUp(), [near]), shot(other(), [far]));
    expect([apart.verdict, apart.difference]).toEqual(['unknown', null]);
    expect(apart.note).toBe('Shot at two distances: 8 arrows at 18 m; 8 arrows at 30 m.');
    expect(row('meanRadius', shot(setUp(), [near]), shot(other(), [near, far])).verdict).toBe('same');
  });

  it('say where the groups were shot in the person’s own unit', () => {
    const [near, far] = [ring('fletched', 8, [0, 0], 20), withContext(ring('fletched', 8, [0, 0], 20), { distance: 27.432 })];
    const yards = { ...units, distance: 'yd' as const };
    const apart = compareSetups(shot(setUp(), [near]), shot(other(), [far]), yards).find(({ key }) => key === 'meanRadius');
    expect(apart?.note).toBe('Shot at two distances: 8 arrows at 19.7 yd; 8 arrows at 30 yd.');
    const assumed = compareSetups(shot(setUp({ form: { eyeHeight: null } })), shot(other({ form: { eyeHeight: null } })), {
      ...units,
      setting: 'cm',
    }).find(({ key }) => key === 'drop');
    expect(assumed?.note).toBe('eye 10 cm over the arrow assumed');
  });

  it('have the tube, brace height, tiller and string side by side, and no row for what neither has', () => {
    const mm = 0.001;
    const keys = ['diameter', 'wall', 'braceHeight', 'tiller', 'strands', 'stringLength', 'stringMass'];
    const plain = shot(setUp());
    const shown = (a: ShotBundle, b: ShotBundle) =>
      compareSetups(a, b)
        .map(({ key }) => key)
        .filter((key) => keys.includes(key));
    // The example has no wall and no string on record.
    expect(shown(plain, plain)).toEqual(['diameter', 'braceHeight', 'tiller']);
    const strung = shot(
      other({
        arrowSet: { wall: 0.4 * mm },
        settings: { strands: 16, stringMaterial: 'polyester', tiller: 5 * mm, braceHeight: 0.2165 },
      }),
    );
    expect(shown(plain, strung)).toEqual(['diameter', 'wall', 'braceHeight', 'tiller', 'strands']);
    expect(shown(strung, plain)).toEqual(shown(plain, strung));
    // A tape is read to 1 mm and a tiller to half of one, each time: 0.6 mm of brace height are within, 2 mm of tiller are not.
    expect(row('braceHeight', plain, strung).verdict).toBe('noise');
    expect(row('tiller', plain, strung)).toMatchObject({ verdict: 'real', section: 'On the bow' });
    expect(row('tiller', plain, strung).noise).toBeCloseTo(Math.hypot(0.5, 0.5) * mm, 12);
    expect(row('strands', plain, strung)).toMatchObject({ verdict: 'unknown', note: 'Not on record for both.' });
    const fewer = shot(setUp({ settings: { strands: 14, stringMaterial: 'HMPE' } }));
    expect(row('strands', strung, fewer)).toMatchObject({ verdict: 'real', difference: -2, note: 'polyester; HMPE' });
  });

  it('say what an unknown figure waits for', () => {
    const blank = row('deflection', shot(setUp()), shot(other({ arrowSet: { deflection: null } })));
    expect(blank).toMatchObject({ verdict: 'unknown', other: null, difference: null, note: 'Waits for the spine deflection.' });
    expect(row('bareOff', shot(setUp()), shot(other())).note).toContain('Waits for fletched and bare groups');
  });
});

describe('the figures of one set-up', () => {
  it('stand in four sections with a half width for everything that is known', () => {
    const figures = benchFigures(exampleBundle, units);
    expect([...new Set(figures.map(({ section }) => section))]).toEqual(['Build', 'On the bow', 'On the face', 'Far off']);
    expect(new Set(figures.map(({ key }) => key)).size).toBe(figures.length);
    for (const { key, value, half } of figures) {
      expect(value, key).not.toBeNull();
      expect((half ?? -1) >= 0 && Number.isFinite(half), key).toBe(true);
    }
  });

  it('freeze into what a snapshot takes', () => {
    const frozen = frozenFigures(exampleBundle);
    expect(frozen.length).toBeGreaterThan(15);
    for (const figure of frozen) expect(ShownFigure.parse(figure)).toEqual(figure);
  });

  it('say what they wait for when nothing is known, and let no NaN out', () => {
    const empty = setUp({
      archer: { drawLength: null },
      bow: { length: null, markedWeight: null, braceLow: null, braceHigh: null },
      arrowSet: { length: null, deflection: null, linearDensity: null, pointMass: null, weighed: null, diameter: null },
      settings: { braceHeight: null, weightOnFingers: null, arrowSpeed: null, pointAhead: null },
    });
    for (const { key, value, note } of benchFigures(empty)) expect([value, note.length > 10], key).toEqual([null, true]);
  });

  it('are the arrow\u2019s, not the flight\u2019s, for a compound without a chronograph', () => {
    const compound = benchFigures(setUp({ bow: { bowKind: 'compound' } }));
    expect(compound.find(({ key }) => key === 'mass')?.value).not.toBeNull();
    expect(compound.filter(({ key }) => ['column', 'cycles', 'speed', 'drop'].includes(key)).map(({ value }) => value)).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('the demo\u2019s planted comparison', () => {
  it('finds the smaller bare shift of the lighter point, and no difference in group size', () => {
    const now: Stamp = { at: '2026-06-20T17:45:00.000Z', offsetMinutes: 60 };
    const records = demoRecords(now);
    const get = <K extends RecordKind>(kind: K, id: string) =>
      records.find((one) => one.kind === kind && one.id === id) as Extract<BenchRecord, { kind: K }>;
    const bundle = (setupId: string): ShotBundle => {
      const setup = get('setup', setupId);
      const groups = records.filter((one): one is ShotGroup => one.kind === 'group' && one.setupId === setupId);
      return {
        setup,
        archer: get('archer', setup.archerId),
        bow: get('bow', setup.bowId),
        arrowSet: get('arrowSet', setup.arrowSetId),
        groups: groups.sort((a, b) => a.context.shotAt.at.localeCompare(b.context.shotAt.at)),
      };
    };
    const { setupIds, expected } = plantedTruths.comparison;
    const [heavy, light] = setupIds.map(bundle) as [ShotBundle, ShotBundle];
    const rows = compareSetups(heavy, light);
    const find = (key: string) => rows.find((one) => one.key === key);
    expect(find('bareSide')?.verdict).toBe('real');
    expect((find('bareOff')?.difference ?? 0) < 0).toBe(expected.smallerBareShift === 1);
    expect(find('meanRadius')?.verdict).toBe(expected.meanRadius);
    expect(find('mass')?.verdict).toBe('real');
    expect(compareHeadline(rows, heavy, light, units)).toMatch(
      /^The 85 gr point: bare shafts land \d+ mm from the fletched, not \d+ mm; shoot neither until the brace height is mended$/,
    );
  });
});
