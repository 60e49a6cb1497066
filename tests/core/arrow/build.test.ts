import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrowMass, buildArrow, endMasses, shaftMass, type ArrowBuild } from '../../../core/arrow/index.ts';
import { defaultPreferences, exampleBundle, unmeasured, type ArrowSet, type Result } from '../../../core/model/index.ts';

const grain = 6.479891e-5;
const inch = 0.0254;
const example = exampleBundle.arrowSet;

const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
const build = (change: Partial<ArrowSet> = {}): ArrowBuild => valueOf(buildArrow({ ...example, ...change }));
const refusal = (change: Partial<ArrowSet>) => {
  const built = buildArrow({ ...example, ...change });
  return built.ok ? null : built.problem;
};

const light = (max: number) => fc.option(fc.double({ min: 0, max: max * grain, noNaN: true }));
const arrows = fc
  .record({
    material: fc.constantFrom<ArrowSet['material'][]>('carbon', 'aluminium', 'wood', 'other'),
    length: fc.double({ min: 20 * inch, max: 34 * inch, noNaN: true }),
    linearDensity: fc.double({ min: (4 * grain) / inch, max: (18 * grain) / inch, noNaN: true }),
    pointMass: fc.double({ min: 40 * grain, max: 250 * grain, noNaN: true }),
    insertMass: light(60),
    nockMass: light(20),
    fletchingMass: light(30),
    pinMass: light(10),
    wrapMass: light(10),
    vaneFromThroat: fc.option(fc.double({ min: 0.01, max: 0.05, noNaN: true })),
    vaneLength: fc.option(fc.double({ min: 0.02, max: 0.13, noNaN: true })),
  })
  .map((parts): ArrowSet => ({ ...example, ...unmeasured.arrowSet, ...parts }));

describe('an arrow built of its parts', () => {
  it('weighs what its mass is said to be, and its ends and shaft add up to it', () => {
    fc.assert(
      fc.property(arrows, (set) => {
        const { mass } = valueOf(buildArrow(set));
        const ends = valueOf(endMasses(set));
        expect(mass).toBeCloseTo(valueOf(arrowMass(set)).mass, 12);
        expect(mass).toBeCloseTo(valueOf(shaftMass(set)).mass + ends.nockMass + ends.frontMass, 12);
      }),
    );
  });

  it('balances about the point where its parts hold level, between nock and tip', () => {
    fc.assert(
      fc.property(arrows, (set) => {
        const { parts, balance, wholeLength, inertia, mass, length } = valueOf(buildArrow(set));
        expect(parts.reduce((sum, part) => sum + part.mass * (part.at - balance), 0)).toBeCloseTo(0, 12);
        expect(balance).toBeGreaterThan(0);
        expect(balance).toBeLessThan(wholeLength);
        expect(wholeLength).toBeGreaterThan(length);
        // No more than all its mass at the ends.
        expect(inertia).toBeGreaterThan(0);
        expect(inertia).toBeLessThan(mass * wholeLength ** 2);
      }),
    );
  });

  it('moves its balance point forward with a heavier point and back with a heavier fletching', () => {
    fc.assert(
      fc.property(arrows, fc.double({ min: 1, max: 50, noNaN: true }), (set, moreGr) => {
        const { balance } = valueOf(buildArrow(set));
        const front = valueOf(buildArrow({ ...set, pointMass: (set.pointMass ?? 0) + moreGr * grain }));
        const back = valueOf(buildArrow({ ...set, fletchingMass: (set.fletchingMass ?? 0) + (moreGr / 2) * grain }));
        expect(front.balance).toBeGreaterThan(balance);
        expect(back.balance).toBeLessThan(balance);
      }),
    );
  });

  it('has the same front-of-centre and scaled figures when all of it is made larger or heavier', () => {
    fc.assert(
      fc.property(arrows, fc.double({ min: 1, max: 1.2, noNaN: true }), (set, q) => {
        const times = (value: number | null) => (value === null ? null : value * q);
        const heavier = {
          ...set,
          linearDensity: times(set.linearDensity),
          pointMass: times(set.pointMass),
          insertMass: times(set.insertMass),
          nockMass: times(set.nockMass),
          fletchingMass: times(set.fletchingMass),
          pinMass: times(set.pinMass),
          wrapMass: times(set.wrapMass),
        };
        const [one, other] = [valueOf(buildArrow(set)), valueOf(buildArrow(heavier))];
        expect(other.foc).toBeCloseTo(one.foc, 10);
        expect(other.inertia / one.inertia).toBeCloseTo(q, 9);
      }),
    );
  });

  it('says which places were assumed, and not those that were measured', () => {
    const measured = build({ vaneFromThroat: 0.025, vaneLength: 0.045 });
    expect(measured.parts.find(({ name }) => name === 'fletching')?.placed).toBe('measured');
    expect(measured.assumes).toContain('point');
    expect(measured.assumes).not.toContain('fletching');
    expect(build().assumes).toContain('fletching');
    expect(build({ nockMass: null }).assumedZero).toEqual(['nockMass']);
  });

  it('has a pin, a wrap and an insert only when they weigh something', () => {
    const names = (change: Partial<ArrowSet>) => build(change).parts.map(({ name }) => name);
    expect(names({ insertMass: null })).toEqual(['nock', 'fletching', 'shaft', 'point']);
    expect(names({ pinMass: 5 * grain, wrapMass: 6 * grain })).toEqual([
      'nock',
      'pin',
      'wrap',
      'fletching',
      'shaft',
      'insert',
      'point',
    ]);
  });
});

