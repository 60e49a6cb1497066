import { braceHeightRange } from '../../bow/index.ts';
import { nockingPractice } from '../../findings/nockingPoint.ts';
import type { Bundle } from '../../model/bundle.ts';
import { limits } from '../../model/limits.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import type { TrialKind, TrialPlan } from '../../model/trial.ts';
import { inch } from '../../units/exact.ts';

/** More heights than this are spread over the range in wider steps: each costs a dozen arrows. */
const MOST_STEPS = 7;
/** The trade moves a nocking point by a sixteenth of an inch [m]. */
const NOCKING = 0.0016;
/** Where a nocking point commonly starts from a rest [m]. */
const USUAL_NOCKING = 0.006;

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
 * @equation bare shaft 10 and 18 m, four ends of 3 and 2; paper 2, 3 and 4 m, 3 each; walk-back 5 to 30 m, 3 each; brace height from the low end of its range by 3 mm or 1/8 in, at most 7 heights, two ends of 6; nocking point three places 1.6 mm apart, three ends of 3 and 2; clearance 3; A against B six ends of 3 and 3
 * @param kind - which trial [choice]
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units, for the steps of the brace height [record]
 * @returns the plan [record]
 * @validity a brace height without a range is tried about where it stands, or about 8 1/2 in
 * @source common practice
 * @example newTrialPlan('paper tear', exampleBundle, defaultPreferences.units).distances // [2, 3, 4]
 */
export function newTrialPlan(kind: TrialKind, bundle: Bundle, units: UnitChoice): TrialPlan {
  const plan = plans[kind];
  const steps = kind === 'brace height' ? braceSteps(bundle, units) : kind === 'nocking point' ? nockingPlaces(bundle) : [];
  return { ...plan, distances: [...plan.distances], steps };
}

function braceSteps(bundle: Bundle, units: UnitChoice): number[] {
  const by = units.length === 'in' ? inch / 8 : 0.003;
  const now = bundle.setup.settings.braceHeight ?? 8.5 * inch;
  const { low, high } = braceHeightRange(bundle.bow) ?? { low: now - 2 * by, high: now + 2 * by };
  const fits = Math.floor((high - low) / by + 1e-6);
  const wide = Math.max(1, Math.ceil(fits / (MOST_STEPS - 1)));
  return Array.from({ length: Math.floor(fits / wide) + 1 }, (_, i) => rounded(low + i * wide * by));
}

function nockingPlaces(bundle: Bundle): number[] {
  const practice = nockingPractice(bundle);
  const start = bundle.setup.settings.nockingPoint ?? Math.max(USUAL_NOCKING, practice?.low ?? 0);
  const { min, max } = limits.nockingPoint;
  return [-1, 0, 1].map((step) => rounded(start + step * NOCKING)).filter((place) => place >= min && place <= max);
}

/** To a micrometre: what is left of adding steps up is no part of a plan. */
const rounded = (si: number): number => Math.round(si * 1e6) / 1e6;
