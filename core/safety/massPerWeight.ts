import type { Band } from '../model/band.ts';
import type { Bow, BowKind } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';
import { grain, poundForce } from '../units/exact.ts';
import type { SafetyLevel } from './level.ts';

/**
 * Arrow mass per draw weight.
 *
 * @equation q = m / F
 * @param mass - m, the whole arrow [kg]
 * @param weight - F, draw weight on the fingers [N]
 * @returns q; 1 gr/lb is 1.4567e-5 kg/N [kg/N]
 * @validity by definition; RangeError for anything that is not positive and finite
 * @source own derivation
 * @example massPerWeight(0.02, 160) // 0.000125
 */
export function massPerWeight(mass: number, weight: number): number {
  requirePositive({ mass, weight });
  return mass / weight;
}

/** Floors of arrow mass, in grains per pound: below stop, a string loosed with too little to drive; below caution, ask the bow maker. */
export interface Floor {
  readonly stopGrPerLb: number;
  readonly cautionGrPerLb: number;
  readonly from: 'common practice' | 'from memory';
}

/**
 * By kind of bow, where the maker's figure is not known. A compound has none: the 5 gr/lb of its speed rating is a test
 * condition (ATA BOW-105), and no licence to shoot so light an arrow.
 */
export const massFloors: Readonly<Record<BowKind, Floor | null>> = {
  'take-down recurve': { stopGrPerLb: 6, cautionGrPerLb: 7, from: 'common practice' },
  // Makers of one-piece recurves ask for anything from the target bow's figure to the longbow's: caution in between.
  'one-piece recurve': { stopGrPerLb: 6, cautionGrPerLb: 8, from: 'from memory' },
  longbow: { stopGrPerLb: 8, cautionGrPerLb: 9, from: 'common practice' },
  flatbow: { stopGrPerLb: 8, cautionGrPerLb: 9, from: 'common practice' },
  'self bow': { stopGrPerLb: 9, cautionGrPerLb: 10, from: 'common practice' },
  compound: null,
};

/** Least arrow mass per draw weight of a bow [kg/N]; stop and caution are one figure when it is the maker's. */
export interface LeastMassPerWeight {
  readonly stop: number;
  readonly caution: number;
  readonly from: 'maker' | Floor['from'];
}

/**
 * Least arrow mass per draw weight that a bow takes: its maker's figure, else the floor of common practice by kind.
 *
 * @equation the maker's figure; target recurve 6 to 7 gr/lb, one-piece recurve 6 to 8, longbow and flatbow 8 to 9, self bow 9 to 10
 * @param bow - bowKind and leastMassPerWeight [kg/N] [record]
 * @returns stop and caution [kg/N] and where they are from; null for a compound without its maker's figure [record]
 * @validity RangeError for a maker's figure that is not positive and finite
 * @source common practice
 * @example leastMassPerWeight({ bowKind: 'longbow', leastMassPerWeight: 0.00012 }).stop // 0.00012
 */
export function leastMassPerWeight(bow: Pick<Bow, 'bowKind' | 'leastMassPerWeight'>): LeastMassPerWeight | null {
  if (bow.leastMassPerWeight !== null) {
    requirePositive({ leastMassPerWeight: bow.leastMassPerWeight });
    return { stop: bow.leastMassPerWeight, caution: bow.leastMassPerWeight, from: 'maker' };
  }
  const floor = massFloors[bow.bowKind];
  if (floor === null) return null;
  const grPerLb = grain / poundForce;
  return { stop: floor.stopGrPerLb * grPerLb, caution: floor.cautionGrPerLb * grPerLb, from: floor.from };
}

export interface MassCheck {
  readonly level: SafetyLevel;
  /** Arrow mass per draw weight at the weight's value, and at its heaviest [kg/N]. */
  readonly value: number;
  readonly atHeaviest: number;
  readonly least: LeastMassPerWeight | null;
  /** The limit that was not kept [kg/N], null when none. */
  readonly limit: number | null;
}

const ROUNDING = 1e-9;

/**
 * Whether an arrow is heavy enough for a bow: too light an arrow is close to a loose without one.
 *
 * @equation stop when m/F < q_stop; caution when m/F < q_caution, or m/F_high < q_stop
 * @param bow - bowKind and leastMassPerWeight [kg/N] [record]
 * @param mass - m, the whole arrow [kg]
 * @param weight - F, draw weight on the fingers, value with low and high [N] [record]
 * @returns level, mass per weight [kg/N], the least that the bow takes and the limit that was not kept [kg/N] [record]
 * @validity unknown for a compound without its maker's figure; RangeError for a mass or weight that is not positive and finite
 * @source common practice
 * @example massPerWeightCheck({ bowKind: 'self bow', leastMassPerWeight: null }, 0.02, { value: 200, low: 198, high: 202 }).level // "stop"
 */
export function massPerWeightCheck(bow: Pick<Bow, 'bowKind' | 'leastMassPerWeight'>, mass: number, weight: Band): MassCheck {
  const value = massPerWeight(mass, weight.value);
  const atHeaviest = massPerWeight(mass, weight.high);
  const least = leastMassPerWeight(bow);
  const found = { value, atHeaviest, least };
  if (least === null) return { ...found, level: 'unknown', limit: null };
  const below = (figure: number, limit: number): boolean => figure < limit * (1 - ROUNDING);
  if (below(value, least.stop)) return { ...found, level: 'stop', limit: least.stop };
  if (below(value, least.caution)) return { ...found, level: 'caution', limit: least.caution };
  if (below(atHeaviest, least.stop)) return { ...found, level: 'caution', limit: least.stop };
  return { ...found, level: 'in range', limit: null };
}
