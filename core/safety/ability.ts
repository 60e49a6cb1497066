import type { AgeGroup, Archer } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';
import { poundForce } from '../units/exact.ts';
import { judgedAsLearner } from './learner.ts';
import type { SafetyLevel } from './level.ts';

/** Usual starting weights in pounds: from, to the most at the end of a course, and what other clubs go to. Authorities disagree. */
interface Start {
  readonly from: number;
  readonly to: number;
  readonly othersTo: number | null;
}

/** Common practice. */
const starts: Readonly<Record<AgeGroup, Start>> = {
  'up to 12': { from: 14, to: 16, othersTo: 20 },
  '13 or 14': { from: 16, to: 18, othersTo: null },
  '15 or 16': { from: 18, to: 22, othersTo: null },
  '17 or over': { from: 20, to: 24, othersTo: 25 },
};

/** Full draw held without a tremor: the first shows control of a bow, the second is asked for before a heavier one. Common practice. */
export const holdTimes = { control: 15, mayGoUp: 60 } as const;
const ROUNDING = 1e-6;

/** Which of the rules below spoke. */
export type AbilityRule =
  | 'held too briefly'
  | 'above the usual start'
  | 'hold not known'
  | 'experience not known'
  | 'age not known'
  | 'held long enough';

export interface AbilityCheck {
  readonly level: SafetyLevel;
  readonly rule: AbilityRule;
  /** Usual start for this age [N]; null where it is not known, or no rule for this archer. */
  readonly start: { readonly low: number; readonly high: number; readonly othersTo: number | null } | null;
}

const startOf = (age: AgeGroup): AbilityCheck['start'] => {
  const { from, to, othersTo } = starts[age];
  return { low: from * poundForce, high: to * poundForce, othersTo: othersTo === null ? null : othersTo * poundForce };
};

/**
 * Whether a draw weight is one that this archer is known to control.
 *
 * @equation caution: full draw held under 15 s, or a learner above the usual start of the age group; a learner of unknown age above the usual start of adults; whoever is not noted as settled is judged as a learner; unknown while the hold, or a learner's age, or of one of unknown age the experience, is not on record; else in range
 * @param archer - experience, ageGroup and holdTime [s] [record]
 * @param weight - draw weight on the fingers [N]
 * @returns level, the rule that spoke and the usual start [N] [record]
 * @validity finger-shot bows; it clears nobody: a coach looks at the archer, and any pain stops the shooting; RangeError for a weight that is not positive and finite
 * @source common practice
 * @example abilityCheck({ experience: 'settled', ageGroup: null, holdTime: 9 }, 150).rule // "held too briefly"
 */
export function abilityCheck(archer: Pick<Archer, 'experience' | 'ageGroup' | 'holdTime'>, weight: number): AbilityCheck {
  requirePositive({ weight });
  const { experience, ageGroup, holdTime } = archer;
  const learner = judgedAsLearner(archer);
  const start = learner ? startOf(ageGroup ?? '17 or over') : null;
  const known = learner && ageGroup === null ? null : start;
  if (holdTime !== null && holdTime < holdTimes.control - ROUNDING)
    return { level: 'caution', rule: 'held too briefly', start: known };
  if (start !== null && weight > start.high * (1 + ROUNDING)) return { level: 'caution', rule: 'above the usual start', start };
  if (learner && ageGroup === null)
    return { level: 'unknown', rule: experience === null ? 'experience not known' : 'age not known', start: null };
  if (holdTime === null) return { level: 'unknown', rule: 'hold not known', start: known };
  return { level: 'in range', rule: 'held long enough', start: known };
}

/**
 * Why an archer's bow is not made heavier yet; null when the stricter holding test was passed.
 *
 * @equation a learner, or one of unnoted experience: never here; else 60 s at full draw without a tremor
 * @param archer - experience and holdTime [s] [record]
 * @returns the reason as a sentence, or null [text]
 * @validity one of several strength tests: a coach makes the others; steps of 2 to 3 lb
 * @source common practice
 * @example whyNotHeavier({ experience: 'settled', holdTime: 60 }) // null
 */
export function whyNotHeavier({ experience, holdTime }: Pick<Archer, 'experience' | 'holdTime'>): string | null {
  if (experience === null) return 'Experience is not noted, and a learner\u2019s bow is not made heavier to suit a shaft.';
  if (experience === 'learner') return 'A learner\u2019s bow is not made heavier to suit a shaft.';
  const test = `${holdTimes.mayGoUp} s at full draw without a tremor are asked for before more weight`;
  if (holdTime === null) return `No holding test is on record: ${test}.`;
  if (holdTime < holdTimes.mayGoUp - ROUNDING) return `Full draw was held ${Math.floor(holdTime)} s: ${test}.`;
  return null;
}
