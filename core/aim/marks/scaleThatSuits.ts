import { inch } from '../../units/exact.ts';
import { fitMarks } from './fitMarks.ts';
import type { KnownMark, MarkPriors, SightScale } from './types.ts';

/** What scales are divided in, the commonest first [m]: millimetres, centimetres, inches, tenths and sixteenths of an inch. From memory. */
const units = [0.001, 0.01, inch, inch / 10, inch / 16];

const suits = (marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): boolean => {
  const fit = fitMarks(marks, scale, priors);
  return fit.ok && !fit.value.notes.some(({ code }) => code === 'against-figures' || code === 'wider' || code === 'one-of-these');
};

/**
 * Another scale on which marks go together, when on the one given they do not.
 *
 * @equation the first of 1 mm, 1 cm, 1 in, 1/10 in and 1/16 in a unit, growing as given and then the other way, with which the fit says nothing against the marks or the figures
 * @param marks - the known marks [list]
 * @param scale - the scale that was given or assumed [record]
 * @param priors - what is held beforehand [record]
 * @returns the other scale, or null when the given one suits, none does, or fewer than two distances are known [record]
 * @validity a hint, no proof: units that are nearly alike cannot be told apart
 * @source own derivation
 * @example scaleThatSuits(exampleMarks, exampleScale, examplePriors) // null
 */
export function scaleThatSuits(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): SightScale | null {
  const counted = marks.filter(({ leftOut = false }) => !leftOut);
  if (new Set(counted.map(({ distance }) => distance)).size < 2 || suits(marks, scale, priors)) return null;
  const other = scale.grows === 'down' ? 'up' : 'down';
  for (const grows of [scale.grows, other] as const)
    for (const unit of units) {
      const { lowest: _low, highest: _high, ...endless } = { ...scale, unit, grows };
      const same = grows === scale.grows && Math.abs(unit / scale.unit - 1) < 0.01;
      if (!same && suits(marks, endless, priors)) return { ...scale, unit, grows };
    }
  return null;
}
