import { walkBack, weightedFit, type WalkBack, type WalkBackDistance } from '../../group/index.ts';
import { textQuantity } from '../../units/index.ts';
import { changedSince } from '../changedSince.ts';
import { outwardOf } from '../outward.ts';
import type { Cause, NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';
import { acrossText, chanceSentence, sideOf } from '../words.ts';
import { contextCauses } from './findingCauses.ts';
import { countFigures, placeFigure } from './figures.ts';
import { notForFingers } from './notForFingers.ts';
import { gated, outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import type { TrialPlot } from './plot.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialFigure, TrialInput, TrialReading } from './types.ts';
import { walkBackMore } from './walkBackMore.ts';
import { walkBackSteps } from './walkBackSteps.ts';
import { walkBackWhy } from './walkBackWhy.ts';

const AGAIN = 'Then shoot the same walk-back again, with the sight left alone.';

/**
 * What a walk-back says: upright, slanting or bent, with what both schools make of it.
 *
 * @equation walkBack of core/group over the offsets from the plumb line; outward and inward by the archer's hand
 * @param input - the trial with its records [record]
 * @returns the reading [record]
 * @validity one mark, one sight setting, three or more distances; which cause a line has is disputed and shown so
 * @source draper-smith-1998; from memory
 * @example readWalkBack(exampleTrial('walk-back')).verdict // "too few"
 */
export function readWalkBack(input: TrialInput): TrialReading {
  const { bundle, units } = input;
  const groups = placesShot(input).flatMap(({ first }) => (first === null || first.shots.length === 0 ? [] : [first]));
  const readings = groups.map(({ context, shots }): WalkBackDistance => ({
    distance: context.distance,
    offsets: shots.map(({ x }) => x),
  }));
  const answer = walkBack(readings);
  const plot = plotOf(readings, answer.ok ? answer.value : null);
  if (!answer.ok) {
    const few = answer.problem.code.startsWith('too-few');
    const shoot = stepOf('shoot', 'Shoot from more distances', answer.problem.sentence, {
      then: 'Nearest first, the sight left alone.',
    });
    return outcome(input, {
      headline: few ? 'No reading yet: too few distances or arrows' : 'No reading',
      subline: answer.problem.sentence,
      verdict: few ? 'too few' : 'void',
      ...gated(input, shoot, [], AGAIN),
      plot,
      more: few ? walkBackMore(readings) : null,
      ifNot: 'If arrows miss the butt at the far distances, leave those out and read the rest.',
      waste: 'Moving the rest or the button before the line is shot.',
    });
  }
  const line = answer.value;
  const shown = { plot, figures: figuresOf(input, readings, line), why: walkBackWhy(line, units) };
  const { voids, weakens } = sameThroughout(groups, false, units);
  if (voids !== null) {
    const again = stepOf(
      'again',
      voids.code === 'form' ? 'Shoot it again in one form' : 'Shoot it again with one set-up',
      voids.sentence,
      { then: AGAIN },
    );
    return voided(input, 'No reading: not the same throughout', voids.sentence, again, shown);
  }
  const first = groups[0];
  const changed = first === undefined ? null : changedSince({ bundle, fletched: first, bare: first, units });
  return notForFingers(input, shown) ?? read(input, line, changed, weakens, shown);
}

function read(
  input: TrialInput,
  line: WalkBack,
  changed: string | null,
  weakens: readonly string[],
  shown: Partial<TrialReading>,
): TrialReading {
  const { bundle, units, trial } = input;
  const { hand } = bundle.archer;
  const runs = line.line === 'bends' ? line.bend.curvature : line.angle;
  // A parabola that opens to the right bulges to the left of its chord.
  const outward = line.line === 'bends' ? outwardOf(runs, hand) < 0 : outwardOf(runs, hand) > 0;
  const told = line.line === 'bends' || line.line === 'slants';
  const steps = told
    ? walkBackSteps(bundle, line.line === 'bends' ? 'bends' : 'slants', outward ? 'outward' : 'inward', units, AGAIN)
    : null;
  const schools = steps === null ? [] : [steps.schoolA, steps.schoolB].filter((step) => step !== null);
  const check = steps?.check ?? null;
  const checked = check !== null && trial.changes.some(({ title }) => title === check.title);
  const more = line.line === 'cannot tell' ? walkBackMore(null, line.arrows) : null;
  const again = stepOf(
    'shoot',
    'Shoot the same distances again',
    told
      ? 'This bow has nothing to turn for it: look at the sight, the cant and the shaft.'
      : 'Neither upright nor slanting is shown yet. Nothing is turned before it.',
    { then: AGAIN, mark: 'own derivation' },
  );
  const first: NextStep =
    changed !== null
      ? stepOf('again', 'Shoot the walk-back again', changed, { then: AGAIN })
      : steps === null
        ? line.line === 'straight up'
          ? stepOf(
              'leave',
              'Leave it: the line stands upright',
              'Within one arrow\u2019s scatter of upright at every distance.',
              { then: 'Take a snapshot.' },
            )
          : again
        : ((checked ? schools[0] : (check ?? schools[0])) ?? check ?? again);
  const rest = [...schools, ...(check !== null && checked ? [check] : [])].filter((step) => step !== first);
  return outcome(input, {
    ...wordsOf(line, outward, input),
    verdict: told ? 'read' : line.line === 'straight up' ? 'nothing shown' : 'too few',
    ...gated(input, first, rest, AGAIN),
    causes: [...causesOf(line, outward), ...contextCauses(weakens)],
    more,
    ifNot: told
      ? line.line === 'bends'
        ? 'If the line bends as much next time, put it back, and try a quarter turn of the button instead.'
        : 'If the line does not stand more upright, put it back and try the other school\u2019s change: that settles which of them this bow follows.'
      : 'If it slants next time, shoot it a third time before anything is turned.',
    waste: told
      ? 'Turning button and rest at once: then neither school has been tried.'
      : 'Moving rest or button for a line that is not shown to slant.',
    ...shown,
  });
}

function wordsOf(line: WalkBack, outward: boolean, { units, bundle }: TrialInput): Pick<TrialReading, 'headline' | 'subline'> {
  const far = Math.max(...line.drawn.map(({ distance }) => distance));
  const at = textQuantity(far, 'distance', units);
  const across = acrossText(Math.tan(line.angle) * far, units);
  const side = sideOf(line.angle);
  const hand = bundle.archer.hand === 'right' ? 'right-handed' : 'left-handed';
  const misses =
    line.misses.parabola !== null && line.misses.parabola.p < 0.05
      ? ' The distances scatter more than the arrows of each: the intervals are too narrow.'
      : '';
  switch (line.line) {
    case 'bends': {
      const bulge = line.bend.curvature > 0 ? 'left' : 'right';
      return {
        headline: `The line bends: it bulges ${acrossText(line.bend.bow, units)} to the ${bulge}`,
        subline: `${chanceSentence(line.bend.p)} That is ${outward ? 'outward' : 'inward'} for a ${hand} archer.${misses}`,
      };
    }
    case 'slants':
      return {
        headline: `The line slants to the ${side}: ${across} at ${at}`,
        subline: `${chanceSentence(line.angleP)} That is ${outward ? 'outward' : 'inward'} for a ${hand} archer. No bend is shown.${misses}`,
      };
    case 'straight up':
      return {
        headline: 'The line stands upright',
        subline: `At ${at} it is ${across} ${side} of plumb, within one arrow\u2019s scatter.${misses}`,
      };
    case 'cannot tell':
      return {
        headline: `It cannot be told whether the line slants`,
        subline: `At ${at} it is ${across} ${side} of plumb. ${chanceSentence(line.angleP)}${misses}`,
      };
  }
}

function causesOf({ line }: WalkBack, outward: boolean): readonly Cause[] {
  if (line !== 'bends' && line !== 'slants') return [];
  const bent = line === 'bends';
  const cause = (text: string, evidenceFor: readonly string[], evidenceAgainst: readonly string[] = []): Cause => ({
    cause: text,
    evidenceFor,
    evidenceAgainst,
  });
  return [
    cause(
      'Sight to one side, or the bow canted',
      bent ? [] : ['A constant angle slants the line just so.'],
      bent ? ['A constant angle leaves the line straight.'] : [],
    ),
    cause(
      `The button is too ${outward ? 'firm' : 'soft'}`,
      bent ? [] : ['School A reads a slant so (not checked against a source).'],
      [],
    ),
    cause(`The centre shot is too far ${outward ? 'out' : 'in'}`, [
      bent
        ? 'Both schools read a bend so (not checked against a source).'
        : 'School B reads a slant so (not checked against a source).',
    ]),
    cause('Wind, or tiring from distance to distance', [], []),
  ];
}

function figuresOf(input: TrialInput, readings: readonly WalkBackDistance[], line: WalkBack): readonly TrialFigure[] {
  const { units } = input;
  const far = Math.max(...readings.map(({ distance }) => distance));
  const at = textQuantity(far, 'distance', units);
  const half = (Math.tan(line.angleInterval[1]) - Math.tan(line.angleInterval[0])) / 2;
  const bow = line.bend;
  const grow = Math.abs(bow.curvature) > 0 ? bow.bow / Math.abs(bow.curvature) : 0;
  return [
    placeFigure(`Slant to the right at ${at}`, Math.tan(line.angle) * far, half * far, units),
    placeFigure('Start at the bow, to the right', line.start, (line.startInterval[1] - line.startInterval[0]) / 2, units),
    placeFigure('Bulge to the left', bow.curvature * grow, ((bow.interval[1] - bow.interval[0]) / 2) * grow, units),
    ...countFigures(input, `${line.arrows} from ${line.distances} distances`),
  ];
}

function plotOf(readings: readonly WalkBackDistance[], line: WalkBack | null): TrialPlot {
  const shots = readings.flatMap(({ distance, offsets }) => offsets.map((offset) => ({ distance, offset })));
  const fit =
    line === null
      ? null
      : weightedFit(
          shots.map(({ distance: x, offset: y }) => ({ x, y, weight: x ** -2 })),
          2,
        );
  const curve =
    fit === null || !fit.ok || line === null
      ? []
      : along(line).map((distance) => ({
          distance,
          offset: fit.value.coefficients.reduceRight((sum, b) => sum * distance + b, 0),
        }));
  return { kind: 'walk-back', shots, line: line?.drawn ?? [], curve };
}

/** Two dozen places from the nearest distance to the farthest, for the bent line. */
function along({ drawn }: WalkBack): number[] {
  const ends = drawn.map(({ distance }) => distance);
  const [near, far] = [Math.min(...ends), Math.max(...ends)];
  return Array.from({ length: 25 }, (_, i) => near + ((far - near) * i) / 24);
}
