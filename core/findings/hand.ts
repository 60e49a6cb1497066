import type { Bundle } from '../model/bundle.ts';
import type { Finding } from './finding.ts';
import { handCheck } from '../safety/index.ts';
import { goTo, whyRule } from './parts.ts';

/**
 * Whether the bow's hand is the archer's.
 *
 * @equation as handCheck of the safety room: a stop when they differ, a caution where the arrow passes over the hand
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null when they agree [record]
 * @validity the hand that draws the string
 * @source common practice
 * @example handFinding({ ...exampleBundle, archer: { ...exampleBundle.archer, hand: 'left' } }).title // "Left-handed archer, right-hand bow"
 */
export function handFinding(bundle: Bundle): Finding | null {
  const { archer, bow } = bundle;
  const level = handCheck(archer, bow);
  if (level === 'in range') return null;
  return {
    id: 'hand',
    level,
    title: `${archer.hand === 'left' ? 'Left' : 'Right'}-handed archer, ${bow.hand}-hand bow`,
    detail:
      level === 'stop'
        ? 'Do not shoot this bow with this hand: the arrow lies on the wrong side. Check both records.'
        : 'Stiff and weak cannot be told apart until both agree. Check both records.',
    rule: null,
    short: { figure: bow.hand, word: 'hand' },
    why: whyRule(
      'Hand',
      'A right-hand bow is drawn with the right hand and carries the arrow on its left side. A left-handed archer needs the mirror image: bow, rest, button and every reading.',
      [
        ['', 'archer', archer.hand],
        ['', 'bow', bow.hand],
      ],
      'common practice',
    ),
    action: goTo('Fix', 'bow', 'bow.hand'),
  };
}
