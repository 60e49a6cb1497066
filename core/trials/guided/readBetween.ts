import { helmertRadii, inOneHole, type Shift } from '../../group/index.ts';
import { textQuantity } from '../../units/index.ts';
import type { Cause, NextStep } from '../reading.ts';
import { verdictWords } from '../sentences.ts';
import { shiftWhy } from '../shiftWhy.ts';
import { stepOf } from '../step.ts';
import { contextDifferences } from '../context.ts';
import { countText } from '../words.ts';
import { contextCauses } from './findingCauses.ts';
import { countFigures, placeFigure, sizeFigure } from './figures.ts';
import { outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import type { ShiftPoint } from './plot.ts';
import { sameThroughout } from './throughout.ts';
import { shiftOver } from './shiftOver.ts';
import { sizesCompared, type SizesCompared } from './sizes.ts';
import type { TrialInput, TrialReading } from './types.ts';
import type { Pair } from '../timesWider.ts';

/** More arrows of each than a session holds. */
const SESSION = 60;
const AGAIN = 'A and B in turn: A B, B A.';
const SHOOT = 'Twelve of A and twelve of B tell more than six.';

/**
 * What A against B says: whether the change moves the group, and whether it makes it tighter or looser.
 *
 * @equation shiftOver for the centres; sizesCompared of the two kinds over all distances for the spreads
 * @param input - the trial with its records [record]
 * @returns the reading; which of the two to keep, never stiff or weak [record]
 * @validity two or more arrows of each for the centres, three for the spreads; another form voids it
 * @source own derivation
 * @example readBetween(exampleTrial('a against b')).verdict // "too few"
 */
export function readBetween(input: TrialInput): TrialReading {
  const { units, trial } = input;
  const places = placesShot(input).flatMap(({ distance, first, second }) =>
    first === null || second === null || Math.min(first.shots.length, second.shots.length) < 2
      ? []
      : [{ distance, a: first, b: second }],
  );
  if (places.length === 0) return tooFew(input, null);
  const pairs = places.map(({ distance, a, b }): Pair => ({ distance, first: a.shots, second: b.shots }));
  const answer = shiftOver(pairs);
  const apart = places.flatMap(({ a, b }) => contextDifferences(a, b, units));
  const { voids, weakens } = sameThroughout(
    places.flatMap(({ a, b }) => [a, b]),
    true,
    units,
  );
  const kinds = new Set(places.flatMap(({ a, b }) => [a.fletching, b.fletching]));
  const voiding =
    kinds.size > 1
      ? 'Both fletched or both bare were expected, or it is the fletching that is on trial.'
      : (apart.find((found) => found.voids)?.sentence ?? voids?.sentence ?? null);
  const points = pairs.flatMap(pointOf);
  const sizes = sizesOf(pairs);
  const plot = { kind: 'shifts', points } as const;
  const figures = figuresOf(input, points, sizes, pairs);
  if (voiding !== null)
    return voided(
      input,
      'No comparison: not the same throughout',
      voiding,
      stepOf('again', 'Shoot A and B again, the same throughout', voiding, { then: AGAIN }),
      { plot, figures },
    );
  if (!answer.ok) return { ...tooFew(input, answer.problem.sentence), plot };
  const shift = answer.value;
  const spread =
    sizes?.best == null
      ? null
      : sizes.best[0] === true && sizes.best[1] === false
        ? 'looser'
        : sizes.best[0] === false
          ? 'tighter'
          : null;
  const kit = new Set(apart.filter(({ equipment }) => equipment).map(({ key }) => key)).size;
  const told = shift.verdict === 'real' || spread !== null;
  return outcome(input, {
    ...wordsOf(input, shift, spread, kit),
    verdict: told ? 'read' : shift.verdict === 'no sign' ? 'nothing shown' : 'too few',
    next: nextOf(shift, spread),
    plot,
    figures,
    causes: causesOf(
      trial.between,
      shift,
      spread,
      [...new Set([...weakens, ...apart.filter(({ equipment }) => !equipment).map(({ sentence }) => sentence)])],
      kit,
    ),
    more: moreOf(shift, told, sizes, pairs),
    ifNot:
      'If the same comparison on another day says otherwise, the difference was the day\u2019s: keep what is easier to look after.',
    waste: told ? 'A third comparison of the same two.' : 'Buying or altering anything for a difference that is not shown.',
    why: shiftWhy(shift, units),
  });
}

function sizesOf(pairs: readonly Pair[]): SizesCompared | null {
  const far = Math.max(...pairs.map(({ distance }) => distance));
  const lengths = (which: 'first' | 'second') =>
    pairs.flatMap((pair) =>
      inOneHole(pair[which]) ? [] : helmertRadii(pair[which]).map((length) => (length * far) / pair.distance),
    );
  const [a, b] = [lengths('first'), lengths('second')];
  if (Math.min(a.length, b.length) < 2) return null;
  return sizesCompared([
    { setting: 0, lengths: a, axes: 2, arrows: a.length + pairs.length },
    { setting: 1, lengths: b, axes: 2, arrows: b.length + pairs.length },
  ]);
}

function wordsOf(
  { units }: TrialInput,
  shift: Shift,
  spread: 'tighter' | 'looser' | null,
  kit: number,
): Pick<TrialReading, 'headline' | 'subline'> {
  const moved = verdictWords(shift, { moved: 'B', verb: 'lands', from: 'A' }, units);
  const extra = kit > 1 ? ' Several things of the equipment differ: which of them did it cannot be told.' : '';
  if (spread === null)
    return {
      headline: moved.headline.replace('that b lands', 'that B lands'),
      subline: `${moved.subline} No difference in size is shown.${extra}`,
    };
  const where = shift.verdict === 'real' ? ` ${moved.headline.charAt(0).toUpperCase()}${moved.headline.slice(1)}.` : '';
  return { headline: `B groups ${spread} than A, and that is real`, subline: `${moved.subline}${where}${extra}` };
}

function nextOf(shift: Shift, spread: 'tighter' | 'looser' | null): NextStep {
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
    { then: AGAIN, mark: 'own derivation' },
  );
}

