import type { Band } from '../../model/band.ts';
import { limits } from '../../model/limits.ts';
import { ok, refuse, type Result } from '../../model/problem.ts';
import { markError, placeOf, usualShots, Z95 } from './markModel.ts';
import type { KnownMark, MarkPriors, SightScale } from './types.ts';
import { farWords, readWords } from './words.ts';

const MOST_MARKS = 60;

const isBand = ({ low, value, high }: Band): boolean => low <= value && value <= high && Number.isFinite(high - low);

function checkScale({ unit, lowest = -Infinity, highest = Infinity, grows }: SightScale): Result<null> {
  if (!(unit >= 1e-5 && unit <= 0.1))
    return refuse('unit', 'One unit of the scale between 0.01 and 100 mm was expected.', 'unit');
  if (grows !== 'down' && grows !== 'up')
    return refuse('grows', 'Whether the numbers grow downward or upward was expected.', 'grows');
  if (!(lowest < highest)) return refuse('bar', 'A bar whose highest number lies above its lowest was expected.', 'highest');
  return ok(null);
}

function checkPriors({ speed, eyeHeight, k, sightRadius, spreadPerMetre }: MarkPriors): Result<null> {
  const { min: slowest, max: fastest } = limits.arrowSpeed;
  if (!(isBand(speed) && speed.low > 0 && speed.value >= slowest && speed.value <= fastest))
    return refuse('speed', `An arrow speed between ${slowest} and ${fastest} m/s (66 and 394 ft/s) was expected.`, 'arrowSpeed');
  if (!(isBand(eyeHeight) && Math.abs(eyeHeight.value) <= limits.eyeHeight.max))
    return refuse('eye', 'An eye at most 250 mm above the arrow was expected.', 'eyeHeight');
  if (!(isBand(k) && k.low > 0 && k.value <= 0.05))
    return refuse('drag', 'A drag parameter above 0 and up to 0.05 per metre was expected.', 'drag');
  if (!(isBand(sightRadius) && sightRadius.low > 0 && sightRadius.value >= 0.3 && sightRadius.value <= 1.5))
    return refuse('radius', 'A sight 0.3 to 1.5 m from the eye was expected.', 'sightRadius');
  if (!(spreadPerMetre >= 0 && spreadPerMetre <= 0.05))
    return refuse('spread', 'A spread of at most 50 mm for each metre of distance was expected.', 'spread');
  return ok(null);
}

/** Either end of a bar may be unknown. */
function barWords(lowest: number, highest: number): string {
  if (highest === Infinity) return `of ${lowest} or more`;
  return lowest === -Infinity ? `of at most ${highest}` : `from ${lowest} to ${highest}`;
}

function checkEach(marks: readonly KnownMark[], { lowest = -Infinity, highest = Infinity, unit }: SightScale): Result<null> {
  const { min, max } = limits.shootingDistance;
  for (const { distance, reading, shots = usualShots, leftOut = false } of marks) {
    if (!(distance >= min && distance <= max))
      return refuse('distance', `A distance between ${min} and ${max} m was expected for each mark.`, 'shootingDistance');
    if (!(Math.abs(reading * unit) <= 10))
      return refuse('reading', `A reading of the scale was expected for ${farWords(distance)}.`, 'reading');
    if (!(Number.isInteger(shots) && shots >= 1 && shots <= 10_000))
      return refuse('shots', `A number of arrows from 1 on was expected for the mark at ${farWords(distance)}.`, 'shots');
    if (!leftOut && (reading < lowest || reading > highest))
      return refuse(
        'off-bar',
        `The mark for ${farWords(distance)} reads ${readWords(reading, unit)}, off the bar: a reading ${barWords(lowest, highest)} was expected.`,
        'reading',
      );
  }
  return ok(null);
}

/** How surely two readings differ, in standard deviations of what shooting can tell. */
function apart(a: KnownMark, b: KnownMark, scale: SightScale, priors: MarkPriors): number {
  const error = Math.hypot(markError(priors, a.shots ?? usualShots), markError(priors, b.shots ?? usualShots));
  return (placeOf(b.reading, scale) - placeOf(a.reading, scale)) / error;
}

function checkTwice(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): Result<null> {
  for (const [i, one] of marks.entries())
    for (const other of marks.slice(i + 1)) {
      if (one.distance !== other.distance || Math.abs(apart(one, other, scale, priors)) <= 5) continue;
      const [a, b] = [one, other].map(({ reading }) => readWords(reading, scale.unit));
      return refuse(
        'contradictory',
        `Two marks for ${farWords(one.distance)} read ${a} and ${b}, further apart than arrows scatter: keep the one that was shot in last.`,
        'reading',
      );
    }
  return ok(null);
}

/** Beyond the distance where readings turn, the pin goes down with every metre: marks that all say the contrary were read off another way. */
function checkOrder(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): Result<null> {
  const turns = priors.speed.high * Math.sqrt((2 * Math.max(0, priors.eyeHeight.high)) / 9.8);
  const far = marks.filter(({ distance }) => distance > turns).toSorted((a, b) => a.distance - b.distance);
  const [nearest, farthest] = [far[0], far.at(-1)];
  if (nearest === undefined || farthest === undefined || !(apart(nearest, farthest, scale, priors) < -2 * Z95)) return ok(null);
  const moves = far.slice(1).map((mark, i) => apart(far[i] ?? mark, mark, scale, priors));
  if (moves.some((move) => move > Z95)) return ok(null);
  const [a, b] = [nearest, farthest].map(
    ({ distance, reading }) => `${readWords(reading, scale.unit)} for ${farWords(distance)}`,
  );
  const direction = scale.grows === 'down' ? 'higher' : 'lower';
  return refuse(
    'wrong-order',
    `${a} and ${b} stand in the wrong order: on a scale whose numbers grow ${scale.grows === 'down' ? 'downward' : 'upward'}, a ${direction} reading was expected for the farther one. Check which way the numbers grow, or whether the two were mixed up.`,
    'reading',
  );
}

/**
 * Check scale, marks and what is held beforehand, before anything is fitted.
 *
 * @equation figures finite and within their limits; readings on the bar; no two readings for one distance 5 σ apart; not all far readings in reverse
 * @param marks - the known marks [list]
 * @param scale - the sight's scale [record]
 * @param priors - what is held of speed, eye height, drag and sight radius [record]
 * @returns the marks, or a refusal that says what was expected [record]
 * @validity any input, also one that is not a number
 * @source own derivation
 * @example checkMarks([{ distance: 30, reading: 140 }], exampleScale, examplePriors).problem.sentence // "The mark for 30 m (33 yd) reads 140.0, off the bar: a reading from 0 to 130 was expected."
 */
export function checkMarks(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): Result<readonly KnownMark[]> {
  const counted = marks.filter(({ leftOut = false }) => !leftOut);
  if (counted.length === 0)
    return refuse('no-marks', 'At least one known mark was expected: a distance and what the scale reads there.', 'marks');
  if (marks.length > MOST_MARKS) return refuse('marks', `At most ${MOST_MARKS} marks were expected.`, 'marks');
  const checks = [
    () => checkScale(scale),
    () => checkPriors(priors),
    () => checkEach(marks, scale),
    () => checkTwice(counted, scale, priors),
    () => checkOrder(counted, scale, priors),
  ];
  for (const check of checks) {
    const found = check();
    if (!found.ok) return found;
  }
  return ok(marks);
}