describe('what was weighed and balanced beside the parts', () => {
  it('is let be within 3 %, and said beyond it with both figures', () => {
    // The example's parts weigh 325 gr.
    expect(build({ weighed: 334 * grain }).disagrees).toBeNull();
    expect(build({ weighed: 340 * grain }).disagrees).toContain('15.0 gr heavier'.replace('.0', ''));
    expect(build({ weighed: 340 * grain }).disagrees).toContain('340 gr');
    expect(build({ weighed: 312 * grain }).disagrees).toContain('lighter');
  });

  it('lets a blank part be the difference, up to what one weighs, and asks for it beyond', () => {
    expect(build({ nockMass: null, weighed: 326 * grain }).disagrees).toBeNull();
    expect(build({ nockMass: null, weighed: 350 * grain }).disagrees).toContain('Enter the nock');
  });

  it('speaks the units that were chosen', () => {
    const grams = valueOf(buildArrow({ ...example, weighed: 0.0225 }, { ...defaultPreferences.units, mass: 'g' })).disagrees;
    expect(grams).toContain('22.5 g');
  });

  it('is said when the balance point is off by more than a hundredth of the length', () => {
    const { balance, length } = build();
    expect(build({ balance: balance + 0.009 * length }).disagrees).toBeNull();
    expect(build({ balance: balance + 0.011 * length }).disagrees).toContain('balance point');
    expect(build({ balance: balance - 0.011 * length }).disagrees).toContain('balance point');
  });

  it('never disagrees with a shaft that was found by taking the parts off', () => {
    expect(build({ linearDensity: null }).disagrees).toBeNull();
    expect(build({ linearDensity: null }).shaftFrom).toBe('weighed less its parts');
  });
});

describe('an arrow that cannot be built', () => {
  it('names everything that is missing', () => {
    expect(refusal({ length: null, pointMass: null })?.sentence).toContain('arrow length');
    expect(refusal({ length: null, pointMass: null })?.sentence).toContain('point mass');
    expect(refusal({ linearDensity: null, weighed: null })?.field).toBe('linearDensity');
  });

  it.each([
    { what: 'parts heavier than the whole', change: { linearDensity: null, weighed: 100 * grain } },
    { what: 'a balance point beyond the tip', change: { balance: 1 } },
    { what: 'a length of nothing', change: { length: 0 } },
    { what: 'a length that is no number', change: { length: Number.NaN } },
    { what: 'a fletching of endless mass', change: { fletchingMass: Number.POSITIVE_INFINITY } },
    { what: 'a wrap below nought', change: { wrapMass: -1e-4 } },
    { what: 'a fletching that starts behind the throat', change: { vaneFromThroat: -0.01 } },
  ])('is refused for $what', ({ change }) => {
    expect(refusal(change)?.sentence.length).toBeGreaterThan(20);
  });
});
