import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { whyRule } from './parts.ts';

/** Where the first bare shafts are shot [m]: common practice. */
const BEGIN_AT = 10;

/**
 * The caution before any bare shaft is shot.
 *
 * @equation always a caution where bare shafts are shot, with the distance to begin at: 10 m
 * @param units - the person's choice of units [record]
 * @returns the finding [record]
 * @validity every bow
 * @source common practice
 * @example rangeCautionFinding(defaultPreferences.units).level // "caution"
 */
export function rangeCautionFinding(units: UnitChoice): Finding {
  const near = textQuantity(BEGIN_AT, 'distance', units, { digits: 0 });
  return {
    id: 'range',
    level: 'caution',
    title: `Bare shafts fly wide: start at ${near} or nearer`,
    detail: 'Full butt and backstop, nobody ahead of the line. Your range\u2019s rules govern.',
    rule: null,
    short: { figure: near, word: 'start' },
    why: whyRule(
      'Before shooting bare shafts',
      'A shaft without fletching does not straighten its flight and may strike far from where it was aimed. Arm guard and tab or glove on; one line, one signal to shoot, one to collect; all forward together; stop at once on the stop signal. Never draw above the target.',
      [],
      'common practice',
    ),
    action: null,
  };
}
