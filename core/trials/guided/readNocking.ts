import { squareText } from '../../findings/nockingPoint.ts';
import { pairProblem } from '../bareProblem.ts';
import { contextDifferences } from '../context.ts';
import { clearanceStep } from '../remedies.ts';
import { stepOf } from '../step.ts';
import { timesWider, WIDER } from '../timesWider.ts';
import { erraticWords } from '../sentences.ts';
import { acrossText, chanceSentence } from '../words.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import { heightsAlong, type HeightsAlong } from './heightsAlong.ts';
import { notForFingers } from './notForFingers.ts';
import { gated, outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import { readRow } from './readRow.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialInput, TrialReading } from './types.ts';
import { levelEnds, levelFigures, levelPlot, whyLevel } from './levelShown.ts';
import { levelCauses, levelStep } from './levelStep.ts';

const AGAIN = 'Then shoot bare and fletched there once more, in turn.';

/**
 * What a nocking-point trial says: where bare shafts strike level with fletched ones, or where a row lies flattest.
 *
 * @equation with bare shafts: heightsAlong, a higher nocking point brings them lower; the level place with Fieller's interval. Without: readRow
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity finger release; two or more nocking points with two or more arrows of each kind; nothing is read beyond one step past the places tried
 * @source common practice; fieller-1954
 * @example readNocking(exampleTrial('nocking point')).verdict // "too few"
 */
export function readNocking(input: TrialInput): TrialReading {
  const { trial, units } = input;
  const shot = placesShot(input);
  if (trial.plan.others === 0 && shot.every(({ second }) => second === null)) return readRow(input);
  const places = shot.flatMap(({ distance, step, first, second }) =>
    step === null || first === null || second === null || Math.min(first.shots.length, second.shots.length) < 2
      ? []
      : [{ setting: step, distance, fletched: first, bare: second }],
  );
  const along = heightsAlong(places);
  const tried = places.map(({ setting }) => setting);
  const plot = levelPlot(along, tried);
  if (new Set(tried).size < 2) return { ...tooFew(input), plot };
  const shown = { plot, figures: levelFigures(input, along), why: whyLevel };
  const inPairs = places.map(({ fletched, bare }) => contextDifferences(fletched, bare, units));
  const throughout = sameThroughout(
    places.flatMap(({ fletched, bare }) => [fletched, bare]),
    true,
    units,
  );
  const apart = places.some(({ distance }) => Math.abs(distance - (places[0]?.distance ?? distance)) > 0.01 * distance);
  const problem =
    places.map(({ fletched, bare }, i) => pairProblem(fletched, bare, inPairs[i] ?? [])).find((found) => found !== null) ??
    throughout.voids ??
    (apart ? { code: 'distance', sentence: 'One distance for all nocking points was expected.' } : null);
  if (problem !== null)
    return voided(
      input,
      'No reading: not the same throughout',
      problem.sentence,
      stepOf('again', 'Shoot it again, the same throughout', problem.sentence, { then: AGAIN }),
      shown,
    );
  const fingers = notForFingers(input, shown);
  if (fingers !== null) return fingers;
  const wider = timesWider(places.map(({ fletched, bare }) => ({ distance: 1, first: fletched.shots, second: bare.shots })));
  if (wider !== null && wider.least > WIDER) {
    const { headline, subline } = erraticWords(wider.times, wider.least);
    return voided(input, headline, subline, clearanceStep('stop', AGAIN), { ...shown, causes: findingCauses(input, 'scatter') });
  }
  return read(input, along, tried, [...throughout.weakens, ...inPairs.flat().map(({ sentence }) => sentence)], shown);
}

function read(
  input: TrialInput,
  along: HeightsAlong,
  tried: readonly number[],
  weakens: readonly string[],
  shown: Partial<TrialReading>,
): TrialReading {
  const { units } = input;
  const { line, points } = along;
  const level = line !== null && line.slope.value < 0 ? line.level : null;
  const wrongWay = line !== null && line.level !== null && line.slope.value > 0;
  if (wrongWay)
    return voided(
      input,
      'No reading: the bare shafts move the wrong way',
      `A higher nocking point should bring them lower, and it brings them higher. ${chanceSentence(line.p)}`,
      clearanceStep('stop', AGAIN),
      {
        ...shown,
        causes: [
          {
            cause: 'The shaft bounces off the rest',
            evidenceFor: ['The bare shafts move against the nocking point.'],
            evidenceAgainst: [],
          },
          ...contextCauses([...new Set(weakens)]),
        ],
      },
    );
  if (level === null) {
    const arrows = along.arrows[0] + along.arrows[1];
    const [least, most] = [Math.min(...points.map(({ value }) => value)), Math.max(...points.map(({ value }) => value))];
    return outcome(input, {
      headline: 'It cannot be told which nocking point brings them level',
      subline: `Over the places tried the bare shafts move ${acrossText(most - least, units)} in height, which may be chance.`,
      verdict: 'too few',
      ...gated(
        input,
        stepOf(
          'shoot',
          'Shoot the same places again',
          'What moving the nocking point does is not shown yet. Nothing is turned before it.',
          { then: AGAIN, mark: 'own derivation' },
        ),
        [],
        AGAIN,
      ),
      causes: contextCauses([...new Set(weakens)]),
      more: { arrows, text: `About ${arrows} more, over the same places.` },
      ifNot: 'If as many again do not tell, the nocking point is not what moves them: test the clearance.',
      waste: 'Finer steps than a thirty-second of an inch while the coarse ones are not told apart.',
      ...shown,
    });
  }
  const first = levelStep(input, level, tried, AGAIN);
  return outcome(input, {
    headline: `Bare and fletched strike level at ${squareText(level.value, units)}`,
    subline: `Between ${levelEnds(level, units)}, 19 times in 20.`,
    verdict: 'read',
    ...gated(input, first, [clearanceStep('change', AGAIN)], AGAIN),
    causes: levelCauses(input, level, weakens),
    ifNot:
      'If bare shafts do not strike level there, put it back and test the clearance: a shaft that bounces off the rest reads the same.',
    waste: 'The side, before the height is settled.',
    ...shown,
  });
}

function tooFew(input: TrialInput): TrialReading {
  const { trial } = input;
  const wanted =
    'At least two fletched and two bare shafts at each of two nocking points were expected, better nine and six at each of three.';
  const each = trial.plan.ends * (trial.plan.arrows + trial.plan.others);
  return outcome(input, {
    headline: 'No reading yet: too few places or arrows',
    subline: wanted,
    verdict: 'too few',
    ...gated(
      input,
      stepOf('shoot', 'Shoot the next place of the plan', wanted, { then: 'Bare and fletched in turn, at one mark.' }),
      [],
      AGAIN,
    ),
    more: { arrows: 2 * each, text: `${each} at each of at least two nocking points.` },
    ifNot: 'If bare shafts will not stay on the butt, stop and test the clearance.',
    waste: 'Moving it again before two places have been shot.',
  });
}
