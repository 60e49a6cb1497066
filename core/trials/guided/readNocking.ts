import { squareText } from '../../findings/nockingPoint.ts';
import { limits } from '../../model/limits.ts';
import { sources } from '../../sources.ts';
import { showQuantity, textQuantity } from '../../units/index.ts';
import { pairProblem } from '../bareProblem.ts';
import { contextDifferences } from '../context.ts';
import type { Cause, NextStep } from '../reading.ts';
import { clearanceStep } from '../remedies.ts';
import { stepOf } from '../step.ts';
import { timesWider, WIDER } from '../timesWider.ts';
import { erraticWords } from '../sentences.ts';
import { acrossText, chanceSentence } from '../words.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import { countFigures, placeFigure } from './figures.ts';
import { heightsAlong, type HeightsAlong } from './heightsAlong.ts';
import type { LevelPlace } from './levelPlace.ts';
import { notForFingers } from './notForFingers.ts';
import { gated, outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import { readRow } from './readRow.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialInput, TrialReading } from './types.ts';

/** The trade's step, and how finely a place is set [m]. */
const STEP = 0.0016;
const FINE = 0.0004;
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
  const plot = plotOf(along, tried);
  if (new Set(tried).size < 2) return { ...tooFew(input), plot };
  const shown = { plot, figures: figuresOf(input, along), why: whyLevel() };
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
  const first = stepTo(input, level, tried);
  return outcome(input, {
    headline: `Bare and fletched strike level at ${squareText(level.value, units)}`,
    subline: `Between ${squareText(level.low, units)} and ${squareText(level.high, units)}, 19 times in 20.`,
    verdict: 'read',
    ...gated(input, first, [clearanceStep('change', AGAIN)], AGAIN),
    causes: causesOf(input, level, weakens),
    ifNot:
      'If bare shafts do not strike level there, put it back and test the clearance: a shaft that bounces off the rest reads the same.',
    waste: 'The side, before the height is settled.',
    ...shown,
  });
}

function stepTo({ bundle, units }: TrialInput, level: NonNullable<LevelPlace['level']>, tried: readonly number[]): NextStep {
  const now = bundle.setup.settings.nockingPoint;
  const [low, high] = [Math.min(...tried), Math.max(...tried)];
  if (level.value < low - STEP || level.value > high + STEP) {
    const on = level.value < low ? low - STEP : high + STEP;
    return stepOf(
      'shoot',
      `Try ${squareText(on, units)} as well`,
      'The level place lies beyond the places tried, and nothing is read so far out.',
      {
        then: 'As many of each there as at the others.',
        mark: 'own derivation',
      },
    );
  }
  if (now !== null && now >= level.low && now <= level.high)
    return stepOf(
      'leave',
      `Leave it: ${squareText(now, units)} is level, so far as these tell`,
      'It stands inside the interval.',
      {
        then: 'Take a snapshot, then look at the side.',
      },
    );
  const { min, max } = limits.nockingPoint;
  const to = Math.min(max, Math.max(min, (Math.round(level.value / FINE) * (FINE * 1e6)) / 1e6));
  const from =
    now === null ? 'It is not on record: mark where it is before you move it.' : `It stands at ${squareText(now, units)}.`;
  return stepOf(
    'change',
    `Set the nocking point to ${squareText(to, units)}`,
    `${from} The places tried lie about it, so it is read between them.`,
    {
      then: AGAIN,
      patch: { nockingPoint: to },
      caution: 'Look at it after a dozen arrows: one that slips lets the arrow off the string.',
      mark: 'own derivation',
      rule: 'Bare shafts strike lower with a higher nocking point; the place at which they strike level is read off a straight line through the places tried, and never farther than one step beyond them.',
    },
  );
}

function causesOf(input: TrialInput, level: NonNullable<LevelPlace['level']>, weakens: readonly string[]): readonly Cause[] {
  const { bundle, units } = input;
  const now = bundle.setup.settings.nockingPoint;
  const stands = now === null ? [] : [`It is on record as ${squareText(now, units)}.`];
  const off = now === null || now < level.low || now > level.high;
  const away: Cause = {
    cause: now !== null && now < level.low ? 'The nocking point is low' : 'The nocking point is high',
    evidenceFor: off ? stands : [],
    evidenceAgainst: [],
  };
  return [...(off && now !== null ? [away] : []), ...findingCauses(input, 'height'), ...contextCauses([...new Set(weakens)])];
}

function figuresOf(input: TrialInput, { points, line, arrows }: HeightsAlong): TrialReading['figures'] {
  const { units } = input;
  return [
    ...points.map(({ setting, value, high }) =>
      placeFigure(`Bare above fletched at ${squareText(setting, units)}`, value, high - value, units),
    ),
    ...(line === null
      ? []
      : [
          placeFigure(
            `For each ${textQuantity(STEP, 'setting', units)} higher`,
            line.slope.value * STEP,
            ((line.slope.high - line.slope.low) / 2) * STEP,
            units,
          ),
        ]),
    ...(line?.level == null || line.slope.value > 0
      ? []
      : [
          {
            name: 'Level at',
            value: squareText(line.level.value, units),
            interval: `${showQuantity(line.level.low, 'setting', units).figure} to ${textQuantity(line.level.high, 'setting', units)} above square`,
          },
        ]),
    ...countFigures(input, `${arrows[0]} fletched and ${arrows[1]} bare`),
  ];
}

function plotOf({ points, line }: HeightsAlong, tried: readonly number[]): TrialReading['plot'] {
  const ends = [Math.min(...tried), Math.max(...tried)];
  return {
    kind: 'heights',
    points,
    line: line === null ? [] : ends.map((setting) => ({ setting, height: line.middle + line.slope.value * (setting - line.at) })),
    level: line === null || line.slope.value > 0 ? null : line.level,
  };
}

const whyLevel = (): TrialReading['why'] => ({
  title: 'Where do they strike level?',
  text: 'How far the bare shafts strike above the fletched at each nocking point, a straight line through these by their doubt, and the place where it crosses nought. Its interval has ends only when the line is told from level; before that nothing is read.',
  equation: '(a + b u)\u00b2 = t\u00b2 (V\u2090 + u\u00b2 V\u1d66)',
  symbols: [],
  source: sources['fieller-1954'],
});

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
