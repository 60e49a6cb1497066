import { squareText } from '../../findings/nockingPoint.ts';
import { sources } from '../../sources.ts';
import { stepOf } from '../step.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import { gated, outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import { readSizes } from './readSizes.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialInput, TrialReading } from './types.ts';

const AGAIN = 'Then shoot the row there once more.';

/**
 * What rows along a face's top edge say: at which nocking points they lie flattest, or that none is told from another.
 *
 * @equation readSizes of the heights alone
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity two or more nocking points with three or more arrows; six to eight in a row is the trade's habit, and tells only gross differences
 * @source common practice; levene-1960
 * @example readRow(exampleTrial('nocking point')).verdict // "too few"
 */
export function readRow(input: TrialInput): TrialReading {
  const { bundle, units } = input;
  const told = readSizes(input, true);
  if (told === null) {
    const wanted = 'At least three arrows at each of two nocking points were expected, better twelve.';
    return outcome(input, {
      headline: 'No reading yet: too few places or arrows',
      subline: wanted,
      verdict: 'too few',
      ...gated(
        input,
        stepOf('shoot', 'Shoot the next row of the plan', wanted, { then: 'Along the top edge, aimed at the edge.' }),
        [],
        AGAIN,
      ),
      more: { arrows: 24, text: 'Twelve at each of at least two nocking points.' },
      ifNot: 'If no row lies flat, look at nock fit, brace height and tiller before the nocking point.',
      waste: 'Moving it again before two rows have been shot.',
    });
  }
  const shown = {
    plot: { kind: 'sizes', along: 'nocking point', sizes: told.points, speeds: [] } as const,
    figures: told.figures,
    why: {
      title: 'Which row lies flattest?',
      text: 'The heights of each row about their own mean, compared over all nocking points; a flattest row within the noise is not called the flattest.',
      equation: null,
      symbols: [],
      source: sources['levene-1960'],
    },
  };
  const { voids, weakens } = sameThroughout(
    placesShot(input).flatMap(({ first }) => (first === null ? [] : [first])),
    true,
    units,
  );
  if (voids !== null)
    return voided(
      input,
      'No reading: two forms',
      voids.sentence,
      stepOf('again', 'Shoot the rows again in one form', voids.sentence, { then: AGAIN }),
      shown,
    );
  const shownBest = told.compared.best !== null;
  const now = bundle.setup.settings.nockingPoint;
  const nearest = [...told.best].sort((a, b) => Math.abs(a - (now ?? a)) - Math.abs(b - (now ?? b)))[0] ?? 0;
  const stands = now !== null && Math.abs(nearest - now) < 0.0004;
  const next =
    !shownBest || stands
      ? stepOf(
          'leave',
          'Leave the nocking point where it is',
          shownBest ? 'It is among the flattest.' : 'No row is told from the others.',
          { then: 'Then look at the side.' },
        )
      : stepOf(
          'change',
          `Set the nocking point to ${squareText(nearest, units)}`,
          'It is the nearest of those whose row lies flattest.',
          {
            then: AGAIN,
            patch: { nockingPoint: nearest },
            mark: 'own derivation',
          },
        );
  return outcome(input, {
    headline: told.headline,
    subline: told.subline,
    verdict: shownBest ? 'read' : 'nothing shown',
    ...gated(input, next, [], AGAIN),
    causes: [...(shownBest ? findingCauses(input, 'height') : []), ...contextCauses(weakens)],
    more: told.more,
    ifNot: 'If the row is no flatter next time, put it back: the difference was the archer\u2019s.',
    waste: shownBest
      ? 'Finer steps about a place that already lies among the flattest.'
      : 'Choosing a place by the flattest of these rows: an unchanged bow shows as much.',
    ...shown,
  });
}
