import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shaftMass, spineOf, tubeDensity, tubeShaft, tubeStiffness } from '../../../core/arrow/index.ts';
import { exampleBundle, unmeasured, type ArrowSet } from '../../../core/model/index.ts';

const tube: ArrowSet = {
  ...exampleBundle.arrowSet,
  ...unmeasured.arrowSet,
  material: 'aluminium',
  diameter: 0.00714,
  wall: 0.0004,
  length: 0.72,
};
const problemOf = (
  result: { ok: true } | { ok: false; problem: { sentence: string; code: string; field?: string | undefined } },
) => (result.ok ? null : result.problem);

describe('the spine of a shaft', () => {
  it('is the measured one whatever the tube says, and of a tube only of aluminium', () => {
    const measured = spineOf({ ...tube, deflection: 0.02 });
    expect(measured.ok && measured.value.from).toBe('measured');
    expect(measured.ok && measured.value.deflection).toEqual({ value: 0.02, low: 0.02, high: 0.02 });
    expect(problemOf(spineOf({ ...tube, material: 'carbon' }))?.code).toBe('missing');
  });

  it('says what it waits for: the deflection, or of aluminium the tube', () => {
    const waiting = problemOf(spineOf({ ...tube, wall: null }));
    expect(waiting?.field).toBe('deflection');
    expect(waiting?.sentence).toContain('diameter and wall');
    expect(problemOf(spineOf({ ...tube, material: 'wood' }))?.sentence).not.toContain('wall');
  });

  it.each([
    { what: 'a wall that leaves no bore', change: { diameter: 0.006, wall: 0.003 } },
    { what: 'a wall beyond its limits', change: { wall: 0.02 } },
    { what: 'a wall that is no number', change: { wall: Number.NaN } },
    { what: 'a diameter below nought', change: { diameter: -0.007 } },
    { what: 'a tube that no shaft is made of', change: { diameter: 0.014, wall: 0.003 } },
    { what: 'a deflection that is no number', change: { deflection: Number.NaN } },
  ])('refuses $what with a sentence', ({ change }) => {
    const problem = problemOf(spineOf({ ...tube, ...change }));
    expect(problem?.sentence.length).toBeGreaterThan(20);
  });

  it('has its band the right way round: the stiffest alloy sags least', () => {
    const found = spineOf(tube);
    if (!found.ok) throw new Error(found.problem.sentence);
    const { deflection, stiffness } = found.value;
    expect(deflection.low).toBeLessThan(deflection.value);
    expect(deflection.value).toBeLessThan(deflection.high);
    expect(deflection.low * stiffness.high).toBeCloseTo(deflection.value * stiffness.value, 9);
    // 69 to 72 GPa: 4.3 % from end to end.
    expect(deflection.high / deflection.low).toBeCloseTo(72 / 69, 12);
  });
});

describe('a tube', () => {
  const outers = fc.double({ min: 0.004, max: 0.012, noNaN: true });
  const shares = fc.double({ min: 0.02, max: 0.49, noNaN: true });

  it('stiffens with the fourth power of its size and gains mass with the square', () => {
    fc.assert(
      fc.property(outers, shares, fc.double({ min: 0.5, max: 2, noNaN: true }), (outer, share, scale) => {
        const wall = share * outer;
        expect(tubeStiffness(outer * scale, wall * scale, 7e10) / tubeStiffness(outer, wall, 7e10)).toBeCloseTo(scale ** 4, 9);
        expect(tubeDensity(outer * scale, wall * scale, 2810) / tubeDensity(outer, wall, 2810)).toBeCloseTo(scale ** 2, 9);
      }),
    );
  });

  it('is stiffer and heavier with a thicker wall, and for its mass less stiff', () => {
    fc.assert(
      fc.property(outers, shares, (outer, share) => {
        const [thin, thick] = [share * outer * 0.9, share * outer];
        expect(tubeStiffness(outer, thick, 7e10)).toBeGreaterThan(tubeStiffness(outer, thin, 7e10));
        expect(tubeDensity(outer, thick, 2810)).toBeGreaterThan(tubeDensity(outer, thin, 2810));
        expect(tubeStiffness(outer, thick, 7e10) / tubeDensity(outer, thick, 2810)).toBeLessThan(
          tubeStiffness(outer, thin, 7e10) / tubeDensity(outer, thin, 2810),
        );
      }),
    );
  });

  it.each([
    [0.008, 0.005, 1],
    [0, 0.001, 1],
    [0.008, Number.NaN, 1],
    [0.008, 0.001, -1],
  ])('throws a RangeError for %s by %s', (outer, wall, figure) => {
    expect(() => tubeStiffness(outer, wall, figure)).toThrow(RangeError);
    expect(() => tubeDensity(outer, wall, figure)).toThrow(RangeError);
  });

  it('gives the shaft its mass when nobody weighed a length of it, and gives way when somebody did', () => {
    const geometry = tubeShaft(tube);
    if (!geometry.ok || geometry.value === null) throw new Error('A tube was expected.');
    const shaft = shaftMass(tube);
    expect(shaft.ok && shaft.value.from).toBe('tube');
    expect(shaft.ok && shaft.value.mass).toBeCloseTo(geometry.value.linearDensity * 0.72, 12);
    const weighed = shaftMass({ ...tube, linearDensity: 0.02 });
    expect(weighed.ok && weighed.value.from).toBe('mass per length');
  });
});
