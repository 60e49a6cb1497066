import { shootingStops } from '../../findings/all.ts';
import type { Finding } from '../../findings/finding.ts';
import { goTo, whyRule } from '../../findings/parts.ts';
import { bracePlanWords } from './braceLimits.ts';
import type { TrialInput } from './types.ts';

/**
 * Everything for which this trial is not shot.
 *
 * @equation the stops of the set-up, then those of the plan: brace heights outside the maker's range or, where none is on record, outside common practice, or of a compound
 * @param input - the trial with its records [record]
 * @returns the findings that stop it, the set-up's first [list]
 * @validity any trial; steps within 1 mm of the range pass, as a tape is no finer
 * @source common practice
 * @example trialStops(exampleTrialInput) // []
 */
export function trialStops(input: Pick<TrialInput, 'trial' | 'bundle' | 'units'>): readonly Finding[] {
  const { trial, bundle, units } = input;
  const own = trial.trial === 'brace height' ? braceStop(input) : null;
  return own === null ? shootingStops(bundle, units) : [...shootingStops(bundle, units), own];
}

function braceStop({ trial, bundle, units }: Pick<TrialInput, 'trial' | 'bundle' | 'units'>): Finding | null {
  if (bundle.bow.bowKind === 'compound')
    return stop(
      'compoundBrace',
      'No brace heights are tried on a compound',
      'A compound\u2019s hangs on its cams and cables: a technician sets it on a press, within the maker\u2019s figures.',
    );
  const words = bracePlanWords(bundle, trial.plan.steps, units);
  if (words === null) return null;
  const own = words.makers ? null : goTo('Enter the maker\u2019s range', 'bow', 'bow.braceLow');
  return { ...stop('bracePlan', words.title, words.detail), action: own };
}

function stop(id: string, title: string, detail: string): Finding {
  return {
    id,
    level: 'stop',
    title,
    detail,
    rule: null,
    short: { figure: '\u2013', word: 'STOP' },
    why: whyRule(title, detail, [], 'common practice'),
    action: null,
  };
}
