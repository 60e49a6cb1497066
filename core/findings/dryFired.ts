import type { Bundle } from '../model/bundle.ts';
import { bowCondition } from '../safety/index.ts';
import { dayText } from './day.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';

/**
 * A bow that was once loosed without an arrow.
 *
 * @equation as bowCondition of the safety room: a stop until it has been looked over since, a caution from then on
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null for a bow that never was [record]
 * @validity a look-over on the same instant counts as before it
 * @source common practice
 * @example dryFiredFinding(exampleBundle) // null
 */
export function dryFiredFinding({ bow }: Bundle): Finding | null {
  const { dryFired } = bowCondition(bow);
  if (dryFired === 'never' || bow.dryFired === null) return null;
  const since = dryFired === 'looked over since';
  const day = dayText(bow.dryFired);
  const looked = bow.lookedOver === null ? 'none on record' : dayText(bow.lookedOver);
  const by = bow.lookOver === null || bow.lookOver.by === '' ? '' : ` by ${bow.lookOver.by}`;
  return {
    id: 'dryFired',
    level: since ? 'caution' : 'stop',
    title: `Dry-fired ${day}, ${since ? '' : 'not '}looked over since`,
    detail: since
      ? `Looked over ${looked}${by}: a technician should have been the one. A crack may show only later.`
      : 'Shoot nothing from it until a technician has looked over limbs, tips and string.',
    rule: null,
    short: { figure: day.replace(/ \d+$/, ''), word: 'dry-fired' },
    why: whyRule(
      'After a dry fire',
      'Loosed without an arrow, a bow keeps all its energy: limbs, tips and string can crack or tear, and not always where it shows. It is retired until a technician has looked it over.',
      [
        ['', 'dry-fired', day],
        ['', 'last look-over', looked],
      ],
      'common practice',
    ),
    action: goTo('Look over', 'bow', 'bow.lookOver'),
  };
}
