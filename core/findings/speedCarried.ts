import { carriedSentence, carriedWith, setupSpeed } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { sources } from '../sources.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { goTo, rangeText, whyRule } from './parts.ts';

/**
 * A measured speed that was read with another arrow or at another brace height.
 *
 * @equation as setupSpeed of the bow room: a caution where it was carried over
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null where the speed holds as measured, or none was [record]
 * @validity as sinceTimed: what was not noted with the speed is not known to be otherwise
 * @source klopsteg-1943
 * @example speedCarriedFinding(exampleBundle, defaultPreferences.units) // null
 */
export function speedCarriedFinding(bundle: Bundle, units: UnitChoice): Finding | null {
  const speed = setupSpeed(bundle);
  if (!speed.ok || speed.value.carried === null) return null;
  const { value, low, high, carried } = speed.value;
  const other = carried.mass === null ? 'at another brace height' : 'with another arrow';
  const text = (si: number) => textQuantity(si, 'speed', units);
  return {
    id: 'speedCarried',
    level: 'caution',
    title: `Speed measured ${carried.mass !== null && carried.brace !== null ? 'with another arrow and brace height' : other}`,
    detail: carriedSentence(speed.value, units) ?? '',
    rule: null,
    short: { figure: text(value), word: 'carried' },
    why: whyRule(
      'A speed for another arrow',
      'A measured speed holds for the arrow and the brace height that it was read with. A heavier arrow takes more of the same energy to move, the bow’s own moving parts always take their share, and a higher brace height leaves a shorter stroke. So the speed is carried over, with a wider band, until it is measured again.',
      [
        ['v₀', `measured ${carriedWith(carried, 'then', units)}`, text(carried.speed)],
        ['v', carriedWith(carried, 'now', units), `${text(value)}, ${rangeText(low, high, 'speed', units, false)}`],
      ],
      sources['klopsteg-1943'],
    ),
    action: goTo('Measure again', 'bow', 'settings.arrowSpeed'),
  };
}
