import type { Bundle } from '../model/bundle.ts';
import { arrowsCondition } from '../safety/index.ts';
import type { Finding } from './finding.ts';
import { numbersText } from './numbersText.ts';
import { goTo, whyRule } from './parts.ts';

/**
 * Numbered arrows with a flaw that are still among those that are shot, or that nobody has looked over.
 *
 * @equation as arrowsCondition of the safety room: a flaw is a stop; some not looked over while others were is unknown
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null when there is neither, or none was looked over one by one [record]
 * @validity numbered sets; the look-over of the whole set is a finding of its own
 * @source common practice
 * @example arrowFlawsFinding(exampleBundle) // null
 */
export function arrowFlawsFinding({ arrowSet }: Bundle): Finding | null {
  const { flawed, unseen, shooting } = arrowsCondition(arrowSet);
  const stop = flawed.length > 0;
  if (!stop && (unseen.length === 0 || unseen.length === shooting)) return null;
  const numbers = stop ? flawed : unseen;
  return {
    id: 'arrowFlaws',
    level: stop ? 'stop' : 'unknown',
    title: stop ? `${numbersText(numbers)}: a flaw was seen` : `${numbersText(numbers)} not looked over`,
    detail: stop
      ? 'Set aside what has a flaw and shoot none of it: a cracked nock or shaft can break into the hand.'
      : 'Others of this set were looked over one by one. Look and feel along these, then note it.',
    rule: null,
    short: { figure: String(numbers.length), word: stop ? 'flawed' : 'unseen' },
    why: whyRule(
      'Arrows looked over one by one',
      'Nock, shaft, point and fletching of each arrow. One with a flaw is not shot: it is set aside, mended or destroyed, and its number is kept. Until it is marked as set aside it may come back into the quiver.',
      [
        ['', 'with a flaw', stop ? numbersText(flawed) : 'none seen'],
        ['', 'not looked over', unseen.length === 0 ? 'none' : `${unseen.length} of ${shooting}`],
      ],
      'common practice',
    ),
    action: goTo(stop ? 'Set aside' : 'Look over', 'arrow', 'arrowSet.arrows'),
  };
}
