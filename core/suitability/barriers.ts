import { arrowMass } from '../arrow/index.ts';
import { heavierWeight } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { massPerWeightCheck, pointAheadCheck, whyNotHeavier, type MassCheck, type SafetyLevel } from '../safety/index.ts';
import { poundForce } from '../units/exact.ts';
import { textQuantity } from '../units/index.ts';
import { tradeSteps } from './move.ts';

const worse: readonly SafetyLevel[] = ['in range', 'unknown', 'caution', 'stop'];
const ROUNDING = 1e-6;

function massCheckOf({ archer, bow, arrowSet, setup }: Bundle): MassCheck | null {
  const mass = arrowMass(arrowSet);
  const weight = heavierWeight(bow, archer, setup.settings);
  return mass.ok && weight.ok ? massPerWeightCheck(bow, mass.value.mass, weight.value) : null;
}

/**
 * Why the arrow's mass forbids a move; null when it does not.
 *
 * @equation the check of the mass per weight stands worse after the move than before
 * @param before - the set-up as it is [record]
 * @param after - the set-up after the move [record]
 * @param units - the person's choice of units [record]
 * @returns the reason as a sentence, or null [text]
 * @validity as massPerWeightCheck
 * @source common practice
 * @example massBarrier(exampleBundle, exampleBundle, defaultPreferences.units) // null
 */
export function massBarrier(before: Bundle, after: Bundle, units: UnitChoice): string | null {
  const [was, is] = [massCheckOf(before), massCheckOf(after)];
  if (was === null || is === null || is.limit === null || worse.indexOf(is.level) <= worse.indexOf(was.level)) return null;
  const text = (si: number) => textQuantity(si, 'massPerWeight', units);
  const heaviest = is.value >= is.limit;
  return `The arrow would be ${text(heaviest ? is.atHeaviest : is.value)}${heaviest ? ' at the heaviest that the weight may be' : ''}: ${text(is.limit)} is the ${is.least?.from === 'maker' ? 'bow maker\u2019s ' : ''}least.`;
}

/**
 * Why the archer's draw forbids a shorter shaft; null when it does not.
 *
 * @equation the check of the point at the deepest draw is not in range after the move
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
  if (level === 'in range') return null;
  if (limit === null) return why ?? 'Measure the point ahead of the rest at the deepest draw first.';
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

function turnsLeft(
  most: number | null,
  { upperBolt, lowerBolt }: { readonly upperBolt: number | null; readonly lowerBolt: number | null },
  inward: boolean,
): number | null {
  if (upperBolt === null || lowerBolt === null) return null;
  if (inward) return Math.min(upperBolt, lowerBolt);
  return most === null ? null : most - Math.max(upperBolt, lowerBolt);
}
