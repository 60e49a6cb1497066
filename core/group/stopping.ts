import { ok, refuse, type Result } from '../model/problem.ts';
import { lookLimits, type Boundary } from './boundaries.ts';
import { checkedPair } from './pair.ts';
import { MEAN_RADIUS_PER_SPREAD } from './measures.ts';
import { axisVariance, momentsOf, type Moments } from './moments.ts';
import { inOneHole, type Point } from './points.ts';
import { leastWhole } from './search.ts';
import { shapeFactor } from './shape.ts';
import { shiftEvidence, shiftRadiusAlways } from './shiftEvidence.ts';
import { shiftOfGroups } from './shift.ts';
import { welchTest } from './welch.ts';

/** What was shot since the look before: with the reference and with the change, best by turns. */
export interface EndPair {
  readonly reference: readonly Point[];
  readonly moved: readonly Point[];
}

export type StopVerdict = 'real' | 'go on' | 'give up';

/** One look, after one end. */
export interface Look {
  /** Shots so far. */
  readonly n: readonly [reference: number, moved: number];
  /** Share of what it takes to stop with a shift: 1 and above stops. */
  readonly share: number;
  /** Distance of the two centres [m]. */
  readonly size: number;
  /** The true shift lies within this of it, at every look at once [m]; null while nothing can be said. */
  readonly radius: number | null;
}

export interface Stopping {
  readonly stop: StopVerdict;
  /** Number of the look that decided, from 1; null for 'go on'. Shots after it change nothing. */
  readonly at: number | null;
  /** For 'give up': no shift that matters, or the planned looks are used up without a verdict. */
  readonly why: 'no shift that matters' | 'plan used up' | null;
  readonly looks: readonly Look[];
  /** For 'go on': ends like the last one until it is settled, if size and spread stay as seen; null when more than a thousand. */
  readonly ends: number | null;
  /** The smallest shift that matters, as it was used [m]. */
  readonly matters: number;
}

const ALPHA = 0.05;
const MANY = 1000;
const MOST_LOOKS = 60;

function checkedEnds(ends: readonly EndPair[], matters: number | undefined): Result<readonly EndPair[]> {
  const empty = ends.findIndex(({ reference, moved }) => reference.length === 0 || moved.length === 0);
  if (empty >= 0) {
    const sentence = `End ${empty + 1} has no shots on one side: each end needs at least one arrow with and one without the change.`;
    return refuse('no-shots', sentence, 'shots');
  }
  const whole = upTo(ends, ends.length);
  const pair = checkedPair(whole.reference, whole.moved, matters);
  return pair.ok ? ok(ends) : pair;
}

function upTo(ends: readonly EndPair[], count: number): EndPair {
  const taken = ends.slice(0, count);
  return { reference: taken.flatMap(({ reference }) => reference), moved: taken.flatMap(({ moved }) => moved) };
}

/** What has been shot up to a look; no moments while a lot has one shot, or both lie in one hole. */
interface SoFar {
  readonly n: readonly [number, number];
  readonly size: number;
  readonly moments: readonly [Moments, Moments] | null;
}

function soFar({ reference, moved }: EndPair): SoFar {
  const n = [reference.length, moved.length] as const;
  const mean = (points: readonly Point[], axis: 'x' | 'y'): number =>
    points.reduce((sum, point) => sum + point[axis], 0) / points.length;
  const size = Math.hypot(mean(moved, 'x') - mean(reference, 'x'), mean(moved, 'y') - mean(reference, 'y'));
  const told = Math.min(...n) >= 2 && !(inOneHole(reference) && inOneHole(moved));
  return { n, size, moments: told ? [momentsOf(reference), momentsOf(moved)] : null };
}

function lookAt({ n, size, moments }: SoFar): Look {
  if (moments === null) return { n, share: 0, size, radius: null };
  const test = welchTest(...moments, shapeFactor(moments));
  return { n, share: shiftEvidence(test, n) / -Math.log(ALPHA), size, radius: shiftRadiusAlways(test, n, ALPHA) };
}

const settled = (look: Look, matters: number): 'real' | 'give up' | null =>
  look.share >= 1 ? 'real' : look.radius !== null && look.size + look.radius <= matters ? 'give up' : null;

/**
 * Whether to keep shooting or stop, judged anew after every end for as long as one likes.
 *
 * @equation after each end: real when E ≥ 20; give up when size + radius ≤ what matters, both by the evidence that stays valid at every look; else go on. The first look that settles it decides
 * @param ends - the ends in the order they were shot [list]
 * @param matters - the smallest shift that matters; about one mean radius of the shots when left out [m]
 * @returns the verdict and every look, or a refusal: `no-shots`, `one-shot`, `one-hole`, `bad-position`, `bad-matters` [record]
 * @validity at most one false alarm in twenty over all looks together: exact for round normal shots of one spread, and 3.1 % at worst in twelve looks at ovals, heavy tails, and few loose beside many tight shots (computed independently). Without a stated shift that matters the default moves with the shots
 * @source perez-ortiz-2024
 * @example keepShooting([{ reference: [{ x: 0, y: 0 }, { x: 0.01, y: 0 }, { x: 0, y: 0.01 }], moved: [{ x: 0.2, y: 0 }, { x: 0.21, y: 0 }, { x: 0.2, y: 0.01 }] }]).value.stop // "real"
 */
