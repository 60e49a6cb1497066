import type { Shift } from '../../group/index.ts';
import { textQuantity } from '../../units/index.ts';
import type { NextStep } from '../reading.ts';
import { verdictWords } from '../sentences.ts';
import { stepOf } from '../step.ts';
import type { Pair } from '../timesWider.ts';
import { countText } from '../words.ts';
import { countFigures, sizeFigure, wayFigure } from './figures.ts';
import type { ShiftPoint } from './plot.ts';
import { shiftOver } from './shiftOver.ts';
import type { SizesCompared } from './sizes.ts';
import type { TrialInput, TrialReading } from './types.ts';

/**
 * Where B's centre lies from A's at one distance.
 *
 * @equation the shift of the two with the half widths of its axes
 * @param pair - A and B [record]
 * @returns the point; none where it cannot be told [list]
 * @validity as shiftOfGroups
 * @source brunner-dette-munk-1997
 * @example betweenPoint({ distance: 18, first: [], second: [] }) // []
 */
export function betweenPoint({ distance, first, second }: Pair): ShiftPoint[] {
  const found = shiftOver([{ distance, first, second }]);
  if (!found.ok) return [];
  const { dx, dy, half, n } = found.value;
  return [{ distance, dx, dy, halfX: half.x, halfY: half.y, arrows: n }];
}

/**
 * The figures of A against B.
 *
 * @equation the shift at each distance, and both spreads, each with its 95 % interval
 * @param input - the trial with its records [record]
 * @param points - from betweenPoint [list]
 * @param sizes - from sizesCompared; null where the spreads cannot be told [record]
 * @param pairs - A and B, distance by distance, at least one [list]
 * @returns rows [list]
 * @validity as shiftOver and sizesCompared
 * @source own derivation
 * @example betweenFigures(exampleTrialInput, [], null, [{ distance: 18, first: [], second: [] }])[0].value // "0 of A and 0 of B"
 */
export function betweenFigures(
  input: TrialInput,
  points: readonly ShiftPoint[],
  sizes: SizesCompared | null,
  pairs: readonly Pair[],
): TrialReading['figures'] {
  const { units } = input;
  const far = textQuantity(Math.max(...pairs.map(({ distance }) => distance)), 'distance', units);
  const [a, b] = [pairs.reduce((n, { first }) => n + first.length, 0), pairs.reduce((n, { second }) => n + second.length, 0)];
  return [
    ...points.flatMap(({ distance, dx, dy, halfX, halfY }) => {
      const at = textQuantity(distance, 'distance', units);
      return [
        wayFigure([`B right of A at ${at}`, `B left of A at ${at}`], dx, halfX, units),
        wayFigure([`B above A at ${at}`, `B below A at ${at}`], dy, halfY, units),
      ];
    }),
    ...(sizes?.spreads ?? []).map(({ value, low, high }, i) =>
      sizeFigure(`Spread of ${i === 0 ? 'A' : 'B'} at ${far}`, value, low, high, units),
    ),
    ...countFigures(input, `${a} of A and ${b} of B`),
  ];
}

/**
 * Headline and line under it for A against B.
 *
 * @equation the difference in size where it is shown, else the shift
 * @param input - the trial with its records [record]
 * @param shift - of B from A [record]
 * @param spread - what B does; null when no difference is shown [choice]
 * @param kit - how many things of the equipment differ [-]
 * @returns headline and line under it [record]
 * @validity as shiftOver
 * @source own derivation
 * @example betweenWords(exampleTrialInput, shiftOfGroups(exampleFletched.shots, exampleBare.shots, {}).value, 'tighter', 1).headline // "B groups tighter than A, and that is real"
 */
export function betweenWords(
  { units }: TrialInput,
  shift: Shift,
  spread: 'tighter' | 'looser' | null,
  kit: number,
): Pick<TrialReading, 'headline' | 'subline'> {
  const moved = verdictWords(shift, { moved: 'B', verb: 'lands', from: 'A', sure: '39 times in 40' }, units);
  const extra = kit > 1 ? ' Several things of the equipment differ: which of them did it cannot be told.' : '';
  if (spread === null)
    return {
      headline: moved.headline.replace('that b lands', 'that B lands'),
      subline: `${moved.subline} No difference in size is shown.${extra}`,
    };
  const where = shift.verdict === 'real' ? ` ${moved.headline.charAt(0).toUpperCase()}${moved.headline.slice(1)}.` : '';
  return { headline: `B groups ${spread} than A, and that is real`, subline: `${moved.subline}${where}${extra}` };
}

/**
 * Which of the two to keep.
 *
 * @equation tighter: B; looser: A; moved only: either, for the sight to mend; nothing shown: A, or what is easier; else shoot more
 * @param shift - of B from A [record]
 * @param spread - what B does; null when no difference is shown [choice]
 * @param then - how more are shot [text]
 * @returns the step [record]
 * @validity as shiftOver
 * @source own derivation
 * @example betweenStep(shiftOfGroups(exampleFletched.shots, exampleBare.shots, {}).value, null, '').kind // "leave"
 */
export function betweenStep(shift: Shift, spread: 'tighter' | 'looser' | null, then: string): NextStep {
  if (spread === 'tighter')
    return stepOf('change', 'Keep B', 'It groups tighter than A.', {
      then: 'Set the sight for it, and take a snapshot.',
      mark: 'own derivation',
    });
  if (spread === 'looser')
    return stepOf('change', 'Put A back', 'B groups looser than A.', { then: 'Take a snapshot of A.', mark: 'own derivation' });
  if (shift.verdict === 'real')
    return stepOf(
      'leave',
      'Neither is better: B only strikes elsewhere',
      'A shift of the group is for the sight to mend; no difference in size is shown.',
      {
        then: 'Keep either, and set the sight for it.',
        mark: 'own derivation',
      },
    );
  if (shift.verdict === 'no sign')
    return stepOf('leave', 'Put A back, or keep what is easier', 'No difference that matters is shown.', {
      then: 'Write down that it was tried.',
      mark: 'own derivation',
    });
  return stepOf(
    'shoot',
    `Shoot about ${countText(shift.more ?? Math.max(...shift.n))} more of each`,
    'Nothing is chosen before it.',
    { then, mark: 'own derivation' },
  );
}
