import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { knownOf, type Known } from './known.ts';
import { goTo, whyRule } from './parts.ts';

/**
 * An arrow that was weighed or balanced and does not agree with its parts.
 *
 * @equation as buildArrow of the arrow room
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @param known - what several checks rest on [record]
 * @returns the finding; null when they agree, or nothing was measured [record]
 * @validity as buildArrow
 * @source from memory
 * @example partsAgainstWholeFinding(exampleBundle, defaultPreferences.units) // null
 */
export function partsAgainstWholeFinding(
  bundle: Bundle,
  units: UnitChoice,
  known: Known = knownOf(bundle, units),
): Finding | null {
  const build = known.build();
  if (!build.ok || build.value.disagrees === null) return null;
  const { mass, balance, measured, disagrees } = build.value;
  const ofMass = disagrees.startsWith('The weighed arrow');
  const text = (si: number, use: 'mass' | 'length') => textQuantity(si, use, units);
  return {
    id: 'partsAgainstWhole',
    level: 'caution',
    title: ofMass
      ? `Weighed ${text(measured.mass ?? 0, 'mass')}, its parts ${text(mass, 'mass')}`
      : `Balances at ${text(measured.balance ?? 0, 'length')}, its parts at ${text(balance, 'length')}`,
    detail: disagrees,
    rule: null,
    short: ofMass
      ? { figure: text(measured.mass ?? 0, 'mass'), word: 'parts' }
      : { figure: text(measured.balance ?? 0, 'length'), word: 'balance' },
    why: whyRule(
      'The whole against its parts',
      'The arrow on the scale, or balanced on an edge, and the sum of its parts must agree within what glue, paint and ordinary places leave open. Where they do not, one figure is wrong, and everything that rests on it with it.',
      [
        ['', 'weighed', measured.mass === null ? 'not weighed' : text(measured.mass, 'mass')],
        ['', 'sum of the parts', text(mass, 'mass')],
        [
          '',
          'balanced, from the throat of the nock',
          measured.balance === null ? 'not measured' : text(measured.balance, 'length'),
        ],
        ['', 'balance point of the parts', text(balance, 'length')],
      ],
      'from memory',
    ),
    action: goTo('Arrow', 'arrow', ofMass ? 'arrowSet.weighed' : 'arrowSet.balance'),
  };
}