export function keepShooting(ends: readonly EndPair[], matters?: number): Result<Stopping> {
  const checked = checkedEnds(ends, matters);
  if (!checked.ok) return checked;
  const states = ends.map((_, i) => soFar(upTo(ends, i + 1)));
  const looks = states.map(lookAt);
  const limit = (so: SoFar): number => matters ?? defaultMatters(so);
  const at = looks.findIndex((look, i) => settled(look, limit(states[i] as SoFar)) !== null);
  const deciding = states[at < 0 ? states.length - 1 : at] as SoFar;
  const stop = at < 0 ? null : settled(looks[at] as Look, limit(deciding));
  return ok({
    stop: stop ?? 'go on',
    at: at < 0 ? null : at + 1,
    why: stop === 'give up' ? 'no shift that matters' : null,
    looks,
    ends: at < 0 ? endsToGo(deciding, ends.at(-1) as EndPair, limit(deciding)) : null,
    matters: limit(deciding),
  });
}

/** One mean radius of the shots, as the shift test takes it; nothing yet where the shots show no spread. */
function defaultMatters({ moments }: SoFar): number {
  if (moments === null) return 0;
  const df = moments.reduce((sum, { n }) => sum + n - 1, 0);
  return MEAN_RADIUS_PER_SPREAD * Math.sqrt(moments.reduce((sum, group) => sum + (group.n - 1) * axisVariance(group), 0) / df);
}

function endsToGo({ n, size, moments }: SoFar, last: EndPair, matters: number): number | null {
  if (moments === null) return null;
  const [a, b] = moments;
  const needed = leastWhole(1, MANY + 1, (more) => {
    const grown = [n[0] + more * last.reference.length, n[1] + more * last.moved.length] as const;
    // The centres stay as far apart as seen, and so do the spreads.
    const look = lookAt({
      n: grown,
      size,
      moments: [
        { ...a, n: grown[0] },
        { ...b, n: grown[1] },
      ],
    });
    return settled(look, matters) !== null;
  });
  return needed <= MANY ? needed : null;
}

/**
 * Whether to keep shooting or stop, by a number of looks that was planned before the first shot.
 *
 * @equation at look k of K: real when the p of the shift test falls short of exp(-c_k/2); after the last look: give up; else go on
 * @param ends - the ends shot so far, each with about as many arrows as the others, in order [list]
 * @param planned - K, looks planned, 1 to 60 [-]
 * @param boundary - pocock, or obrien-fleming, which stops late but gives hardly anything away at the end [choice]
 * @param matters - the smallest shift that matters; about one mean radius when left out [m]
 * @returns the verdict and every look, or a refusal: `bad-plan`, `no-shots`, `one-shot`, `one-hole`, `bad-position`, `bad-matters` [record]
 * @validity ends of 3 and 3 or more keep 5 % over four looks. A first look that the shift test cannot judge counts as not crossed. More ends than planned are not looked at
 * @source pocock-1977, obrien-fleming-1979, jennison-turnbull-2000
 * @example plannedLooks([{ reference: [{ x: 0, y: 0 }, { x: 0.01, y: 0 }, { x: 0, y: 0.01 }], moved: [{ x: 0, y: 0.02 }, { x: 0.01, y: 0 }, { x: 0, y: 0 }] }], 1, 'pocock').value.why // "plan used up"
 */
export function plannedLooks(ends: readonly EndPair[], planned: number, boundary: Boundary, matters?: number): Result<Stopping> {
  if (!(Number.isInteger(planned) && planned >= 1 && planned <= MOST_LOOKS)) {
    return refuse('bad-plan', `1 to ${MOST_LOOKS} looks were expected: plan how many ends there are to be.`, 'planned');
  }
  const taken = ends.slice(0, planned);
  const checked = checkedEnds(taken, matters);
  if (!checked.ok) return checked;
  const limits = lookLimits(planned, boundary, ALPHA);
  const judged = taken.map((_, i) => {
    const { reference, moved } = upTo(taken, i + 1);
    const so = soFar({ reference, moved });
    const shift = shiftOfGroups(reference, moved, matters === undefined ? {} : { matters });
    const share = shift.ok ? (-2 * Math.log(shift.value.p)) / (limits[i] ?? Infinity) : 0;
    return { so, look: { n: so.n, share, size: so.size, radius: null } };
  });
  const at = judged.findIndex(({ look }) => look.share >= 1);
  const usedUp = at < 0 && taken.length === planned;
  const { so } = judged.at(-1) as (typeof judged)[number];
  return ok({
    stop: at >= 0 ? 'real' : usedUp ? 'give up' : 'go on',
    at: at >= 0 ? at + 1 : usedUp ? planned : null,
    why: usedUp ? 'plan used up' : null,
    looks: judged.map(({ look }) => look),
    ends: at < 0 && !usedUp ? planned - taken.length : null,
    matters: matters ?? defaultMatters(so),
  });
}
