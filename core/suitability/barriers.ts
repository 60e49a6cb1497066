import { LEAST_RESERVE, stringFigures, type DrawWeight } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { Result } from '../model/problem.ts';
import type { UnitChoice } from '../model/preferences.ts';
import {
  arrowsMassCheck,
  judgedAsLearner,
  pointAheadCheck,
  whyNotHeavier,
  worseLevel,
  type ArrowsMassCheck,
} from '../safety/index.ts';
import { poundForce } from '../units/exact.ts';
import { textQuantity } from '../units/index.ts';
import { tradeSteps } from './move.ts';

const ROUNDING = 1e-6;
const MEASURE_FIRST = 'Measure the point ahead of the rest at the deepest draw first.';

/**
 * How heavy the arrows of a set-up are for a weight, for massBarrier; null where it is not known.
 *
 * @equation as arrowsMassCheck
 * @param bundle - the set-up [record]
 * @param weight - from heavierWeight, worked out once for all moves that leave it alone [record]
 * @returns the check [record]
 * @validity as arrowsMassCheck
 * @source common practice
 * @example massCheckOf(exampleBundle, heavierWeight(exampleBundle.bow, exampleBundle.archer, exampleBundle.setup.settings)).check.level // "in range"
 */
export function massCheckOf({ bow, arrowSet }: Bundle, weight: Result<DrawWeight>): ArrowsMassCheck | null {
  const judged = weight.ok ? arrowsMassCheck(bow, arrowSet, weight.value) : null;
  return judged?.ok === true ? judged.value : null;
}

/**
 * Why the arrow's mass forbids a move; null when it does not.
 *
 * @equation the check of the mass per weight stands worse after the move than before, or is no better than a caution and the arrow lighter for the weight
 * @param was - massCheckOf the set-up as it is [record]
 * @param then - massCheckOf the set-up after the move [record]
 * @param units - the person's choice of units [record]
 * @returns the reason as a sentence, or null [text]
 * @validity as arrowsMassCheck
 * @source common practice
 * @example massBarrier(null, null, defaultPreferences.units) // null
 */
export function massBarrier(was: ArrowsMassCheck | null, then: ArrowsMassCheck | null, units: UnitChoice): string | null {
  if (was === null || then === null || then.check.limit === null) return null;
  const is = { ...then.check, limit: then.check.limit };
  // An arrow that is light already is made no lighter, though it would still be a caution only.
  const perWeight = ({ lightest, mass, check }: ArrowsMassCheck) => (lightest / mass) * check.value;
  const lighter = perWeight(then) < perWeight(was) * (1 - ROUNDING);
  if (!worseLevel(is.level, was.check.level) && !lighter) return null;
  const text = (si: number) => textQuantity(si, 'massPerWeight', units);
  const heaviest = is.value >= is.limit;
  return `The arrow would be ${text(heaviest ? is.atHeaviest : is.value)}${heaviest ? ' at the heaviest that the weight may be' : ''}: ${text(is.limit)} is the ${is.least?.from === 'maker' ? 'bow maker\u2019s ' : ''}least.`;
}

/**
 * Why the string forbids more draw weight; null when it does not.
 *
 * @equation less than six times the weight after the move, or fewer strands than are usual for it where there were enough before
 * @param before - the set-up as it is [record]
 * @param after - the set-up with the heavier bow [record]
 * @returns the reason as a sentence, or null [text]
 * @validity as stringFigures; a string of which nothing is known forbids nothing, and is a finding
 * @source common practice
 * @example stringBarrier(exampleBundle, exampleBundle) // null
 */
export function stringBarrier(before: Bundle, after: Bundle): string | null {
  const [was, is] = [stringFigures(before), stringFigures(after)];
  if (!was.ok || !is.ok) return null;
  if (is.value.reserve < LEAST_RESERVE)
    return `The string would hold ${(Math.floor(10 * is.value.reserve) / 10).toFixed(1)} times the weight: ${LEAST_RESERVE} times is the least. A stronger string first.`;
  const { strands } = after.setup.settings;
  const few = (usual: { readonly low: number } | null) => usual !== null && strands !== null && strands < usual.low;
  return few(is.value.strandsUsual) && !few(was.value.strandsUsual)
    ? `Strings of ${is.value.strandsUsual?.low ?? 0} strands or more are usual for that weight: another string first.`
    : null;
}

/**
 * Why the archer's draw forbids a shorter shaft; null when it does not.
 *
 * @equation the check of the point at the deepest draw is not in range after the move, or rests on a reach that nobody measured where nothing but that reach is asked
 * @param after - the set-up with the shorter arrows [record]
 * @param units - the person's choice of units [record]
 * @returns the reason as a sentence, or null [text]
 * @validity as pointAheadCheck; a caution forbids a cut too, since a cut cannot be undone
 * @source common practice
 * @example reachBarrier(exampleBundle, defaultPreferences.units) // null
 */
