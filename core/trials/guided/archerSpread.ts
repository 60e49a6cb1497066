import { axisVariance, c4, inOneHole, momentsOf, priorFromGroups, type SpreadBasis } from '../../group/index.ts';
import type { Archer } from '../../model/archer.ts';
import { counted, type ShotGroup } from '../../model/group.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import type { SpreadAt } from './types.ts';

/** Groups at one distance are worth having by themselves from so many degrees of freedom on. */
const ENOUGH = 10;
/** Guesses for the spread of one axis over the distance [rad], from memory: 36 mm at 18 m, and for a learner twice that. */
const GUESS = { settled: 0.002, learner: 0.004 } as const;

/**
 * What one arrow of an archer scatters, from the fletched groups on record.
 *
 * @equation per group s²/z² with 2 (n - 1) degrees of freedom; three groups and more by priorFromGroups, fewer pooled; σ = s/c4. Groups within 1 % of the distance where they have 10 degrees of freedom or more, else all, the scatter taken to grow with the distance
 * @param groups - groups of this archer, bow and arrows; bare ones, single shots and groups in one hole are left out [list]
 * @param distance - where it is wanted [m]
 * @param units - the person's choice of units [record]
 * @returns the spread seen from the bow and what it rests on; null when no group tells [record]
 * @validity shots that count; the same bow, arrows and form throughout
 * @source smyth-2004
 * @example archerSpread([exampleFletched], 18, defaultPreferences.units).from // "1 group at 18 m"
 */
export function archerSpread(groups: readonly ShotGroup[], distance: number, units: UnitChoice): SpreadAt | null {
  const told = groups.flatMap((group) => {
    const shots = counted(group);
    if (group.fletching !== 'fletched' || shots.length < 2 || inOneHole(shots)) return [];
    const z = group.context.distance;
    return [{ distance: z, variance: axisVariance(momentsOf(shots)) / z ** 2, degreesOfFreedom: 2 * (shots.length - 1) }];
  });
  const here = told.filter((group) => Math.abs(group.distance - distance) <= 0.01 * Math.max(distance, group.distance));
  const used = here.reduce((sum, { degreesOfFreedom }) => sum + degreesOfFreedom, 0) >= ENOUGH ? here : told;
  if (used.length === 0) return null;
  const { variance, degreesOfFreedom } = basisOf(used);
  const ends = used.map((group) => group.distance);
  const [near, far] = [Math.min(...ends), Math.max(...ends)].map((z) => textQuantity(z, 'distance', units));
  return {
    perMetre: Math.sqrt(variance) / c4(degreesOfFreedom),
    degreesOfFreedom,
    from: `${used.length} ${used.length === 1 ? 'group' : 'groups'} ${near === far ? `at ${near}` : `from ${near} to ${far}`}`,
  };
}

function basisOf(past: readonly SpreadBasis[]): SpreadBasis {
  const prior = priorFromGroups(past);
  if (prior.ok) return prior.value;
  const degreesOfFreedom = past.reduce((sum, { degreesOfFreedom: d }) => sum + d, 0);
  const variance = past.reduce((sum, { variance: s2, degreesOfFreedom: d }) => sum + s2 * d, 0) / degreesOfFreedom;
  return { variance, degreesOfFreedom };
}

/**
 * The spread on record, or a guess that says it is one.
 *
 * @equation without groups on record 2 mm per metre for a settled archer, 4 for any other
 * @param spread - from archerSpread [record]
 * @param archer - the archer, for the guess [record]
 * @returns a spread, never null [record]
 * @validity the guess only plans; nothing is judged against it
 * @source from memory
 * @example spreadOrGuess(null, { experience: 'settled' }).perMetre // 0.002
 */
export function spreadOrGuess(spread: SpreadAt | null, archer: Pick<Archer, 'experience'>): SpreadAt {
  if (spread !== null) return spread;
  const who = archer.experience === 'settled' ? 'settled' : 'learner';
  return {
    perMetre: GUESS[who],
    degreesOfFreedom: null,
    from: `a guess for a ${who === 'settled' ? 'settled archer' : 'learner'}, not checked against a source`,
  };
}

/**
 * What a plan's figures rest on, as a sentence.
 *
 * @equation the spread at the distance, where it is from, and what it means: 68 of 100 within one spread on one axis
 * @param spread - the spread [record]
 * @param distance - the distance [m]
 * @param units - the person's choice of units [record]
 * @returns the sentence [text]
 * @validity any spread
 * @source own derivation
 * @example spreadSentence({ perMetre: 0.002, degreesOfFreedom: 10, from: '1 group at 18 m' }, 18, defaultPreferences.units) // "One spread is 36 mm at 18 m, from 1 group at 18 m: two arrows of three strike within it to the side, and two of three in height."
 */
export function spreadSentence(spread: SpreadAt, distance: number, units: UnitChoice): string {
  const size = textQuantity(spread.perMetre * distance, 'setting', units, { digits: units.setting === 'mm' ? 0 : 1 });
  const rests = spread.degreesOfFreedom === null ? spread.from : `from ${spread.from}`;
  return `One spread is ${size} at ${textQuantity(distance, 'distance', units)}, ${rests}: two arrows of three strike within it to the side, and two of three in height.`;
}
