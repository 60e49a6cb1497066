import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AgeGroup } from '../../../core/model/index.ts';
import { abilityCheck, whyNotHeavier } from '../../../core/safety/index.ts';

const pound = 4.4482216152605;
type Who = Parameters<typeof abilityCheck>[0];
const learner = (ageGroup: AgeGroup | null, holdTime: number | null = 20): Who => ({ experience: 'learner', ageGroup, holdTime });
const settled = (holdTime: number | null): Who => ({ experience: 'settled', ageGroup: null, holdTime });

describe('the draw weight against what an archer can hold', () => {
  // Starting weights of youth groups to the end of a course: up to 12 years 14 to 16 lb, 13-14 16 to 18, 15-16 18 to 22, adults 20 to 24: common practice.
  it.each([
    ['up to 12', 16],
    ['13 or 14', 18],
    ['15 or 16', 22],
    ['17 or over', 24],
  ] as const)('cautions a learner of %s above %s lb', (age, lb) => {
    expect(abilityCheck(learner(age), lb * pound)).toMatchObject({ level: 'in range', rule: 'held long enough' });
    expect(abilityCheck(learner(age), (lb + 0.5) * pound)).toMatchObject({ level: 'caution', rule: 'above the usual start' });
  });

  // Full draw for 15 s without a tremor shows control: common practice.
  it('asks for 15 s at full draw, of everybody', () => {
    expect([14, 15].map((held) => abilityCheck(settled(held), 200).level)).toEqual(['caution', 'in range']);
    expect(abilityCheck(learner('17 or over', 10), 20 * pound).rule).toBe('held too briefly');
  });

  it('does not know an archer who was never asked, and says what is missing', () => {
    expect(abilityCheck(settled(null), 200)).toMatchObject({ level: 'unknown', rule: 'hold not known' });
    expect(abilityCheck(learner(null), 18 * pound)).toMatchObject({ level: 'unknown', rule: 'age not known' });
    // Above what adults start on it is too much at any age.
    expect(abilityCheck(learner(null), 30 * pound)).toMatchObject({ level: 'caution', rule: 'above the usual start' });
  });

  it('judges whom nobody noted as a learner, and asks for the experience before the age', () => {
    const notNoted = (ageGroup: AgeGroup | null): Who => ({ experience: null, ageGroup, holdTime: 20 });
    const weights = [14, 20, 24.5].map((lb) => lb * pound);
    for (const weight of weights)
      for (const age of ['up to 12', '17 or over'] as const)
        expect(abilityCheck(notNoted(age), weight)).toEqual(abilityCheck(learner(age), weight));
    expect(abilityCheck(notNoted(null), 20 * pound)).toMatchObject({ level: 'unknown', rule: 'experience not known' });
    expect(abilityCheck(notNoted(null), 30 * pound)).toMatchObject({ level: 'caution', rule: 'above the usual start' });
  });

  it('never thinks better of more weight', () => {
    const rank = ['in range', 'unknown', 'caution'];
    const ages = fc.constantFrom<(AgeGroup | null)[]>(null, 'up to 12', '13 or 14', '15 or 16', '17 or over');
    const weight = fc.double({ min: 10, max: 600, noNaN: true });
    fc.assert(
      fc.property(ages, fc.constantFrom(null, 5, 30), fc.boolean(), weight, weight, (ageGroup, holdTime, learns, one, other) => {
        const who: Who = { experience: learns ? 'learner' : 'settled', ageGroup, holdTime };
        const at = (force: number) => rank.indexOf(abilityCheck(who, force).level);
        expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(at(Math.min(one, other)));
      }),
    );
  });

  it.each([Number.NaN, 0, -1, Infinity])('refuses a weight of %s', (weight) => {
    expect(() => abilityCheck(settled(20), weight)).toThrow(RangeError);
  });
});

// A stricter use of the holding test: 60 s before 2 to 3 lb more: common practice.
it('lets nobody go up without 60 s at full draw, and no learner', () => {
  expect(whyNotHeavier({ experience: 'settled', holdTime: 60 })).toBeNull();
  expect(whyNotHeavier({ experience: 'settled', holdTime: 59.9 })).toMatch(/^Full draw was held 59 s: 60 s /);
  expect(whyNotHeavier({ experience: 'settled', holdTime: null })).toMatch(/^No holding test is on record/);
  expect(whyNotHeavier({ experience: null, holdTime: 90 })).toMatch(/^Experience is not noted/);
  expect(whyNotHeavier({ experience: 'learner', holdTime: 90 })).toMatch(/^A learner/);
});
