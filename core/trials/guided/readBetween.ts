import { helmertRadii, inOneHole, type Shift } from '../../group/index.ts';
import type { Cause } from '../reading.ts';
import { stepOf } from '../step.ts';
import { contextDifferences } from '../context.ts';
import { countText } from '../words.ts';
import { contextCauses } from './findingCauses.ts';
import { outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import { sameThroughout } from './throughout.ts';
import { shiftOver } from './shiftOver.ts';
import { sizesCompared, type SizesCompared } from './sizes.ts';
import type { TrialInput, TrialReading } from './types.ts';
import type { Pair } from '../timesWider.ts';
import { betweenFigures, betweenPoint, betweenStep, betweenWords } from './betweenShown.ts';
import { betweenWhy } from './betweenWhy.ts';
import { EACH_OF_TWO } from './eachOfTwo.ts';

/** More arrows of each than a session holds. */
const SESSION = 60;
const AGAIN = 'A and B in turn: A B, B A.';
const SHOOT = 'Twelve of A and twelve of B tell more than six.';

/**
 * What A against B says: whether the change moves the group, and whether it makes it tighter or looser.
 *
 * @equation shiftOver for the centres; sizesCompared of the two kinds over all distances for the spreads; each at 2.5 %, so that both together keep 5 %
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
  const answer = shiftOver(pairs, EACH_OF_TWO);
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
  const points = pairs.flatMap(betweenPoint);
  const sizes = sizesOf(pairs);
  const plot = { kind: 'shifts', points } as const;
  const figures = betweenFigures(input, points, sizes, pairs);
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
    ...betweenWords(input, shift, spread, kit),
    verdict: told ? 'read' : shift.verdict === 'no sign' ? 'nothing shown' : 'too few',
    next: betweenStep(shift, spread, AGAIN),
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
    why: betweenWhy(shift, sizes, units),
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
  return sizesCompared(
    [
      { setting: 0, lengths: a, axes: 2, arrows: a.length + pairs.length },
      { setting: 1, lengths: b, axes: 2, arrows: b.length + pairs.length },
    ],
    EACH_OF_TWO,
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
