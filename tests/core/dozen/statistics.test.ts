import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setStatistics, spreadOf } from '../../../core/dozen/index.ts';
import { defaultPreferences, type ArrowSet } from '../../../core/model/index.ts';
import { blank, changed, grain, inch, setOf, valueOf } from './arrows.ts';

const { units } = defaultPreferences;
const statistics = (set: ArrowSet, matching: 'club' | 'match' = 'club') => valueOf(setStatistics(set, units, matching));

const dozen = setOf([
  [320, 720],
  [322, 721],
  [321, 724],
  [319, 716],
  [321, 719],
  [333, 722],
  [320, 741],
]);

describe('the figures of a set', () => {
  it('do not care for the order of the arrows', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(dozen.arrows, { minLength: dozen.arrows.length }), (arrows) => {
        expect(setStatistics({ ...dozen, arrows }, units)).toEqual(setStatistics(dozen, units));
      }),
    );
  });

  it('shift with what every arrow gains, and keep their spread', () => {
    const values = fc.array(fc.double({ min: 0.01, max: 0.05, noNaN: true }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(values, fc.double({ min: -0.005, max: 0.005, noNaN: true }), (masses, more) => {
        const [one, other] = [spreadOf(masses), spreadOf(masses.map((mass) => mass + more))];
        if (one === null || other === null) throw new Error('A spread was expected.');
        expect(other.mean - one.mean).toBeCloseTo(more, 12);
        expect(other.median - one.median).toBeCloseTo(more, 12);
        expect(other.sd ?? 0).toBeCloseTo(one.sd ?? 0, 12);
        expect(one.low).toBeLessThanOrEqual(one.mean + 1e-15);
        expect(one.mean).toBeLessThanOrEqual(one.high + 1e-15);
      }),
    );
  });

  it('leave out the arrows that are set aside', () => {
    const { shooting, setAside, mass } = statistics(changed(dozen, { 6: { setAside: true } }));
    expect([shooting, setAside, mass?.n]).toEqual([6, 1, 6]);
    expect((mass?.high ?? 0) / grain).toBeCloseTo(322, 9);
  });

  it('are null where nothing was read, and know no deviation of one arrow', () => {
    const { mass, spine, around, straightness } = statistics({ ...dozen, arrows: [{ ...blank, mass: 320 * grain }] });
    expect([mass?.n, mass?.sd, spine, around, straightness]).toEqual([1, null, null, null, null]);
    expect(spreadOf([])).toBeNull();
  });

  it('take spine at the index mark, and round the shaft from four readings on the standard tester', () => {
    const round = changed(dozen, {
      1: { spines: [0.5, 0.51, 0.52, 0.505].map((x) => x * inch) },
      2: { spines: [null, 0.52 * inch] },
    });
    const { spine, around } = statistics(round);
    expect((spine?.low ?? 0) / inch).toBeCloseTo(0.5, 9);
    expect(around?.n).toBe(1);
    expect((around?.mean ?? 0) / inch).toBeCloseTo(0.02, 9);
    const older = statistics({ ...round, convention: '26 in, 2 lb' });
    // The older tester reads .8254 of the standard deflection [ASTM F2031].
    expect(((around?.mean ?? 0) / (older.around?.mean ?? 1)).toFixed(4)).toBe('0.8254');
  });
});

describe('the odd arrows of a set', () => {
  it('are those farther from the middle than the tolerance, with their figure', () => {
    const { outliers } = statistics(dozen);
    expect(outliers.map(({ number, what }) => [number, what])).toEqual([
      [6, 'mass'],
      [7, 'spine'],
    ]);
    expect(outliers[0]?.sentence).toContain('333 gr');
    expect(outliers[0]?.sentence).toContain('12');
    expect(outliers[1]?.sentence).toContain('0.741 in');
    expect(outliers[1]?.sentence).toContain('weaker');
  });

  it('do not drag the middle with them, however odd they are', () => {
    const wild = statistics(changed(dozen, { 6: { mass: 900 * grain } }));
    expect(wild.outliers.filter(({ what }) => what === 'mass').map(({ number }) => number)).toEqual([6]);
  });

  it('stand at the tolerance and not beyond it', () => {
    const at = setOf([320, 320, 320, 323].map((mass) => [mass, 720] as const));
    const beyond = setOf([320, 320, 320, 323.1].map((mass) => [mass, 720] as const));
    expect(statistics(at).outliers).toEqual([]);
    expect(statistics(beyond).outliers.map(({ number }) => number)).toEqual([4]);
  });

  it('are more of them for a match than for the club', () => {
    const club = statistics(dozen).outliers.length;
    expect(statistics(dozen, 'match').outliers.length).toBeGreaterThan(club);
  });

  it('are not named among two, but a flaw always is, first of all', () => {
    const two = setOf([
      [320, 720],
      [340, 760],
    ]);
    expect(statistics(two).outliers).toEqual([]);
    const flaw = { nock: 'sound', shaft: 'flaw', point: 'flaw', fletching: 'sound' } as const;
    const { outliers } = statistics(changed(dozen, { 7: { lookOver: flaw } }));
    expect(outliers[0]).toMatchObject({ number: 7, what: 'flaw', value: 2 });
    expect(outliers[0]?.sentence).toContain('shaft and point');
  });

  it('are called bent above the total indicator reading, and uneven above the spread round the shaft', () => {
    const set = changed(dozen, {
      1: { straightness: 0.0061 * inch },
      2: { straightness: 0.006 * inch },
      3: { spines: [0.72, 0.725, 0.731, 0.722].map((x) => x * inch) },
    });
    const { outliers } = statistics(set);
    expect(outliers.filter(({ what }) => what === 'straightness').map(({ number }) => number)).toEqual([1]);
    expect(outliers.filter(({ what }) => what === 'around').map(({ number }) => number)).toEqual([3]);
  });

  it('of wood are read in pounds, heavier pounds being stiffer', () => {
    const wood = {
      ...setOf(
        [40, 41, 42, 46].map((p) => [400, 26000 / p] as const),
        'wood',
      ),
      convention: '26 in, 2 lb' as const,
    };
    const { outliers } = statistics(wood);
    expect(outliers.map(({ number }) => number)).toEqual([4]);
    expect(outliers[0]?.sentence).toContain('46.0 lb');
    expect(outliers[0]?.sentence).toContain('stiffer');
  });
});

describe('a set that says nothing', () => {
  it('is refused with what to do: none numbered, all set aside, or a figure that cannot be', () => {
    const refusal = (set: ArrowSet) => {
      const result = setStatistics(set, units);
      return result.ok ? null : result.problem;
    };
    expect(refusal({ ...dozen, arrows: [] })?.sentence).toContain('Number them');
    expect(refusal({ ...dozen, arrows: [{ ...blank, setAside: true }] })?.sentence).toContain('set aside');
    expect(refusal(changed(dozen, { 4: { mass: Number.NaN } }))?.sentence).toContain('Arrow 4');
    expect(refusal(changed(dozen, { 4: { spines: [-1] } }))?.sentence).toContain('Arrow 4');
    expect(refusal(changed(dozen, { 4: { straightness: 1 } }))?.sentence).toContain('Arrow 4');
  });
});
