import { shiftOfGroups, type Shift } from '../../group/index.ts';
import type { ShotGroup } from '../../model/group.ts';
import type { Problem } from '../../model/problem.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import { textQuantity } from '../../units/index.ts';
import { axesOf } from '../axesOf.ts';
import { bareProblem } from '../bareProblem.ts';
import { namedProblem } from '../bareShaft.ts';
import { contextDifferences } from '../context.ts';
import type { Reading } from '../reading.ts';
import { erraticWords, type Words } from '../sentences.ts';
import { timesWider, WIDER } from '../timesWider.ts';
import { looserThanUsual } from './looserThanUsual.ts';
import { placesShot } from './places.ts';
import type { ShiftPoint } from './plot.ts';
import { shiftOver } from './shiftOver.ts';
import { sameThroughout } from './throughout.ts';
import type { TrialInput } from './types.ts';

/** Both kinds at one distance. */
export interface BarePlace {
  readonly distance: number;
  readonly fletched: ShotGroup;
  readonly bare: ShotGroup;
}

/** What a bare-shaft trial has on the table. */
export interface BareEvidence {
  readonly distances: number;
  readonly far: BarePlace;
  readonly points: readonly ShiftPoint[];
  readonly problem: Problem | null;
  /** Told at the farthest distance; null when there is a problem, but for a compound. */
  readonly shift: Shift | null;
  /** These are no groups; null when they are. */
  readonly noGroup: Words | null;
  /** Two distances show opposite sides or heights; null when none do. */
  readonly opposed: string | null;
  readonly axes: Pick<Reading, 'lateral' | 'vertical'>;
  readonly weakens: readonly string[];
}

const FEWEST = 2;
const none = { lateral: null, vertical: null } as const;

/**
 * The places of a trial at which both bare and fletched arrows were shot, nearest first.
 *
 * @equation places with a group of each kind
 * @param input - the trial with its groups [record]
 * @returns the places [list]
 * @validity any trial
 * @source own derivation
 * @example barePlaces(exampleTrialInput).length // 1
 */
export function barePlaces(input: Pick<TrialInput, 'trial' | 'groups'>): readonly BarePlace[] {
  return placesShot(input).flatMap(({ distance, first, second }): BarePlace[] =>
    first === null || second === null ? [] : [{ distance, fletched: first, bare: second }],
  );
}

/**
 * What bare shafts beside fletched ones show over all distances, and what speaks against reading it.
 *
 * @equation shiftOver of the places with two or more of each; problems by bareProblem, sameThroughout and the statistics; no groups by timesWider and looserThanUsual
 * @param input - the trial with its records [record]
 * @returns the evidence; null when no place has two of each [record]
 * @validity as shiftOver
 * @source common practice
 * @example bareEvidence(exampleTrialInput).axes.lateral // "weak"
 */
export function bareEvidence(input: TrialInput): BareEvidence | null {
  const { bundle, units, spread } = input;
  const places = barePlaces(input).filter(({ fletched, bare }) => Math.min(fletched.shots.length, bare.shots.length) >= FEWEST);
  const far = places.at(-1);
  if (far === undefined) return null;
  const pairs = places.map(({ distance, fletched, bare }) => ({ distance, first: fletched.shots, second: bare.shots }));
  const inPairs = places.map(({ fletched, bare }) => contextDifferences(fletched, bare, units));
  const throughout = sameThroughout(
    places.flatMap(({ fletched, bare }) => [fletched, bare]),
    false,
    units,
  );
  const answer = shiftOver(pairs);
  const problem =
    places
      .map(({ fletched, bare }, i) => bareProblem(bundle, fletched, bare, inPairs[i] ?? []))
      .find((found) => found !== null) ??
    throughout.voids ??
    (answer.ok ? null : namedProblem(answer.problem, far.fletched, far.bare));
  const shift = answer.ok && (problem === null || problem.code === 'compound') ? answer.value : null;
  const points = places.flatMap(pointOf);
  const wider = problem === null ? timesWider(pairs) : null;
  const noGroup =
    problem !== null
      ? null
      : wider !== null && wider.least > WIDER
        ? erraticWords(wider.times, wider.least)
        : looserThanUsual(
            places.map(({ fletched }) => fletched),
            spread,
          );
  const opposed = problem === null ? opposite(points, units) : null;
  const readable = problem === null && noGroup === null && opposed === null && shift !== null;
  const weakens = [
    ...throughout.weakens,
    ...inPairs
      .flat()
      .filter(({ voids }) => !voids)
      .map(({ sentence }) => sentence),
  ];
  return {
    distances: places.length,
    far,
    points,
    problem,
    shift,
    noGroup,
    opposed,
    axes: readable ? axesOf(shift, bundle.archer.hand) : none,
    weakens: [...new Set(weakens)],
  };
}

function pointOf({ distance, fletched, bare }: BarePlace): ShiftPoint[] {
  const found = shiftOfGroups(fletched.shots, bare.shots);
  if (!found.ok) return [];
  const { dx, dy, half, n } = found.value;
  return [{ distance, dx, dy, halfX: half.x, halfY: half.y, arrows: n }];
}

/** A side or a height that is plain at one distance and plainly the other way at another. */
function opposite(points: readonly ShiftPoint[], units: UnitChoice): string | null {
  const at = (point: ShiftPoint) => textQuantity(point.distance, 'distance', units);
  for (const [key, half, words] of [
    ['dy', 'halfY', ['lower', 'higher']],
    ['dx', 'halfX', ['to the left', 'to the right']],
  ] as const) {
    const plain = points.filter((point) => Math.abs(point[key]) > point[half]);
    const [less, more] = [plain.find((point) => point[key] < 0), plain.find((point) => point[key] > 0)];
    if (less !== undefined && more !== undefined)
      return `Bare shafts strike ${words[0]} at ${at(less)} and ${words[1]} at ${at(more)}.`;
  }
  return null;
}
