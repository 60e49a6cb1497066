import { braceHeightRange } from '../../bow/index.ts';
import { goTo, rangeText } from '../../findings/parts.ts';
import type { TrialBrief, TrialInput } from './types.ts';

/**
 * What is not on record and would make the plan of a trial a better one.
 *
 * @equation brace height: the height as it stands; the bow's length where its range hangs on it and the maker's is not on record
 * @param input - the trial with its records [record]
 * @returns sentences, each with the way to the field [list]
 * @validity any trial; none of them stops it
 * @source common practice
 * @example trialAsks(exampleTrialInput) // []
 */
export function trialAsks({ trial, bundle, units }: Pick<TrialInput, 'trial' | 'bundle' | 'units'>): TrialBrief['asks'] {
  const { bow, setup } = bundle;
  if (trial.trial !== 'brace height' || bow.bowKind === 'compound') return [];
  const range = braceHeightRange(bow);
  const ends = range === null ? '' : rangeText(range.low, range.high, 'length', units, false);
  const recurve = bow.bowKind === 'take-down recurve' || bow.bowKind === 'one-piece recurve';
  return [
    ...(setup.settings.braceHeight === null
      ? [
          {
            text: 'Today\u2019s brace height is not on record: with it the plan stands about it, until then about the middle of the range.',
            action: goTo('Enter the brace height', 'bow', 'settings.braceHeight'),
          },
        ]
      : []),
    ...(recurve && bow.length === null && range?.from !== 'maker'
      ? [
          {
            text: `How long is the bow? Until that or the maker\u2019s range is on record, ${ends} for recurves of every length has to do, which is wide.`,
            action: goTo('Enter the length', 'bow', 'bow.length'),
          },
        ]
      : []),
  ];
}