export function reachBarrier(after: Bundle, units: UnitChoice): string | null {
  const { archer, arrowSet, setup } = after;
  const reach = { arrowLength: arrowSet.length, drawLength: archer.drawLength, measured: setup.settings.pointAhead };
  const { level, rule, limit, ahead, beyondDraw, why } = pointAheadCheck(archer, reach);
  // Five millimetres off a reckoned reach are less than a draw is measured to: a cut wants the reach itself.
  const byReach = archer.clicker && !judgedAsLearner(archer);
  if (level === 'in range') return byReach && ahead?.from !== 'measured' ? MEASURE_FIRST : null;
  if (limit === null) return why ?? MEASURE_FIRST;
  if (rule === 'measured against reckoned')
    return 'The reach as measured and as reckoned would contradict each other: measure it again first.';
  const text = (si: number) => textQuantity(Math.abs(si), 'length', units);
  const least = text(limit.value);
  if (limit.of === 'ahead of the rest') {
    const left = ahead?.value ?? 0;
    const where = /[1-9]/.test(text(left)) ? `${text(left)} ${left < 0 ? 'behind' : 'ahead of'}` : 'level with';
    return `The shaft would end ${where} the rest: ${least} ahead is the least.`;
  }
  const left = beyondDraw ?? 0;
  return `The shaft would be ${text(left)} ${left < 0 ? 'shorter' : 'longer'} than the draw: ${least} longer is the least.`;
}

/**
 * Why the bow's weight may not be turned so far; null when it may.
 *
 * @equation limb bolts only; 10 % either way; no more turns than the bolts have; up by 3 lb at most and only after the stricter holding test
 * @param bundle - the set-up as it is [record]
 * @param from - weight on the fingers as it is [N]
 * @param to - weight as it would be [N]
 * @param units - the person's choice of units [record]
 * @returns the reason as a sentence, or null [text]
 * @validity a turn counts as a twentieth of the weight (from memory): the scale says what it did
 * @source common practice
 * @example boltBarrier(exampleBundle, 150, 149, defaultPreferences.units) // null
 */
export function boltBarrier({ archer, bow, setup }: Bundle, from: number, to: number, units: UnitChoice): string | null {
  if (bow.bowKind !== 'take-down recurve') return 'This bow has no limb bolts to turn.';
  const up = to > from;
  const notHeavier = up ? whyNotHeavier(archer) : null;
  if (notHeavier !== null) return notHeavier;
  const share = Math.abs(to / from - 1);
  const { weightShare, weightPerTurn, mostMoreLb } = tradeSteps;
  if (share > weightShare + ROUNDING) return 'Limb bolts turn the weight by about a tenth either way, no more: other limbs.';
  if (up && to - from > mostMoreLb * poundForce * (1 + ROUNDING))
    return `More weight comes in steps of ${textQuantity(mostMoreLb * poundForce, 'weight', units)} at most.`;
  const turns = turnsLeft(bow.mostBoltTurns, setup.settings, up);
  if (turns === null || share <= turns * weightPerTurn + ROUNDING) return null;
  const left = textQuantity(Math.max(0, turns), 'turns', units);
  return up ? `The bolts have ${left} left to go in.` : `The bolts have ${left} left to the maker\u2019s most.`;
}

/**
 * What has to be said of limb bolts that nobody counted before they are turned out.
 *
 * @equation lighter, and either bolt or the maker's most not on record
 * @param bundle - the set-up as it is [record]
 * @param lighter - whether the bolts are turned out [choice]
 * @returns a sentence, or null [text]
 * @validity bows with limb bolts
 * @source common practice
 * @example boltCaution(exampleBundle, true) // "Count the bolts first: never out past the maker’s most."
 */
export function boltCaution({ bow, setup }: Bundle, lighter: boolean): string | null {
  if (!lighter || turnsLeft(bow.mostBoltTurns, setup.settings, false) !== null) return null;
  return 'Count the bolts first: never out past the maker\u2019s most.';
}

function turnsLeft(
  most: number | null,
  { upperBolt, lowerBolt }: { readonly upperBolt: number | null; readonly lowerBolt: number | null },
  inward: boolean,
): number | null {
  if (upperBolt === null || lowerBolt === null) return null;
  if (inward) return Math.min(upperBolt, lowerBolt);
  return most === null ? null : most - Math.max(upperBolt, lowerBolt);
}
