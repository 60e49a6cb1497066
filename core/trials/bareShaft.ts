import { capital } from '../findings/parts.ts';
import { groupMeasures, shiftOfGroups, type Point } from '../group/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Problem } from '../model/problem.ts';
import { axesOf } from './axesOf.ts';
import { bareProblem } from './bareProblem.ts';
import { causesOf } from './causes.ts';
import { contextDifferences } from './context.ts';
import { nextChange } from './nextChange.ts';
import { onlyCounted } from './onlyCounted.ts';
import type { Reading } from './reading.ts';
import { erraticWords, shiftWords, voidWords } from './sentences.ts';
import { emptyWhy, shiftWhy } from './shiftWhy.ts';
import { timesWider, WIDER } from './timesWider.ts';

/**
 * The reading of a bare group beside a fletched one: shift, stiff or weak, nocking point, causes and the one next change.
 *
 * @equation outward of the fletched = stiff, inward = weak; low = nocking point high, high = nocking point low; an axis is read only when its shift is real
 * @param bundle - the set-up with its records, as it stands now [record]
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @param units - the person's choice of units [record]
 * @returns sentences, shift, reading, causes and next change; with a problem and no reading when the groups cannot be read [record]
 * @validity finger release; one distance, one form, two or more arrows of each; shots left out are not read; a compound gets its shift and no reading
 * @source common practice
 * @example readBareShaft(exampleBundle, exampleFletched, exampleBare, defaultPreferences.units).headline // "Bare shafts land 43 mm right of fletched, and that is real"
 */
export function readBareShaft(bundle: Bundle, fletched: ShotGroup, bare: ShotGroup, units: UnitChoice): Reading {
  return readCounted(bundle, onlyCounted(fletched), onlyCounted(bare), units);
}

function readCounted(bundle: Bundle, fletched: ShotGroup, bare: ShotGroup, units: UnitChoice): Reading {
  const differences = contextDifferences(fletched, bare, units);
  const answer = shiftOfGroups(fletched.shots, bare.shots);
  const problem =
    bareProblem(bundle, fletched, bare, differences) ?? (answer.ok ? null : namedProblem(answer.problem, fletched, bare));
  // A compound's groups still have a shift to show; it just reads nothing.
  const shift = answer.ok && (problem === null || problem.code === 'compound') ? answer.value : null;
  const wider = problem === null ? timesWider([{ distance: 1, first: fletched.shots, second: bare.shots }]) : null;
  const erratic = wider !== null && wider.least > WIDER;
  const { lateral, vertical } =
    problem === null && !erratic && shift !== null ? axesOf(shift, bundle.archer.hand) : { lateral: null, vertical: null };
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

/**
 * A refusal of the statistics in the words of this trial: which group it is about, and how many were expected.
 *
 * @equation the group with fewer than two shots, else the sentence with "fletched" and "bare" in it
 * @param problem - the refusal [record]
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @returns the same with a sentence for this trial [record]
 * @validity the refusals of shiftOfGroups
 * @source own derivation
 * @example namedProblem({ code: 'one-hole', sentence: 'the other group is one.' }, exampleFletched, exampleBare).sentence // "The bare group is one."
 */
export function namedProblem(problem: Problem, fletched: ShotGroup, bare: ShotGroup): Problem {
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
