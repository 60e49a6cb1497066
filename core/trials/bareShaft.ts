import { capital } from '../findings/parts.ts';
import {
  axisVariance,
  fQuantileUpper,
  groupMeasures,
  inOneHole,
  momentsOf,
  shiftOfGroups,
  type Point,
  type Shift,
} from '../group/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { refuse, type Problem } from '../model/problem.ts';
import { causesOf } from './causes.ts';
import { contextDifferences, type ContextDifference } from './context.ts';
import { nextChange } from './nextChange.ts';
import { outwardOf } from './outward.ts';
import type { Reading } from './reading.ts';
import { erraticWords, shiftWords, voidWords } from './sentences.ts';
import { emptyWhy, shiftWhy } from './shiftWhy.ts';

/** Bare shafts always scatter somewhat wider; believably more than this times as wide is no group (our own line). */
const WIDER = 1.5;

/**
 * The reading of a bare group beside a fletched one: shift, stiff or weak, nocking point, causes and the one next change.
 *
 * @equation outward of the fletched = stiff, inward = weak; low = nocking point high, high = nocking point low; an axis is read only when its shift is real
 * @param bundle - the set-up with its records, as it stands now [record]
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @param units - the person's choice of units [record]
 * @returns sentences, shift, reading, causes and next change; with a problem and no reading when the groups cannot be read [record]
 * @validity finger release; one distance, one form, two or more arrows of each; a compound gets its shift and no reading
 * @source common practice
 * @example readBareShaft(exampleBundle, exampleFletched, exampleBare, defaultPreferences.units).headline // "Bare shafts land 43 mm right of fletched, and that is real"
 */
export function readBareShaft(bundle: Bundle, fletched: ShotGroup, bare: ShotGroup, units: UnitChoice): Reading {
  const differences = contextDifferences(fletched, bare, units);
  const answer = shiftOfGroups(fletched.shots, bare.shots);
  const problem = problemOf(bundle, fletched, bare, differences) ?? (answer.ok ? null : named(answer.problem, fletched, bare));
  // A compound's groups still have a shift to show; it just reads nothing.
  const shift = answer.ok && (problem === null || problem.code === 'compound') ? answer.value : null;
  const wider = problem === null ? timesWider(fletched, bare) : null;
  const erratic = wider !== null && wider.least > WIDER;
  const { lateral, vertical } =
    problem === null && !erratic && shift !== null ? axesOf(shift, bundle) : { lateral: null, vertical: null };
  const measured = groupMeasures(fletched.shots);
  const { next, others } = nextChange({
    bundle,
    fletched,
    bare,
    units,
    problem,
    shift,
    lateral,
    vertical,
    erratic,
    fletchedRadius: measured.ok ? measured.value.meanRadius : null,
    fletchedFarthest: measured.ok ? farthestFrom(fletched, measured.value.centre) : null,
  });
  const words =
    problem !== null
      ? voidWords(problem, shift, units)
      : erratic
        ? erraticWords(wider.times, wider.least)
        : shiftWords(shift, bundle.archer.hand, { lateral, vertical }, units);
  return {
    ...words,
    shift,
    problem,
    differences,
    lateral,
    vertical,
    erratic,
    causes: causesOf(bundle, { lateral, vertical, erratic }, units),
    next,
    others,
    why: shift === null ? emptyWhy(problem?.sentence ?? '') : shiftWhy(shift, units),
  };
}

/** Folded, not spread into Math.max: a group may hold more shots than a call takes arguments. */
const farthestFrom = ({ shots }: ShotGroup, centre: Point): number =>
  shots.reduce((most, { x, y }) => Math.max(most, Math.hypot(x - centre.x, y - centre.y)), 0);

function problemOf(
  bundle: Bundle,
  fletched: ShotGroup,
  bare: ShotGroup,
  differences: readonly ContextDifference[],
): Problem | null {
  const say = (code: string, sentence: string): Problem => refuse(code, sentence).problem;
  if (fletched.fletching !== 'fletched' || bare.fletching !== 'bare')
    return say('fletching', 'One fletched and one bare group were expected.');
  const voids = differences.find((difference) => difference.voids);
  if (voids !== undefined) return say(voids.key.split('.')[0] ?? voids.key, voids.sentence);
  if (bundle.bow.bowKind === 'compound')
    return say(
      'compound',
      'Stiff and weak are read from a finger release; a compound shot with a release aid bends its arrow up and down.',
    );
  if (bundle.bow.hand !== bundle.archer.hand)
    return say('hand', 'Bow and archer of one hand were expected: stiff and weak lie on opposite sides for the two hands.');
  return null;
}

/** The refusal in the words of this trial: which group it is about. */
function named(problem: Problem, fletched: ShotGroup, bare: ShotGroup): Problem {
  const least = fletched.shots.length < 2 ? fletched : bare;
  const count = least.shots.length;
  if (problem.code === 'no-shots')
    return {
      ...problem,
      sentence: `There are no ${least.fletching} shots: at least two were expected, better ${least.fletching === 'bare' ? 'four' : 'six'}.`,
    };
  if (problem.code === 'one-shot' && count === 1)
    return {
      ...problem,
      sentence: `One ${least.fletching} shot cannot show its scatter: at least two were expected, better ${least.fletching === 'bare' ? 'four' : 'six'}.`,
    };
  const sentence = problem.sentence
    .replace('the reference group', 'the fletched group')
    .replace('the other group', 'the bare group');
  return { ...problem, sentence: capital(sentence) };
}

function axesOf(shift: Shift, bundle: Bundle): Pick<Reading, 'lateral' | 'vertical'> {
  return {
    lateral: shift.axisReal.x ? (outwardOf(shift.dx, bundle.archer.hand) > 0 ? 'stiff' : 'weak') : null,
    vertical: shift.axisReal.y ? (shift.dy < 0 ? 'nocking point high' : 'nocking point low') : null,
  };
}

/** How many times as wide the bare group scatters, and at least how many at 95 %: the interval of a ratio of spreads. */
function timesWider(fletched: ShotGroup, bare: ShotGroup): { times: number; least: number } | null {
  if (inOneHole(fletched.shots)) return null;
  const [reference, moved] = [momentsOf(fletched.shots), momentsOf(bare.shots)];
  const ratio = axisVariance(moved) / axisVariance(reference);
  const f = fQuantileUpper(0.025, 2 * (moved.n - 1), 2 * (reference.n - 1));
  return { times: Math.sqrt(ratio), least: Math.sqrt(ratio / f) };
}
