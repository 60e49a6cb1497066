import { capital } from '../../../core/findings/index.ts';
import { countWord } from '../../../core/model/sentence.ts';
import type { Compared } from './selectors.ts';

interface Differs {
  readonly name: string;
  readonly then: string;
  readonly now: string;
}

/** The finding of this screen: how far the bow has moved from the snapshot. */
export function recordHeadline({ from, to, elsewhere }: Compared, differ: readonly Differs[]): string {
  const there = `“${from.name}”`;
  const only = differ[0];
  if (to === null && elsewhere !== null) {
    if (only === undefined) return `“${elsewhere}” stands as in ${there}`;
    return `“${elsewhere}” differs from ${there} in ${differ.length === 1 ? 'one thing' : `${countWord(differ.length)} things`}`;
  }
  if (only === undefined) return to === null ? `It stands as in ${there}` : `${there} and “${to.name}” are the same`;
  if (differ.length > 1) {
    const many = capital(`${countWord(differ.length)} things`);
    return to === null ? `${many} differ from ${there}` : `${many} differ between ${there} and “${to.name}”`;
  }
  const name = `${only.name.charAt(0).toLowerCase()}${only.name.slice(1)}`;
  return to === null
    ? `Only the ${name} differs from ${there}: ${only.then} then, ${only.now} now`
    : `Only the ${name} differs between ${there} and “${to.name}”`;
}
