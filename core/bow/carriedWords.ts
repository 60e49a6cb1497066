import type { UnitChoice } from '../model/preferences.ts';
import { together } from '../model/sentence.ts';
import { showQuantity, textQuantity } from '../units/index.ts';
import type { ArrowSpeed, Carried } from './setupSpeed.ts';

/**
 * With which arrow, and at which brace height, a speed was measured that has been carried over since.
 *
 * @equation the mass that is otherwise, and the brace height that is, then or now
 * @param carried - the speed as measured [m/s], mass [kg] and brace height [m] then and now [record]
 * @param when - then or now [choice]
 * @param units - the person's choice of units [record]
 * @returns for instance "with 352 gr and a brace height of 8 in" [text]
 * @validity a speed that was carried over
 * @source own derivation
 * @example carriedWith({ speed: 55, mass: { then: 0.0194396730, now: 0.021 }, brace: null }, 'then', defaultPreferences.units) // "with 300 gr"
 */
export function carriedWith({ mass, brace }: Carried, when: 'then' | 'now', units: UnitChoice): string {
  const arrow = mass === null ? [] : [textQuantity(mass[when], 'mass', units)];
  const height = brace === null ? [] : [`a brace height of ${textQuantity(brace[when], 'length', units)}`];
  return `with ${together([...arrow, ...height])}`;
}

/**
 * A speed that was carried over since arrow or brace height were altered, as one sentence.
 *
 * @equation as measured and with what; about how much now and with what; what to do
 * @param speed - from setupSpeed [record]
 * @param units - the person's choice of units [record]
 * @returns for instance "179 ft/s, measured with 352 gr; about 172 with 392 gr: measure it again."; null for a speed that was not carried over [text]
 * @validity any speed of setupSpeed
 * @source own derivation
 * @example carriedSentence({ value: 55, carried: null }, defaultPreferences.units) // null
 */
export function carriedSentence({ value, carried }: Pick<ArrowSpeed, 'value' | 'carried'>, units: UnitChoice): string | null {
  if (carried === null) return null;
  const was = `${textQuantity(carried.speed, 'speed', units)}, measured ${carriedWith(carried, 'then', units)}`;
  return `${was}; about ${showQuantity(value, 'speed', units).figure} ${carriedWith(carried, 'now', units)}: measure it again.`;
}
