import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringFigures } from '../../../core/bow/index.ts';
import {
  abilityFinding,
  arrowMassFinding,
  boltsFinding,
  braceHeightFinding,
  pointAheadFinding,
  stringFibreFinding,
  strandsFinding,
  type Finding,
} from '../../../core/findings/index.ts';
import {
  defaultPreferences,
  StringMaterial,
  type Archer,
  type BowKind,
  type Bundle,
  type NumberedArrow,
} from '../../../core/model/index.ts';
import { standingStops } from '../../../core/safety/index.ts';
import { movedBundle, whatWouldCentre, type Move } from '../../../core/suitability/index.ts';
import { setUp } from '../trials/build.ts';

const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;
const { units } = defaultPreferences;

const movesOf = (bundle: Bundle): readonly Move[] => {
  const answer = whatWouldCentre(bundle, units);
  if (!answer.ok) throw new Error(answer.problem.sentence);
  return answer.value;
};
const find = (bundle: Bundle, what: Move['what']) => movesOf(bundle).filter((move) => move.what === what);
const spined = (deflectionIn: number, more: Parameters<typeof setUp>[0] = {}) =>
  setUp({ ...more, arrowSet: { deflection: deflectionIn * inch, ...more.arrowSet } });
const numbered = (number: number, mass: number | null, setAside = false): NumberedArrow => ({
  number,
  mass,
  spines: [],
  straightness: null,
  lookOver: null,
  lookedOver: null,
  setAside,
  note: '',
});

/** Set-ups near every limit at once: light arrows, thin strings, short shafts, learners, bolts nearly out. */
const onTheEdge = fc
  .record({
    deflectionIn: fc.double({ min: 0.35, max: 1.5, noNaN: true }),
    lengthIn: fc.double({ min: 24, max: 31, noNaN: true }),
    drawIn: fc.double({ min: 23, max: 30, noNaN: true }),
    pointGr: fc.integer({ min: 50, max: 160 }),
    lb: fc.double({ min: 15, max: 58, noNaN: true }),
    grPerLb: fc.double({ min: 5.9, max: 10, noNaN: true }),
    oneLight: fc.double({ min: 0.9, max: 1, noNaN: true }),
    leastGrPerLb: fc.constantFrom(null, 6, 7, 8),
    bowKind: fc.constantFrom<BowKind[]>('take-down recurve', 'take-down recurve', 'one-piece recurve', 'longbow'),
    holdTime: fc.constantFrom(null, 16, 60, 90),
    experience: fc.constantFrom<Archer['experience'][]>(null, 'learner', 'settled'),
    clicker: fc.boolean(),
    weighed: fc.boolean(),
    reachKnown: fc.boolean(),
    material: fc.constantFrom(...StringMaterial.options),
    strands: fc.integer({ min: 4, max: 20 }),
    bolts: fc.constantFrom(null, 0.25, 3.5),
    brace: fc.constantFrom(8.5, 8.9, 9.4),
  })
  .map((x): Bundle => {
    const mass = x.grPerLb * x.lb * grain;
    return setUp({
      archer: {
        drawLength: x.drawIn * inch,
        holdTime: x.holdTime,
        experience: x.experience,
        clicker: x.clicker,
        ageGroup: '17 or over',
      },
      bow: {
        bowKind: x.bowKind,
        markedWeight: x.lb * pound,
        leastMassPerWeight: x.leastGrPerLb === null ? null : (x.leastGrPerLb * grain) / pound,
        mostBoltTurns: x.bolts === null ? null : 4,
      },
      arrowSet: {
        deflection: x.deflectionIn * inch,
        length: x.lengthIn * inch,
        pointMass: x.pointGr * grain,
        linearDensity: null,
        weighed: mass,
        arrows: [numbered(1, mass), numbered(2, x.oneLight * mass), numbered(3, 0.5 * mass, true)],
      },
      settings: {
        weightOnFingers: x.weighed ? x.lb * pound : null,
        weightDraw: x.drawIn * inch,
        pointAhead: x.reachKnown ? (x.lengthIn - x.drawIn + 1.75) * inch : null,
        stringMaterial: x.material,
        strands: x.strands,
        upperBolt: x.bolts,
        lowerBolt: x.bolts,
        braceHeight: x.brace * inch,
      },
    });
  });

const levels: readonly Finding['level'][] = ['ok', 'waiting', 'unknown', 'caution', 'stop'];
/** How every check that can hurt someone stands; an absent one is nothing to hurt. */
const cares = (bundle: Bundle): Record<string, number> => {
  const found = {
    pointAhead: pointAheadFinding(bundle, units),
    arrowMass: arrowMassFinding(bundle, units),
    fibre: stringFibreFinding(bundle),
    strands: strandsFinding(bundle, units),
    bolts: boltsFinding(bundle, units),
    ability: abilityFinding(bundle, units),
    brace: braceHeightFinding(bundle, units),
  };
  return Object.fromEntries(
    Object.entries(found).map(([name, finding]) => [name, finding === null ? 0 : levels.indexOf(finding.level)]),
  );
};
const gramsPerNewton = ({ arrowSet, setup, bow }: Bundle): number =>
  Math.min(arrowSet.weighed ?? Infinity, ...arrowSet.arrows.flatMap(({ mass, setAside }) => (setAside ? [] : (mass ?? [])))) /
  (setup.settings.weightOnFingers ?? bow.markedWeight ?? 1);

