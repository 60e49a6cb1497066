import { setStatistics, type SetStatistics } from '../dozen/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';
import type { Finding } from './finding.ts';
import { numbersText } from './numbersText.ts';
import { goTo, whyRule } from './parts.ts';

/**
 * Arrows of a numbered set that do not belong with the others by mass, spine or straightness.
 *
 * @equation as setStatistics of the dozen room, for the club; a flaw is a finding of its own
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding; null for a set that is not numbered, or of which nothing was measured [record]
 * @validity as setStatistics
 * @source from memory
 * @example arrowsMatchFinding(exampleBundle, defaultPreferences.units) // null
 */
export function arrowsMatchFinding({ arrowSet }: Bundle, units: UnitChoice): Finding | null {
  if (arrowSet.arrows.length === 0) return null;
  const set = setStatistics(arrowSet, units);
  if (!set.ok) return null;
  const { mass, spine, straightness, shooting, tolerances } = set.value;
  if (mass === null && spine === null && straightness === null) return null;
  const odd = set.value.outliers.filter(({ what }) => what !== 'flaw');
  const numbers = [...new Set(odd.map(({ number }) => number))].sort((a, b) => a - b);
  const [first] = odd;
  const text = (si: number) => textQuantity(si, 'mass', units);
  return {
    id: 'arrowsMatch',
    level: first === undefined ? 'ok' : 'caution',
    title: first === undefined ? `${shooting} arrows, alike in mass and spine` : `${numbersText(numbers)}: unlike the others`,
    detail:
      first === undefined
        ? likeText(set.value, text)
        : `${first.sentence}${numbers.length > 1 ? ' The others are marked in the table.' : ' Keep it for practice, or set it aside.'}`,
    rule: null,
    short: first === undefined ? { figure: String(shooting), word: 'alike' } : { figure: String(numbers.length), word: 'odd' },
    why: whyRule(
      'A set that matches',
      'Each arrow against the middle of its set, by mass, spine and straightness, as clubs sort them; arrows set aside are left out. Closer is sorted for a match.',
      [
        ['', 'arrows that are shot', String(shooting)],
        ['', 'mass, either way', text(tolerances.mass)],
        ...(mass === null ? [] : [['', 'lightest and heaviest', `${text(mass.low)}, ${text(mass.high)}`] as const]),
      ],
      tolerances.source,
    ),
    action: first === undefined ? null : goTo('Sort', 'arrow', 'arrowSet.arrows'),
  };
}

function likeText({ mass, tolerances }: SetStatistics, text: (si: number) => string): string {
  if (mass === null) return 'Sorted as clubs sort them; none was weighed by itself.';
  return `${text(mass.high - mass.low)} from the lightest to the heaviest; ${text(tolerances.mass)} either way is let pass.`;
}
