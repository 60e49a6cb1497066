import { formFields } from '../../../core/compare/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';

const NOT_ALONE = 'The difference is not the equipment\u2019s alone.';

/** What besides the equipment was not the same: the sentence that matters, and the facts behind it. */
interface Told {
  readonly sentence: string;
  readonly facts: string;
}

/** Out of the set-ups (the archer; the form, unless groups tell in which form they were shot) and of the groups that are laid over each other. */
export function toldOf(reference: Bundle, other: Bundle, ofGroups: readonly string[] | null): Told | null {
  const archers =
    reference.archer.id === other.archer.id
      ? []
      : [`${reference.archer.name} shoots the first, ${other.archer.name} the second.`];
  const facts = [...archers, ...(ofGroups === null ? formFacts(reference, other) : ofGroups.map(withoutEnding))];
  return facts.length === 0 ? null : { sentence: NOT_ALONE, facts: facts.join(' ') };
}

/** Each sentence of a group's context ends in the one that stands before them all here. */
const withoutEnding = (sentence: string): string => sentence.replace(NOT_ALONE, '').trim();

function formFacts(reference: Bundle, other: Bundle): readonly string[] {
  const [one, another] = [reference.setup.form, other.setup.form];
  return formFields
    .filter(({ key, resolution }) => {
      const [a, b] = [one[key], another[key]];
      if (a === null || b === null) return false;
      return typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) > resolution : a !== b;
    })
    .map(({ key, name, use }) =>
      use === null ? `${name}: ${one[key]} for the first; ${another[key]} for the second.` : `${name}: two heights.`,
    );
}
