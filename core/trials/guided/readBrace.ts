import { limits } from '../../model/limits.ts';
import { sources } from '../../sources.ts';
import { inch } from '../../units/exact.ts';
import { showQuantity, textQuantity, unitOf } from '../../units/index.ts';
import type { NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';
import { contextCauses, findingCauses } from './findingCauses.ts';
import { outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import { braceStepSize } from './plan.ts';
import { readSizes, type SizesTold } from './readSizes.ts';
import { speedAlong, type SpeedLine } from './speedLine.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialFigure, TrialInput, TrialReading } from './types.ts';

/** As a tape is read again [m]. */
const AS_READ = 0.001;

/**
 * What a brace-height sweep says: group size and speed against brace height, and which heights are among the best.
 *
 * @equation readSizes; speed by a straight line; the nearest of the best heights to where it stands, or nothing to change
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity two or more heights of three or more arrows, all inside the bow's range; a least group within the noise is no least group
 * @source common practice; levene-1960
 * @example readBrace(exampleTrial('brace height')).verdict // "too few"
 */
export function readBrace(input: TrialInput): TrialReading {
  const { units } = input;
  const places = placesShot(input);
  const speed = speedAlong(places);
  const told = readSizes(input, false);
  const plot = { kind: 'sizes', along: 'brace height', sizes: told?.points ?? [], speeds: speed.points } as const;
  if (told === null) return { ...tooFew(input), plot, figures: speedFigures(speed, input) };
  const shown = { plot, figures: [...told.figures, ...speedFigures(speed, input)], why: whySizes() };
  const { voids, weakens } = sameThroughout(
    places.flatMap(({ first }) => (first === null ? [] : [first])),
    true,
    units,
  );
  if (voids !== null) {
    const again = stepOf('again', 'Shoot the sweep again in one form', voids.sentence, {
      then: 'From the lowest height up, then down.',
    });
    return voided(input, 'No reading: two forms', voids.sentence, again, shown);
  }
  const shownBest = told.compared.best !== null;
  return outcome(input, {
    headline: told.headline,
    subline: [told.subline, speedWords(speed, input)].filter((sentence) => sentence !== '').join(' '),
    verdict: shownBest ? 'read' : 'nothing shown',
    next: nextOf(input, told),
    causes: [...(shownBest ? findingCauses(input, 'scatter') : []), ...contextCauses(weakens)],
    more: told.more,
    ifNot: 'If it shoots no better there next time, go back to where it was: the range has room for both.',
    waste: shownBest
      ? 'More arrows at the heights that are told from the tightest.'
      : 'Choosing a height by the smallest of these groups: an unchanged bow shows as much.',
    ...shown,
  });
}

function nextOf({ bundle, units }: TrialInput, { best, compared }: SizesTold): NextStep {
  const now = bundle.setup.settings.braceHeight;
  const text = (si: number) => textQuantity(si, 'length', units);
  const about = textQuantity(units.length === 'in' ? inch / 16 : 0.0015, 'length', units);
  if (compared.best === null)
    return stepOf(
      'leave',
      'Leave the brace height: group size does not choose',
      'None of the heights is told from the others. Take the quietest, with the least shock in the hand, inside its range.',
      { then: 'Note why, and bring the nocking point back to where it was.' },
    );
  const among = now === null ? undefined : best.find((height) => Math.abs(height - now) <= AS_READ);
  if (now !== null && among !== undefined)
    return stepOf('leave', `Leave it at ${text(now)}`, 'It stands at one of the heights that group best.', {
      then: `If you like, try ${about} either way, as many arrows at each.`,
    });
  const nearest = [...best].sort((a, b) => Math.abs(a - (now ?? a)) - Math.abs(b - (now ?? b)))[0] ?? limits.braceHeight.min;
  return stepOf(
    'change',
    `Set the brace height to ${text(nearest)}`,
    `${best.length === 1 ? 'It is the one height told from every other.' : 'It is the nearest of those that group best.'}${now === null ? '' : ` It stands at ${text(now)}.`}`,
    {
      then: `Bring the nocking point back to where it was, since it moves with the brace height. Then try ${about} either way.`,
      patch: { braceHeight: nearest },
      caution:
        'Look at both loops before the first draw. Stay inside the maker\u2019s range, and keep the string between 20 and 60 twists.',
      mark: 'own derivation',
    },
  );
}

/** Told for the step of a tape: 3 mm or 1/8 in. */
const perStep = ({ units }: TrialInput): number => braceStepSize(units);

function speedFigures({ slope }: SpeedLine, input: TrialInput): readonly TrialFigure[] {
  if (slope === null) return [];
  const { units } = input;
  const by = perStep(input);
  const figure = (si: number, signed: boolean) =>
    `${showQuantity(si, 'speed', units, { digits: 2, signed }).figure} ${unitOf('speed', units)}`;
  return [
    {
      name: `Speed for each ${textQuantity(by, 'length', units)} more`,
      value: figure(slope.value * by, true),
      interval: `\u00b1 ${figure(slope.half * by, false)}`,
    },
  ];
}

function speedWords({ slope }: SpeedLine, input: TrialInput): string {
  if (slope === null) return '';
  const { units } = input;
  const each = textQuantity(perStep(input), 'length', units);
  const size = `${showQuantity(Math.abs(slope.value) * perStep(input), 'speed', units, { digits: 2 }).figure} ${unitOf('speed', units)}`;
  if (slope.p >= 0.05) return 'No change of speed is shown.';
  return slope.value < 0
    ? `Speed falls ${size} for each ${each} more, as it should.`
    : `Speed rises ${size} for each ${each} more, which it should not: look at the readings again.`;
}

const whySizes = (): TrialReading['why'] => ({
  title: 'Which brace height groups best?',
  text: 'How far each shot falls from the mean of those before it, scaled so that all such lengths are alike under one spread; their means are compared over all heights. Only when they differ by more than chance does once in 20 is any height told from another, each against the tightest with a sterner line, since the tightest was picked after the shots were seen. A smallest group within the noise is not called the smallest.',
  equation: 'F = [\u03a3 n (r\u0304 \u2212 r)\u00b2 / (k \u2212 1)] / [\u03a3 (r \u2212 r\u0304)\u00b2 / (N \u2212 k)]',
  symbols: [],
  source: sources['levene-1960'],
});

function tooFew(input: TrialInput): TrialReading {
  const { trial } = input;
  const wanted = 'At least three arrows at each of two brace heights were expected, better twelve at each of five.';
  const arrows = trial.plan.ends * trial.plan.arrows;
  return outcome(input, {
    headline: 'No reading yet: too few heights or arrows',
    subline: wanted,
    verdict: 'too few',
    next: stepOf('shoot', 'Shoot the next height of the plan', wanted, {
      then: 'From the lowest up, then back down for the further ends.',
    }),
    more: { arrows: 2 * arrows, text: `${arrows} at each of at least two heights.` },
    ifNot: 'If a height is noisy or slaps the arm, leave it out of the plan.',
    waste: 'Choosing a height before two have been shot.',
  });
}
