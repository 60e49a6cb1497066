import { squareText } from '../../findings/nockingPoint.ts';
import { limits } from '../../model/limits.ts';
import type { Cause, NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import type { Spanned } from './plot.ts';
import type { TrialInput } from './types.ts';

/** The trade's step [m]. */
export const NOCKING_STEP = 0.0016;
/** How finely a place is set [m]. */
const FINE = 0.0004;

/**
 * Where the nocking point goes once the level place is read.
 *
 * @equation more than one step past the places tried: try one step farther; inside the interval: leave it; else to the level place, to 0.4 mm
 * @param input - the trial with its records [record]
 * @param level - the level place with its interval [record]
 * @param tried - the nocking points tried [list]
 * @param then - what to shoot after it [text]
 * @returns the step [record]
 * @validity read between the places tried, so that nothing is foretold beyond them
 * @source own derivation
 * @example levelStep(exampleTrialInput, { value: 0.006, low: 0.005, high: 0.007 }, [0.005, 0.007], '').kind // "leave"
 */
export function levelStep({ bundle, units }: TrialInput, level: Spanned, tried: readonly number[], then: string): NextStep {
  const now = bundle.setup.settings.nockingPoint;
  const [low, high] = [Math.min(...tried), Math.max(...tried)];
  if (level.value < low - NOCKING_STEP || level.value > high + NOCKING_STEP) {
    const on = level.value < low ? low - NOCKING_STEP : high + NOCKING_STEP;
    return stepOf(
      'shoot',
      `Try ${squareText(on, units)} as well`,
      'The level place lies beyond the places tried, and nothing is read so far out.',
      {
        then: 'As many of each there as at the others.',
        mark: 'own derivation',
      },
    );
  }
  if (now !== null && now >= level.low && now <= level.high)
    return stepOf(
      'leave',
      `Leave it: ${squareText(now, units)} is level, so far as these tell`,
      'It stands inside the interval.',
      {
        then: 'Take a snapshot, then look at the side.',
      },
    );
  const { min, max } = limits.nockingPoint;
  const to = Math.min(max, Math.max(min, (Math.round(level.value / FINE) * (FINE * 1e6)) / 1e6));
  const from =
    now === null ? 'It is not on record: mark where it is before you move it.' : `It stands at ${squareText(now, units)}.`;
  return stepOf(
    'change',
    `Set the nocking point to ${squareText(to, units)}`,
    `${from} Level is read at ${squareText(level.value, units)}, off a line through the places tried.`,
    {
      then,
      patch: { nockingPoint: to },
      caution: 'Look at it after a dozen arrows: one that slips lets the arrow off the string.',
      mark: 'own derivation',
      rule: 'Bare shafts strike lower with a higher nocking point; the place at which they strike level is read off a straight line through the places tried, and never farther than one step beyond them.',
    },
  );
}

/**
 * What may lie behind a nocking point off the level place.
 *
 * @equation low or high by the record, the findings on height, and what was not the same throughout
 * @param input - the trial with its records [record]
 * @param level - the level place with its interval [record]
 * @param weakens - what was not the same [list]
 * @returns the causes [list]
 * @validity any level place
 * @source common practice
 * @example levelCauses(exampleTrialInput, { value: 0.006, low: 0.005, high: 0.007 }, []) // []
 */
export function levelCauses(input: TrialInput, level: Spanned, weakens: readonly string[]): readonly Cause[] {
  const { bundle, units } = input;
  const now = bundle.setup.settings.nockingPoint;
  const stands = now === null ? [] : [`It is on record as ${squareText(now, units)}.`];
  const off = now === null || now < level.low || now > level.high;
  const away: Cause = {
    cause: now !== null && now < level.low ? 'The nocking point is low' : 'The nocking point is high',
    evidenceFor: off ? stands : [],
    evidenceAgainst: [],
  };
  return [...(off && now !== null ? [away] : []), ...findingCauses(input, 'height'), ...contextCauses([...new Set(weakens)])];
}
