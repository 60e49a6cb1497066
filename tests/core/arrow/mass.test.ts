import { describe, expect, it } from 'vitest';
import { arrowMass, endMasses, shaftMass, type ArrowParts } from '../../../core/arrow/index.ts';
import type { Result } from '../../../core/model/index.ts';

const grain = 6.479891e-5;
const inch = 0.0254;

const parts: ArrowParts = {
  length: 28 * inch,
  linearDensity: (7 * grain) / inch,
  pointMass: 100 * grain,
  insertMass: 12 * grain,
  nockMass: 8 * grain,
  fletchingMass: 9 * grain,
  pinMass: null,
  wrapMass: null,
  weighed: null,
  material: 'carbon',
  diameter: 0.0058,
  wall: null,
};

const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
const problemOf = <T>(result: Result<T>) => (result.ok ? null : result.problem);

describe('mass of an arrow', () => {
  it('sums the parts: 7 gr/in over 28 in and 129 gr of parts are 325 gr', () => {
    const { mass, from, assumedZero } = valueOf(arrowMass(parts));
    expect(mass / grain).toBeCloseTo(325, 9);
    expect(from).toBe('parts');
    expect(assumedZero).toEqual([]);
  });

  it('adds a pin of 5 gr and a wrap of 6 gr to the 325', () => {
    const { mass, assumedZero } = valueOf(arrowMass({ ...parts, pinMass: 5 * grain, wrapMass: 6 * grain }));
    expect(mass / grain).toBeCloseTo(336, 9);
    expect(assumedZero).toEqual([]);
  });

  it('takes the weighed figure when there is one, whatever the parts say', () => {
    expect(valueOf(arrowMass({ ...parts, weighed: 331 * grain }))).toEqual({
      mass: 331 * grain,
      from: 'weighed',
      assumedZero: [],
    });
  });

  it('counts small parts that are not filled in as nothing, and says which', () => {
    const { mass, assumedZero } = valueOf(arrowMass({ ...parts, insertMass: null, nockMass: null, fletchingMass: null }));
    expect(mass / grain).toBeCloseTo(296, 9);
    expect(assumedZero).toEqual(['insertMass', 'nockMass', 'fletchingMass']);
  });

  it('names everything that it cannot do without in one sentence', () => {
    const problem = problemOf(arrowMass({ ...parts, linearDensity: null, length: null, pointMass: null }));
    expect(problem?.code).toBe('missing');
    expect(problem?.sentence).toContain('shaft mass per length');
    expect(problem?.sentence).toContain('arrow length');
    expect(problem?.sentence).toContain('point mass');
    expect(problemOf(arrowMass({ ...parts, pointMass: null }))?.sentence).not.toContain('arrow length');
  });

  it.each([Number.NaN, 0, -1, 1000])('refuses a part or a whole of %s', (bad) => {
    expect(arrowMass({ ...parts, pointMass: bad }).ok).toBe(false);
    expect(arrowMass({ ...parts, weighed: bad }).ok).toBe(false);
    expect(arrowMass({ ...parts, length: bad }).ok).toBe(false);
    if (bad !== 0) expect(arrowMass({ ...parts, nockMass: bad }).ok).toBe(false);
  });
});

describe('mass of the shaft', () => {
  it('is mass per length times length', () => {
    expect(valueOf(shaftMass(parts)).mass / grain).toBeCloseTo(196, 9);
  });

  it('is what the weighed arrow leaves when the mass per length is not known', () => {
    const shaft = valueOf(shaftMass({ ...parts, linearDensity: null, weighed: 325 * grain }));
    expect(shaft.mass / grain).toBeCloseTo(196, 9);
    expect(shaft.from).toBe('weighed less its parts');
  });

  it('takes pin and wrap off the weighed arrow too', () => {
    const shaft = shaftMass({ ...parts, linearDensity: null, weighed: 336 * grain, pinMass: 5 * grain, wrapMass: 6 * grain });
    expect(valueOf(shaft).mass / grain).toBeCloseTo(196, 9);
  });

  it('refuses a remainder that no shaft has', () => {
    const light = shaftMass({ ...parts, linearDensity: null, weighed: 140 * grain });
    expect(problemOf(light)?.code).toBe('parts against whole');
  });

  it('asks for the mass per length when neither is known', () => {
    expect(problemOf(shaftMass({ ...parts, linearDensity: null }))?.sentence).toContain('shaft mass per length');
  });
});

describe('masses at the ends', () => {
  it('puts the insert to the point and the fletching to the nock', () => {
    const ends = valueOf(endMasses(parts));
    expect(ends.frontMass / grain).toBeCloseTo(112, 9);
    expect(ends.nockMass / grain).toBeCloseTo(17, 9);
  });

  it('counts a pin and a wrap at the nock', () => {
    const ends = valueOf(endMasses({ ...parts, pinMass: 5 * grain, wrapMass: 6 * grain }));
    expect(ends.nockMass / grain).toBeCloseTo(28, 9);
    expect(ends.frontMass / grain).toBeCloseTo(112, 9);
  });

  it('asks for the point', () => {
    expect(problemOf(endMasses({ ...parts, pointMass: null }))?.field).toBe('pointMass');
  });
});
