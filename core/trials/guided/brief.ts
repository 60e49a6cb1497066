import { trialCautions } from './cautions.ts';
import { disputedOf } from './disputed.ts';
import { planShows } from './power.ts';
import { procedureOf } from './procedure.ts';
import { plannedRows } from './rows.ts';
import { spreadOrGuess } from './archerSpread.ts';
import { trialAsks } from './asks.ts';
import { trialStops } from './stops.ts';
import type { TrialBrief, TrialInput } from './types.ts';

const COMPOUND =
  'Stiff and weak are read from a finger release; a compound shot with a release aid bends its arrow up and down, and no change is read from it here.';

/**
 * What is read before a trial's first arrow: how it is shot, what must be seen to, and what so many arrows can and cannot show.
 *
 * @equation procedureOf, trialCautions, trialStops and planShows with the archer's own spread, or with a guess that says so
 * @param input - the trial with its records [record]
 * @returns the brief [record]
 * @validity any trial; while a stop stands nothing is shot
 * @source common practice
 * @example brief(exampleTrialInput).arrows // 10
 */
export function brief(input: TrialInput): TrialBrief {
  const { trial, bundle, units } = input;
  const shows = planShows(input, spreadOrGuess(input.spread, bundle.archer));
  const rows = plannedRows(trial.trial, trial.plan);
  const fingers = trial.trial !== 'clearance' && trial.trial !== 'a against b';
  return {
    ...procedureOf(trial, units),
    cautions: trialCautions(
      trial.trial,
      rows.some(({ fletching }) => fletching === 'bare'),
      units,
    ),
    asks: trialAsks(input),
    stops: trialStops(input),
    canShow: shows.can,
    cannotShow: fingers && bundle.bow.bowKind === 'compound' ? [COMPOUND, ...shows.cannot] : shows.cannot,
    disputed: disputedOf(trial.trial, units),
    arrows: rows.reduce((sum, { which, arrows }) => sum + (which === 'speeds' ? 0 : arrows), 0),
  };
}
