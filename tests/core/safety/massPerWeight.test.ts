import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BowKind } from '../../../core/model/index.ts';
import { handCheck, leastMassPerWeight, massFloors, massPerWeight, massPerWeightCheck } from '../../../core/safety/index.ts';

const grain = 6.479891e-5;
const pound = 4.4482216152605;
const exactly = (lb: number) => ({ value: lb * pound, low: lb * pound, high: lb * pound });
const recurve = { bowKind: 'take-down recurve', leastMassPerWeight: null } as const;

describe('arrow mass per draw weight', () => {
  it('is 8 gr/lb for 320 gr from 40 lb', () => {
    expect((massPerWeight(320 * grain, 40 * pound) * pound) / grain).toBeCloseTo(8, 9);
  });

  it.each([Number.NaN, 0, -1])('throws a RangeError for %s', (bad) => {
    expect(() => massPerWeight(bad, 100)).toThrow(RangeError);
    expect(() => massPerWeight(0.02, bad)).toThrow(RangeError);
    expect(() => leastMassPerWeight({ ...recurve, leastMassPerWeight: bad })).toThrow(RangeError);
  });
});

describe('least arrow mass', () => {
  it('knows a floor or a reason for none for every kind of bow', () => {
    expect(BowKind.options.length).toBeGreaterThan(0);
    for (const kind of BowKind.options) {
      const floor = massFloors[kind];
      if (floor === null) expect(kind).toBe('compound');
      else expect(floor.stopGrPerLb).toBeLessThan(floor.cautionGrPerLb);
    }
  });

  it('is the bow maker’s figure when there is one, milder or stricter than common practice', () => {
    for (const grPerLb of [5, 9]) {
      const bow = { ...recurve, leastMassPerWeight: (grPerLb * grain) / pound };
      expect(leastMassPerWeight(bow)).toMatchObject({ from: 'maker' });
      expect(massPerWeightCheck(bow, (grPerLb - 0.01) * 40 * grain, exactly(40)).level).toBe('stop');
      expect(massPerWeightCheck(bow, grPerLb * 40 * grain, exactly(40)).level).toBe('in range');
    }
  });

  it('cautions when the weight is uncertain and its heavy end would be a stop', () => {
    const bow = { ...recurve, leastMassPerWeight: (6 * grain) / pound };
    const uncertain = { value: 40 * pound, low: 37 * pound, high: 43 * pound };
    const check = massPerWeightCheck(bow, 6.2 * 40 * grain, uncertain);
    expect(check.level).toBe('caution');
    expect(check.limit).toBe(bow.leastMassPerWeight);
    expect(massPerWeightCheck(bow, 6.2 * 40 * grain, exactly(40)).level).toBe('in range');
  });

  it('never grows milder for a lighter arrow or a heavier bow', () => {
    const rank = { 'in range': 0, unknown: 1, caution: 2, stop: 3 };
    const kinds = fc.constantFrom(...BowKind.options);
    fc.assert(
      fc.property(
        kinds,
        fc.double({ min: 100, max: 900, noNaN: true }),
        fc.double({ min: 10, max: 80, noNaN: true }),
        (kind, gr, lb) => {
          const bow = { bowKind: kind, leastMassPerWeight: null };
          const here = rank[massPerWeightCheck(bow, gr * grain, exactly(lb)).level];
          expect(rank[massPerWeightCheck(bow, gr * 0.9 * grain, exactly(lb)).level]).toBeGreaterThanOrEqual(here);
          expect(rank[massPerWeightCheck(bow, gr * grain, exactly(lb * 1.1)).level]).toBeGreaterThanOrEqual(here);
        },
      ),
    );
  });
});

describe('hand of bow and archer', () => {
  it('stops the wrong hand, on both sides alike', () => {
    expect(handCheck({ hand: 'right' }, { hand: 'right', arrowPass: 'shelf' })).toBe('in range');
    expect(handCheck({ hand: 'left' }, { hand: 'left', arrowPass: 'shelf' })).toBe('in range');
    expect(handCheck({ hand: 'right' }, { hand: 'left', arrowPass: 'rest and button' })).toBe('stop');
    expect(handCheck({ hand: 'left' }, { hand: 'right', arrowPass: 'rest and button' })).toBe('stop');
  });

  it('only cautions where the arrow passes over the hand, since some such bows take either', () => {
    expect(handCheck({ hand: 'left' }, { hand: 'right', arrowPass: 'hand' })).toBe('caution');
  });
});
