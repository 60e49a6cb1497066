import type { Bundle } from '../model/bundle.ts';
import type { Finding } from './finding.ts';
import { whyRule } from './parts.ts';

/**
 * Says that the verdicts that rest on a finger release do not hold for a compound.
 *
 * @equation `unknown` for a compound
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null for every other bow [record]
 * @validity every bow
 * @source common practice
 * @example compoundFinding({ ...exampleBundle, bow: { ...exampleBundle.bow, bowKind: 'compound' } }).level // "unknown"
 */
export function compoundFinding(bundle: Bundle): Finding | null {
  if (bundle.bow.bowKind !== 'compound') return null;
  return {
    id: 'compound',
    level: 'unknown',
    title: 'Compound: no verdict that rests on fingers',
    detail: 'Brace height, spine and bare shafts are judged here for a finger release. Groups, shift and drop still hold.',
    rule: null,
    short: { figure: '\u2013', word: 'compound' },
    why: whyRule(
      'Compound bows',
      'Fingers push the string sideways, so the arrow bends round the bow; the tables of brace height, the load on the shaft and the reading of bare shafts rest on that. A compound shot with a release aid bends its arrow up and down instead, and its weight falls off at full draw. The maker\u2019s figures govern.',
      [],
      'common practice',
    ),
    action: null,
  };
}
