import { walkBack, type WalkBack, type WalkBackDistance } from '../../group/index.ts';
import { changedSince } from '../changedSince.ts';
import { outwardOf } from '../outward.ts';
import type { NextStep } from '../reading.ts';
import { stepOf } from '../step.ts';
import { contextCauses } from './findingCauses.ts';
import { notForFingers } from './notForFingers.ts';
import { gated, outcome, voided } from './outcome.ts';
import { placesShot } from './places.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialInput, TrialReading } from './types.ts';
import { walkBackMore } from './walkBackMore.ts';
import { walkBackSteps } from './walkBackSteps.ts';
import { walkBackWhy } from './walkBackWhy.ts';
import { walkBackFigures, walkBackPlot } from './walkBackShown.ts';
import { walkBackCauses, walkBackWords } from './walkBackWords.ts';

const AGAIN = 'Then shoot the same walk-back again, with the sight left alone.';

/**
 * What a walk-back says: upright, slanting or bent, with what the button way and the rest way make of it.
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
  const plot = walkBackPlot(readings, answer.ok ? answer.value : null);
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
      ifNot:
        'If arrows come near the foot or an edge of the butt, go no farther: take those distances out of the plan and read the rest.',
      waste: 'Moving the rest or the button before the line is shot.',
    });
  }
  const line = answer.value;
  const shown = { plot, figures: walkBackFigures(input, readings, line), why: walkBackWhy(line, units) };
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
  const ways = steps === null ? [] : [steps.button, steps.rest].filter((step) => step !== null);
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
        : ((checked ? ways[0] : (check ?? ways[0])) ?? check ?? again);
  const rest = [...ways, ...(check !== null && checked ? [check] : [])].filter((step) => step !== first);
  return outcome(input, {
    ...walkBackWords(line, outward, input),
    verdict: told ? 'read' : line.line === 'straight up' ? 'nothing shown' : 'too few',
    ...gated(input, first, rest, AGAIN),
    causes: [...walkBackCauses(line, outward), ...contextCauses(weakens)],
    more,
    ifNot: told
      ? line.line === 'bends'
        ? 'If the line bends as much next time, put it back, and try a quarter turn of the button instead.'
        : 'If the line does not stand more upright, put it back and try the other way\u2019s change: that settles which of them this bow follows.'
      : 'If it slants next time, shoot it a third time before anything is turned.',
    waste: told
      ? 'Turning button and rest at once: then neither way has been tried.'
      : 'Moving rest or button for a line that is not shown to slant.',
    ...shown,
  });
}