function causesOf(
  between: string,
  shift: Shift,
  spread: string | null,
  weakens: readonly string[],
  kit: number,
): readonly Cause[] {
  if (shift.verdict !== 'real' && spread === null) return contextCauses(weakens);
  const what = between
    .trim()
    .replace(/[.\s]+$/, '')
    .replace(/\s+/g, ' ');
  const own: Cause = {
    cause: what === '' ? 'The change on trial' : `The change on trial: ${what}`,
    evidenceFor: ['It is what was changed between A and B.'],
    evidenceAgainst: [...(kit > 1 ? ['More than one thing of the equipment differs.'] : []), ...weakens],
  };
  return [own, ...contextCauses(weakens)];
}

function moreOf(shift: Shift, told: boolean, sizes: SizesCompared | null, pairs: readonly Pair[]): TrialReading['more'] {
  if (told) return null;
  if (shift.more !== null) return { arrows: 2 * shift.more, text: `About ${countText(shift.more)} more of each, in turn.` };
  const have = Math.min(
    pairs.reduce((n, { first }) => n + first.length, 0),
    pairs.reduce((n, { second }) => n + second.length, 0),
  );
  const missing = sizes === null || sizes.arrows === null ? 0 : sizes.arrows - have;
  return missing <= 0 || missing > SESSION
    ? null
    : { arrows: 2 * missing, text: `For the difference in size as it looks, about ${countText(missing)} more of each.` };
}

function pointOf({ distance, first, second }: Pair): ShiftPoint[] {
  const found = shiftOver([{ distance, first, second }]);
  if (!found.ok) return [];
  const { dx, dy, half, n } = found.value;
  return [{ distance, dx, dy, halfX: half.x, halfY: half.y, arrows: n }];
}

function figuresOf(
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
      return [placeFigure(`B right of A at ${at}`, dx, halfX, units), placeFigure(`B above A at ${at}`, dy, halfY, units)];
    }),
    ...(sizes?.spreads ?? []).map(({ value, low, high }, i) =>
      sizeFigure(`Spread of ${i === 0 ? 'A' : 'B'} at ${far}`, value, low, high, units),
    ),
    ...countFigures(input, `${a} of A and ${b} of B`),
  ];
}

function tooFew(input: TrialInput, reason: string | null): TrialReading {
  const wanted = reason ?? 'At least two arrows of A and two of B were expected, better twelve of each.';
  return outcome(input, {
    headline: 'No comparison yet',
    subline: wanted,
    verdict: 'too few',
    next: stepOf('shoot', 'Shoot A and B in turn', wanted, { then: SHOOT }),
    more: { arrows: 24, text: SHOOT },
    ifNot: 'If B feels wrong or strikes where it may not, stop and put A back.',
    waste: 'Judging the change by one end.',
  });
}
