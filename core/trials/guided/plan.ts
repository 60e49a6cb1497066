import { braceHeightRange } from '../../bow/index.ts';
import { nockingPractice } from '../../findings/nockingPoint.ts';
import type { Bundle } from '../../model/bundle.ts';
import { limits } from '../../model/limits.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import type { TrialKind, TrialPlan } from '../../model/trial.ts';
import { inch } from '../../units/exact.ts';

/** Each costs a dozen arrows; odd, so that one stands in the middle. */
const MOST_STEPS = 5;
/** The trade moves a nocking point by a sixteenth of an inch [m]. */
const NOCKING = 0.0016;
/** Where a nocking point commonly starts from a rest [m]. */
const USUAL_NOCKING = 0.006;

/**
 * The step from one brace height of a plan to the next.
 *
 * @equation 1/8 in where lengths are in inches, else 3 mm: three to six twists
 * @param units - the person's choice of units [record]
 * @returns the step [m]
 * @validity every choice of units
 * @source common practice
 * @example braceStepSize({ ...defaultPreferences.units, length: 'cm' }) // 0.003
 */
export function braceStepSize(units: UnitChoice): number {
  return units.length === 'in' ? inch / 8 : 0.003;
}

const at = (distances: readonly number[], ends: number, arrows: number, others: number): TrialPlan => ({
  distances: [...distances],
  ends,
  arrows,
  others,
  steps: [],
});

/** As the trade shoots them, with the ends repeated: three and two arrows by themselves show next to nothing. */
const plans: Readonly<Record<TrialKind, TrialPlan>> = {
  'bare shaft': at([10, 18], 4, 3, 2),
  'paper tear': at([2, 3, 4], 1, 3, 0),
  'walk-back': at([5, 10, 15, 20, 25, 30], 1, 3, 0),
  'brace height': at([18], 2, 6, 0),
  'nocking point': at([18], 3, 3, 2),
  clearance: at([10], 1, 3, 0),
  'a against b': at([18], 6, 3, 3),
};

/**
 * The usual plan of a trial, to be altered by whoever shoots.
 *
 * @equation bare shaft 10 and 18 m, four ends of 3 and 2; paper 2, 3 and 4 m, 3 each; walk-back 5 to 30 m, 3 each; brace height about where it stands by 3 mm or 1/8 in, at most 5 heights, all inside its range, two ends of 6; nocking point three places 1.6 mm apart, three ends of 3 and 2; clearance 3; A against B six ends of 3 and 3
 * @param kind - which trial [choice]
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the steps of the brace height [record]
 * @returns the plan [record]
 * @validity a brace height that was not measured is tried about the middle of its range; without a range about where it stands, or about 8 1/2 in
 * @source common practice
 * @example newTrialPlan('paper tear', exampleBundle, defaultPreferences.units).distances // [2, 3, 4]
 */
export function newTrialPlan(kind: TrialKind, bundle: Bundle, units: UnitChoice): TrialPlan {
  const plan = plans[kind];
  const steps = kind === 'brace height' ? braceSteps(bundle, units) : kind === 'nocking point' ? nockingPlaces(bundle) : [];
  return { ...plan, distances: [...plan.distances], steps };
}

/** Today's height in the middle, or as near to it as the range allows. */
function braceSteps(bundle: Bundle, units: UnitChoice): number[] {
  const by = braceStepSize(units);
  const today = bundle.setup.settings.braceHeight;
  const range = braceHeightRange(bundle.bow);
  const middle = range === null ? 8.5 * inch : (range.low + range.high) / 2;
  const { low, high } = range ?? { low: -Infinity, high: Infinity };
  const from = Math.min(high, Math.max(low, today ?? middle));
  const [down, up] = [Math.floor((from - low) / by + 1e-6), Math.floor((high - from) / by + 1e-6)];
  const each = Math.floor(MOST_STEPS / 2);
  const first = -Math.min(down, Math.max(each, MOST_STEPS - 1 - up));
  const last = Math.min(up, Math.max(each, MOST_STEPS - 1 - down));
  return Array.from({ length: last - first + 1 }, (_, i) => rounded(from + (first + i) * by));
}

function nockingPlaces(bundle: Bundle): number[] {
  const practice = nockingPractice(bundle);
  const start = bundle.setup.settings.nockingPoint ?? Math.max(USUAL_NOCKING, practice?.low ?? 0);
  const { min, max } = limits.nockingPoint;
  return [-1, 0, 1].map((step) => rounded(start + step * NOCKING)).filter((place) => place >= min && place <= max);
}

/** To a micrometre: what is left of adding steps up is no part of a plan. */
const rounded = (si: number): number => Math.round(si * 1e6) / 1e6;
