import type { Compared } from './selectors.ts';

const numbers = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten', 'Eleven', 'Twelve'];

/** "Four", "14": how a count begins a sentence. */
export const counted = (count: number): string => numbers[count] ?? String(count);

export interface Differs {
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
    return `“${elsewhere}” differs from ${there} in ${differ.length === 1 ? 'one thing' : `${counted(differ.length).toLowerCase()} things`}`;
  }
  if (only === undefined) return to === null ? `It stands as in ${there}` : `${there} and “${to.name}” are the same`;
  if (differ.length > 1) {
    const many = `${counted(differ.length)} things`;
    return to === null ? `${many} differ from ${there}` : `${many} differ between ${there} and “${to.name}”`;
  }
  const name = `${only.name.charAt(0).toLowerCase()}${only.name.slice(1)}`;
  return to === null
    ? `Only the ${name} differs from ${there}: ${only.then} then, ${only.now} now`
    : `Only the ${name} differs between ${there} and “${to.name}”`;
}

/** "A", "A and B", "A, B and C". */
export const together = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1) ?? ''}`;
