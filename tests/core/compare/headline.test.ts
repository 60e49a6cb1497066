import { describe, expect, it } from 'vitest';
import { compareHeadline, compareSetups, shortNames } from '../../../core/compare/index.ts';
import { defaultPreferences, exampleBundle, type Bundle, type ShotBundle, type ShotGroup } from '../../../core/model/index.ts';
import { ring, setUp } from '../trials/build.ts';

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

describe('the headline of a comparison', () => {
  const head = (a: ShotBundle, b: ShotBundle) => compareHeadline(compareSetups(a, b), a, b, units);
  const named = (bundle: Bundle, name: string): Bundle => ({ ...bundle, setup: { ...bundle.setup, name } });
  const fletched = ring('fletched', 12, [0, 0], 20);

  it('keeps the set-up whose bare shafts land really nearer', () => {
    const a = shot(named(setUp(), 'Tobin, 110 gr'), [fletched, ring('bare', 8, [60, 0], 20)]);
    const b = shot(named(other(), 'Tobin, 85 gr'), [fletched, ring('bare', 8, [5, 0], 20)]);
    expect(head(a, b)).toBe('Keep the 85 gr: bare shafts land 5 mm from the fletched, not 60 mm');
    expect(head(b, a)).toBe('Keep the 85 gr: bare shafts land 5 mm from the fletched, not 60 mm');
  });

  it('keeps nothing between two archers', () => {
    const b = other();
    const stranger = { ...b, archer: { ...b.archer, id: '20000000-0000-4000-8000-000000000001' } };
    const line = head(
      shot(setUp(), [fletched, ring('bare', 8, [60, 0], 20)]),
      shot(stranger, [fletched, ring('bare', 8, [5, 0], 20)]),
    );
    expect(line).not.toMatch(/^Keep/);
  });

  it('says both when bare shafts and group size disagree', () => {
    const a = shot(named(setUp(), 'A'), [ring('fletched', 12, [0, 0], 20), ring('bare', 8, [90, 0], 20)]);
    const b = shot(named(other(), 'B'), [ring('fletched', 12, [0, 0], 40), ring('bare', 8, [10, 0], 30)]);
    expect(head(a, b)).toBe('B: bare shafts land 10 mm from the fletched, not 90 mm; but A groups tighter');
  });

  it('says what the build shows when the face shows nothing, and when there are no groups', () => {
    const light = other({ arrowSet: { weighed: 300 * grain } }, 'B');
    expect(head(shot(named(setUp(), 'A'), [fletched]), shot(light, [fletched]))).toMatch(
      /^B\u2019s arrows are 26 gr lighter and .*; the face shows no difference yet$/,
    );
    expect(head(shot(named(setUp(), 'A')), shot(light))).toMatch(
      /^B\u2019s arrows are 26 gr lighter .*; no groups at one distance yet$/,
    );
    const described = other({ arrowSet: { weighed: 300 * grain } }, 'Tobin, 85 gr');
    expect(head(shot(named(setUp(), 'Tobin, 110 gr')), shot(described))).toMatch(/^The 85 gr: arrows 26 gr lighter /);
  });

  it('puts a stop before everything', () => {
    const short = other({ settings: { pointAhead: -0.01 } }, 'B');
    expect(head(shot(named(setUp(), 'A'), [fletched]), shot(short, [fletched]))).toBe(
      'Do not shoot B. Arrow too short: its end is 3/8 in behind the rest',
    );
  });

  it('advises neither of two that are stopped, nor one of them', () => {
    const bare = (at: number) => ring('bare', 8, [at, 0], 20);
    // Outside the maker’s 8 1/4 to 9 1/4 in.
    const low = { settings: { braceHeight: 7.5 * 0.0254 } };
    const sound = shot(named(setUp(), 'A'), [fletched, bare(60)]);
    const lowA = shot(named(setUp(low), 'A'), [fletched, bare(60)]);
    const lowB = shot(named(other(low), 'B'), [fletched, bare(5)]);
    const landed = 'B: bare shafts land 5 mm from the fletched, not 60 mm';
    expect(head(lowA, lowB)).toBe(`${landed}; shoot neither until the brace height is mended`);
    expect(head(sound, lowB)).toBe(`${landed}; do not shoot B until its brace height is mended`);
    const short = { settings: { pointAhead: -0.01 } };
    const shortB = shot(named(other(short), 'B'), [fletched, bare(5)]);
    expect(head(lowA, shortB)).toBe('Shoot neither A nor B until their stops are mended');
    expect(head(shot(named(setUp(short), 'A'), [fletched]), shortB)).toBe(
      'Shoot neither until the stop is mended. Arrow too short: its end is 3/8 in behind the rest',
    );
  });

  it('says how the bow is set where the arrows are the same', () => {
    const b = other({ settings: { braceHeight: 8.75 * 0.0254, tiller: 0.005 } }, 'B');
    expect(head(shot(named(setUp(), 'A')), shot({ ...b, arrowSet: exampleBundle.arrowSet }))).toBe(
      'B: brace height +1/4 in and tiller +2 mm; no groups at one distance yet',
    );
  });

  it('gives a description its article and a name none', () => {
    const bare = (at: number) => ring('bare', 8, [at, 0], 20);
    const lead = (one: string, another: string) =>
      head(shot(named(setUp(), one), [fletched, bare(60)]), shot(named(other(), another), [fletched, bare(5)])).split(':')[0];
    expect([lead('Tobin, 110 gr', 'Tobin, 85 gr'), lead('Ines, hall', 'Ines, spare limbs'), lead('A', 'Spring')]).toEqual([
      'Keep the 85 gr',
      'Keep the spare limbs',
      'Keep Spring',
    ]);
    expect(lead('Cato', 'the old yew')).toBe('Keep the old yew');
  });

  it('says nothing of figures that only one of them has', () => {
    const empty = other({
      archer: { drawLength: null },
      bow: { markedWeight: null, braceLow: null, braceHigh: null, length: null },
      arrowSet: { length: null, deflection: null, linearDensity: null, pointMass: null, weighed: null, diameter: null },
      settings: { braceHeight: null, tiller: null, weightOnFingers: null, arrowSpeed: null, pointAhead: null },
    });
    expect(head(shot(setUp()), shot(empty))).toBe('Nothing to compare yet: no figure is known of both');
    expect(head(shot(setUp()), shot(setUp()))).toBe('The two do not differ in any figure that is known of both');
    expect(head(exampleBundle, exampleBundle)).toBe('The two do not differ in any figure');
  });

  it('shortens names to what tells them apart', () => {
    expect(shortNames('Tobin, take-down, 110 gr', 'Tobin, take-down, 85 gr')).toEqual(['110 gr', '85 gr']);
    expect(shortNames('Ines', 'Ines')).toEqual(['Ines', 'Ines']);
  });
});