describe('what would centre a shaft, with care', () => {
  it('leaves no check that can hurt someone worse than it found it, however near to its limits the set-up is', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(onTheEdge, (bundle) => {
        const answer = whatWouldCentre(bundle, units);
        if (!answer.ok) return;
        const before = cares(bundle);
        for (const move of answer.value) {
          if (move.stopped !== null || move.what === 'shaft') continue;
          seen.set(move.what, (seen.get(move.what) ?? 0) + 1);
          const after = movedBundle(bundle, move);
          expect(standingStops(after)).toEqual([]);
          // Less weight may leave more strands than are usual for it: that hurts nobody.
          const now = cares(after);
          const worse = Object.keys(now).filter((name) => (now[name] ?? 0) > (before[name] ?? 0));
          expect(worse.filter((name) => !(name === 'strands' && move.what === 'weight' && move.to < move.from))).toEqual([]);
          // An arrow that is light for its bow already is made no lighter for it.
          if ((before.arrowMass ?? 0) >= levels.indexOf('caution'))
            expect(gramsPerNewton(after)).toBeGreaterThanOrEqual(gramsPerNewton(bundle) * (1 - 1e-9));
        }
      }),
      { numRuns: 300, seed: 11 },
    );
    for (const what of ['point', 'length', 'weight']) expect(seen.get(what) ?? 0, what).toBeGreaterThan(5);
  });

  it('makes an arrow no lighter that is a caution already', () => {
    // 33 lb and 218 gr are 6.6 gr/lb: between the 6 that stops and the 7 that cautions on a target recurve [common practice].
    const light = spined(0.95, { bow: { leastMassPerWeight: null }, arrowSet: { weighed: 218 * grain, linearDensity: null } });
    expect(find(light, 'point').every(({ stopped }) => stopped !== null)).toBe(true);
    expect(find(light, 'length').every(({ stopped }) => stopped !== null)).toBe(true);
  });

  it('judges by the lightest numbered arrow that is shot', () => {
    const arrows = [numbered(1, 326 * grain), numbered(7, 235 * grain), numbered(8, 100 * grain, true)];
    const set = spined(0.95, { arrowSet: { arrows } });
    // 235 gr on 33 lb are 7.1 gr/lb, and this bow's maker asks for 7: no room for a lighter point.
    expect(find(set, 'point').every(({ stopped }) => stopped !== null)).toBe(true);
    const under = setUp({ arrowSet: { arrows: [numbered(1, 326 * grain), numbered(7, 190 * grain)] } });
    expect(standingStops(under)).toEqual(['arrowMass']);
    expect(arrowMassFinding(under, units)).toMatchObject({ level: 'stop', title: 'Arrow 7 too light: 5.8 gr/lb' });
    expect(arrowMassFinding(setUp({ arrowSet: { arrows: [numbered(7, 190 * grain, true)] } }), units).level).toBe('ok');
  });

  it('cuts nothing on a reach that was only reckoned, where the reach is all that is asked', () => {
    const clicker = { archer: { clicker: true, experience: 'settled' } } as const;
    const reckoned = find(spined(0.95, { ...clicker, settings: { pointAhead: null } }), 'length');
    expect(reckoned.map(({ stopped }) => stopped)).toEqual(['Measure the point ahead of the rest at the deepest draw first.']);
    const measured = find(spined(0.95, { ...clicker, settings: { pointAhead: 2 * inch } }), 'length');
    expect(measured.some(({ stopped }) => stopped === null)).toBe(true);
  });

  it('offers nothing while the brace height is outside the maker\u2019s range', () => {
    const answer = whatWouldCentre(spined(0.95, { settings: { braceHeight: 9.6 * inch } }), units);
    expect(answer.ok ? '' : answer.problem.sentence).toContain('stop stands');
  });

  it('adds no weight to a string that would hold less than six times it [common practice]', () => {
    const { holdTime, ...rest } = { holdTime: 60, settings: { stringMaterial: 'polyester', strands: 4 } } as const;
    const bundle = spined(0.6, { archer: { holdTime }, ...rest });
    // 4 strands of 222 N hold 888 N: 6.05 times 33 lb, and less than six times 34.
    const string = stringFigures(bundle);
    expect(string.ok ? string.value.reserve : 0).toBeCloseTo(888 / (33 * pound), 6);
    expect(find(bundle, 'weight').map(({ stopped }) => stopped)).toEqual([expect.stringMatching(/^The string would hold 5\.8 /)]);
  });

  it('says to count the bolts before they are turned out, unless they were', () => {
    const out = (settings: object, mostBoltTurns: number | null) =>
      find(spined(0.95, { bow: { mostBoltTurns }, settings }), 'weight').at(-1)?.cost ?? '';
    expect(out({}, null)).toContain('never out past the maker\u2019s most.');
    expect(out({ upperBolt: 1, lowerBolt: 1 }, 6)).not.toContain('Count the bolts');
  });

  it('names the least mass with another shaft, and sells none of a length that is in doubt', () => {
    // 7 gr/lb of 33 lb on a scale that may be 1 % out are 233.3 gr: 234 in whole grains.
    expect(find(spined(0.95), 'shaft')[0]?.cost).toContain('The whole arrow must weigh 234 gr or more.');
    const learner = spined(0.95, {
      archer: { experience: 'learner', clicker: false, drawLength: 26.5 * inch },
      settings: { weightDraw: 26.5 * inch, pointAhead: 3 * inch },
    });
    expect(find(learner, 'shaft')[0]?.stopped).toContain('not settled');
  });
});
