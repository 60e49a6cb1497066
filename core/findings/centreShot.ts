import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { CentreShotDatum } from '../model/setup.ts';
import { outwardSide } from '../trials/outward.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { HAIR, goTo, rangeText, ruleOf, standing, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/** The same setting reads three to four times as much at the point as at the button, so a figure without its datum means nothing [m]. */
export const centreShotPractice: Readonly<Record<CentreShotDatum, { readonly low: number; readonly high: number }>> = {
  point: { low: 0.0016, high: 0.0032 },
  button: { low: 0.0005, high: 0.001 },
};

/**
 * The centre shot against common practice, at the datum where it was read.
 *
 * @equation caution outside 1.6–3.2 mm at the point, or 0.5–1.0 mm at the button, outward of the string
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null for a compound and where no button sets it (off the hand or shelf) [record]
 * @validity finger release; string through the centre of both limbs
 * @source common practice
 * @example centreShotFinding(exampleBundle, defaultPreferences.units).title // "Centre shot 2 mm outward, at the point"
 */
export function centreShotFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const { bow, archer, setup } = bundle;
  if (bow.bowKind === 'compound' || bow.arrowPass !== 'rest and button') return null;
  const { centreShot, centreShotDatum: datum } = setup.settings;
  if (centreShot === null)
    return waitingFor(
      'centreShot',
      'Centre shot not measured',
      'Waits for the centre shot: read it at the point of a nocked arrow.',
      'centre',
      'bow',
      'settings.centreShot',
    );
  const { low, high } = centreShotPractice[datum];
  const stands = standing(centreShot, low, high, HAIR);
  const size = textQuantity(Math.abs(centreShot), 'setting', units);
  const offset = /[1-9]/.test(size) ? `${size} ${centreShot < 0 ? 'inward' : 'outward'}` : size;
  const side = outwardSide(archer.hand);
  return {
    id: 'centreShot',
    level: stands === 'inside' ? 'ok' : 'caution',
    title: `Centre shot ${offset}, at the ${datum}${stands === 'inside' ? '' : stands === 'low' ? ': too far in' : ': too far out'}`,
    detail: `Common practice for a finger release: ${side} of the string for a ${archer.hand}-handed archer.`,
    rule: ruleOf(centreShot, low, high, 'setting', units, false),
    short: { figure: textQuantity(centreShot, 'setting', units), word: 'centre' },
    why: whyRule(
      'Centre shot',
      'With the string through the centre of both limbs, the point of a nocked arrow shows 1.6 to 3.2 mm outward of the string for a finger release. At the button the same setting is only 0.5 to 1.0 mm: the offset times nock to button over nock to point. The figure is kept with the place where it was read.',
      [
        ['o', `offset outward (${side}), read at the ${datum}`, textQuantity(centreShot, 'setting', units)],
        ['', `range at the ${datum}`, rangeText(low, high, 'setting', units, false)],
      ],
      'common practice',
    ),
    action: stands === 'inside' ? null : goTo('Fix', 'bow', 'settings.centreShot'),
  };
}
