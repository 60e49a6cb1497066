import { ok, refuse, type ArrowSet, type Result } from '../model/index.ts';
import { countWord, together } from '../model/sentence.ts';
import { closestBox, type Placed } from './closest.ts';
import { shootingArrows, type SortedArrow } from './shooting.ts';
import { tolerancesOf, type Matching } from './tolerances.ts';

/** The arrows of a set that match each other best. */
export interface BestMatched {
  readonly numbers: readonly number[];
  /** Heaviest less lightest of them [kg]. */
  readonly massRange: number;
  /** Most less least deflection of them as the set's tester reads it [m]; null when spine was not looked at. */
  readonly spineRange: number | null;
  /** The same in pounds of a wooden shaft [-]; null for any other. */
  readonly poundsRange: number | null;
  /** What was made least: mass range and spine range, each over its full tolerance [-]. */
  readonly cost: number;
  /** Neither range is wider than its tolerance. */
  readonly within: boolean;
  /** What all the arrows that could be chosen range over, for comparison. */
  readonly ofAll: { readonly arrows: number; readonly massRange: number; readonly spineRange: number | null };
  /** Arrows that were not to be chosen, and why. */
  readonly leftOut: readonly { readonly number: number; readonly why: string }[];
}

const rangeOf = (figures: readonly number[]): number => Math.max(...figures) - Math.min(...figures);
const spineRangeOf = (arrows: readonly SortedArrow[], key: 'read' | 'spine'): number =>
  rangeOf(arrows.flatMap((arrow) => arrow[key] ?? []));

/**
 * The arrows of a numbered set that match each other best: so many of those that are shot, sound and weighed.
 *
 * @equation least of (m_max − m_min)/(2 T_m) + (s_max − s_min)/(2 T_s) over all choices of n, T the tolerances each way; among equals the lowest numbers
 * @param arrowSet - the set with its numbered arrows [record]
 * @param count - n, how many are wanted [-]
 * @param matching - whose tolerances weigh mass against spine: the club's unless it says for a match [choice]
 * @returns the numbers, what they range over in mass [kg] and spine [m], and the arrows left out with the reason [record]
 * @validity exact for any set, no choice of as many matches better; left out: arrows with a flaw, less straight than the tolerance, or not weighed; spine counts when as many as are wanted were read, and those that were not are left out then; refused for fewer than two, or more than there are
 * @source own derivation
 * @example bestMatched({ ...exampleBundle.arrowSet, arrows: [] }, 6).problem.code // "no arrows"
 */
export function bestMatched(arrowSet: ArrowSet, count: number, matching: Matching = 'club'): Result<BestMatched> {
  if (!Number.isInteger(count) || count < 2) return refuse('count', 'Two arrows or more were expected.', 'arrows');
  const shooting = shootingArrows(arrowSet);
  if (!shooting.ok) return shooting;
  const tolerances = tolerancesOf(arrowSet.material, matching);

  const leftOut: { number: number; why: string }[] = [];
  const keep = (from: readonly SortedArrow[], why: (arrow: SortedArrow) => string | null) =>
    from.filter((arrow) => {
      const reason = why(arrow);
      if (reason !== null) leftOut.push({ number: arrow.number, why: reason });
      return reason === null;
    });
  const sound = keep(shooting.value, ({ flaws, straightness, mass }) => {
    if (flaws.length > 0) return `a flaw in the ${together(flaws)}`;
    if ((straightness ?? 0) > tolerances.straightness * (1 + 1e-9)) return 'not straight enough';
    return mass === null ? 'not weighed' : null;
  });
  const bySpine = sound.filter(({ spine }) => spine !== null).length >= count;
  const candidates = bySpine ? keep(sound, ({ spine }) => (spine === null ? 'spine not read' : null)) : sound;
  if (candidates.length < count)
    return refuse(
      'too few',
      `${countWord(count)} arrows were asked for, and ${candidates.length === 0 ? 'none' : countWord(candidates.length)} of this set can be matched: an arrow must be weighed, straight and without a flaw.`.replace(
        /^./u,
        (first) => first.toUpperCase(),
      ),
      'arrows',
    );

  const places = candidates.map(({ number, mass, spine }): Placed => ({
    number,
    x: (mass ?? 0) / (2 * tolerances.mass),
    y: bySpine ? (spine ?? 0) / (2 * tolerances.spine) : 0,
  }));
  const numbers = closestBox(places, count);
  const chosen = candidates.filter(({ number }) => numbers.includes(number));
  const massRange = rangeOf(chosen.flatMap(({ mass }) => mass ?? []));
  const across = bySpine ? spineRangeOf(chosen, 'spine') : 0;
  const loose = 1 + 1e-9;
  return ok({
    numbers,
    massRange,
    spineRange: bySpine ? spineRangeOf(chosen, 'read') : null,
    poundsRange: bySpine && arrowSet.material === 'wood' ? across : null,
    cost: massRange / (2 * tolerances.mass) + across / (2 * tolerances.spine),
    within: massRange <= 2 * tolerances.mass * loose && across <= 2 * tolerances.spine * loose,
    ofAll: {
      arrows: candidates.length,
      massRange: rangeOf(candidates.flatMap(({ mass }) => mass ?? [])),
      spineRange: bySpine ? spineRangeOf(candidates, 'read') : null,
    },
    leftOut: leftOut.toSorted((a, b) => a.number - b.number),
  });
}
