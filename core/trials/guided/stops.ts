import { shootingStops } from '../../findings/all.ts';
import { braceStanding } from '../../findings/braceHeight.ts';
import type { Finding } from '../../findings/finding.ts';
import { rangeText, whyRule } from '../../findings/parts.ts';
import { textQuantity } from '../../units/index.ts';
import type { TrialInput } from './types.ts';

/** As a tape is read again [m]. */
const AS_READ = 0.001;

/**
 * Everything for which this trial is not shot.
 *
 * @equation the stops of the set-up, then those of the plan: brace heights outside the maker's own range, or of a compound
 * @param input - the trial with its records [record]
 * @returns the findings that stop it, the set-up's first [list]
 * @validity any trial; steps within 1 mm of the maker's range pass, as a tape is no finer
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
  const { range } = braceStanding(bundle);
  if (range?.from !== 'maker') return null;
  const { low, high } = range;
  const past = trial.plan.steps.filter((step) => step < low - AS_READ - 1e-6 || step > high + AS_READ + 1e-6);
  const [first] = past;
  if (first === undefined) return null;
  return stop(
    'bracePlan',
    `The plan leaves the maker\u2019s range at ${textQuantity(first, 'length', units)}`,
    `The bow maker allows ${rangeText(low, high, 'length', units, false)}: take the heights outside it out of the plan.`,
  );
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
