import { ok, refuse, type BowKind, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import { requireNotNegative, requirePositive } from '../model/positive.ts';
import type { Band } from '../model/band.ts';
import { kindFigures } from './kinds.ts';

/** What decides how fast an arrow leaves. */
export interface LaunchFigures {
  /** m, arrow [kg]. */
  readonly mass: number;
  /** E, stored energy [J]. */
  readonly energy: number;
  /** K, virtual mass of the bow [kg]. */
  readonly virtualMass: number;
  /** η, share of the stored energy that comes back [-]. */
  readonly hysteresis: number;
}

/**
 * Speed at which an arrow leaves the bow.
 *
 * @equation (m + K) v² / 2 = η E
 * @param figures - mass m [kg], energy E [J], virtualMass K [kg], hysteresis η [-] [record]
 * @returns v, launch speed [m/s]
 * @validity K roughly constant with arrow mass; RangeError for a figure that is not finite, a negative K, anything else not positive, or η above 1
 * @source klopsteg-1943
 * @example launchSpeed({ mass: 0.02, energy: 50, virtualMass: 0.005, hysteresis: 0.9 }) // 60
 */
export function launchSpeed(figures: LaunchFigures): number {
  const { mass, energy, virtualMass, hysteresis } = figures;
  requirePositive({ mass, energy, hysteresis });
  requireNotNegative({ virtualMass });
  if (hysteresis > 1) throw new RangeError(`hysteresis is a share of the stored energy, at most 1, not ${hysteresis}.`);
  return Math.sqrt((2 * hysteresis * energy) / (mass + virtualMass));
}

/**
 * Estimated launch speed from the bow's kind, with a band; a chronograph always wins.
 *
 * @equation (m + K) v² / 2 = η E with the kind's K and η; the band adds the effects of E, K and η at their ends in squares
 * @param bowKind - which K and η hold [choice]
 * @param energy - E, stored energy, value with low and high [J] [record]
 * @param mass - m, arrow [kg]
 * @returns v, value with low and high: an estimate [m/s] [record]
 * @validity refused for a compound and for an arrow mass outside the model's limits; RangeError for an energy that is not positive and finite
 * @source from memory
 * @example estimatedSpeed('take-down recurve', { value: 47.061, low: 47.061, high: 47.061 }, 0.021).value.value // 57.54737179055182
 */
export function estimatedSpeed(bowKind: BowKind, energy: Band, mass: number): Result<Band> {
  const kind = kindFigures[bowKind];
  if (kind === null)
    return refuse(
      'compound',
      'The speed of a compound is not estimated: it depends on its cams. Measure it with a chronograph.',
      'arrowSpeed',
    );
  const arrow = given('the estimated speed', { arrowMass: mass });
  if (!arrow.ok) return arrow;
  const inputs = { energy, virtualMass: kind.virtualMass, hysteresis: kind.hysteresis };
  const speedAt = (ends: Partial<Record<keyof typeof inputs, 'low' | 'high'>>): number => {
    const stored = energy[ends.energy ?? 'value'];
    // Readings that end far short of full draw may leave a band that begins at nothing, and nothing drives no arrow.
    if (ends.energy === 'low' && stored <= 0) return 0;
    return launchSpeed({
      mass,
      energy: stored,
      virtualMass: kind.virtualMass[ends.virtualMass ?? 'value'],
      hysteresis: kind.hysteresis[ends.hysteresis ?? 'value'],
    });
  };
  const value = speedAt({});
  const reach = (slower: 'low' | 'high', faster: 'low' | 'high'): number =>
    Math.hypot(
      speedAt({ energy: faster }) - value,
      speedAt({ virtualMass: slower }) - value,
      speedAt({ hysteresis: faster }) - value,
    );
  return ok({ value, low: Math.max(0, value - reach('high', 'low')), high: value + reach('low', 'high') });
}
