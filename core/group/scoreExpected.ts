import { ok, refuse, type Result } from '../model/problem.ts';
import { chanceInside, type Scatter } from './chanceInside.ts';
import { lengthOfSpread } from './circles.ts';
import { covarianceEllipse } from './ellipse.ts';
import type { Face } from './faces.ts';
import { groupMeasures, type Interval } from './measures.ts';
import { axisVariance, type Moments } from './moments.ts';
import type { Point } from './points.ts';
import { shapeFactor } from './shape.ts';

/** What one arrow scores on average. */
export interface ExpectedScore {
  readonly points: number;
  /** Standard deviation of one arrow's score; of n arrows √n times it. */
  readonly deviation: number;
  readonly tenChance: number;
  readonly innerChance: number;
  readonly missChance: number;
}

/** Expected score of a group's scatter, with what the spread's own uncertainty does to it. */
export interface GroupExpectation extends ExpectedScore {
  /** Of the points: from the 95 % interval of the spread alone. */
  readonly interval: Interval;
  readonly scatter: Scatter;
}

export interface ScoreOptions {
  /** Distance at which the group was shot, and the one that is asked for [m]. Both or neither. */
  readonly shotAt?: number;
  readonly askedAt?: number;
  /** With the sight set right, so that the centre falls on the aim; else as far off as the group lies. */
  readonly centred?: boolean;
}

/** A needle thinner than this scores as good as the same. */
const THINNEST = 0.05;

/**
 * Expected score of one arrow by the line-cutter rule.
 *
 * @equation E = Σ (points of ring - points of the ring outside it) P(centre within ring radius + shaft radius), P by chanceInside
 * @param scatter - spreads, offset of the centre from that of the face [record]
 * @param shaftRadius - half the shaft's diameter at the face, ≥ 0 [m]
 * @param face - the face [record]
 * @returns points, their deviation and the chances of a ten, an inner ten and a miss [record]
 * @validity normal scatter; arrows that do not hinder each other; a shaft radius below 0 throws RangeError
 * @source wa-rules; own derivation
 * @example expectedScore({ spread: [0.00001, 0.00001], offset: { x: 0.1, y: 0 } }, 0.003, face('122')).points // 9
 */
export function expectedScore(scatter: Scatter, shaftRadius: number, face: Face): ExpectedScore {
  if (!(shaftRadius >= 0)) throw new RangeError('A shaft radius of 0 or more is needed.');
  let [points, squares, outside, ten, any] = [0, 0, 0, 0, 0];
  for (const [i, ring] of face.rings.entries()) {
    const chance = chanceInside(ring.radius + shaftRadius, scatter);
    points += (ring.points - outside) * chance;
    squares += (ring.points ** 2 - outside ** 2) * chance;
    outside = ring.points;
    if (i === 0) any = chance;
    ten = chance;
  }
  return {
    points,
    deviation: Math.sqrt(Math.max(0, squares - points * points)),
    tenChance: ten,
    innerChance: chanceInside(face.innerTen + shaftRadius, scatter),
    missChance: 1 - any,
  };
}

/**
 * The same scatter at another distance.
 *
 * @equation spreads and offset times askedAt/shotAt: the spread is one of angle
 * @param scatter - the scatter at the first distance [record]
 * @param shotAt - the first distance, > 0 [m]
 * @param askedAt - the other, > 0 [m]
 * @returns the scatter there [record]
 * @validity leaves out what grows faster with distance (wind, arrows of unlike speed): farther out a lower bound, nearer an upper one. Distances that are not positive throw RangeError
 * @source common practice
 * @example scatterAt({ spread: [0.02, 0.01], offset: { x: 0, y: 0 } }, 20, 40).spread // [0.04, 0.02]
 */
export function scatterAt(scatter: Scatter, shotAt: number, askedAt: number): Scatter {
  if (!(shotAt > 0 && askedAt > 0)) throw new RangeError('Distances above 0 are needed.');
  const by = askedAt / shotAt;
  const [a, b] = scatter.spread;
  const { x, y } = scatter.offset;
  return { ...scatter, spread: [by * a, by * b], offset: { x: by * x, y: by * y } };
}

/**
 * Expected score of arrows that scatter as a group did, at its own distance or another, on any face.
 *
 * @equation spread s/c4 as round or oval as shapeFactor has it, offset as measured or 0, turned to the oval's axes; interval from expectedScore at the two ends of the spread's interval
 * @param points - places of the group's shots from the centre of the face [m]
 * @param shaftRadius - half the shaft's diameter at the face, ≥ 0 [m]
 * @param face - the face that is asked for [record]
 * @param options - distances, and whether the sight is set right [record]
 * @returns points of one arrow with interval, chances and the scatter used, or a refusal: those of groupMeasures, `bad-distance` [record]
 * @validity independent normal shots; the interval holds the spread's uncertainty alone, not that of the centre; a shaft radius below 0 throws RangeError
 * @source wa-rules; own derivation
 * @example expectedScoreOfGroup([{ x: 0, y: 0 }], 0.003, face('122')).problem.code // "one-shot"
 */
export function expectedScoreOfGroup(
  points: readonly Point[],
  shaftRadius: number,
  face: Face,
  options: ScoreOptions = {},
): Result<GroupExpectation> {
  const group = groupMeasures(points);
  if (!group.ok) return group;
  const { shotAt = 1, askedAt = shotAt, centred = false } = options;
  if (!(shotAt > 0 && askedAt > 0 && shotAt + askedAt < Infinity))
    return refuse(
      'bad-distance',
      'Two distances above 0 m were expected: where the group was shot, and where the score is asked for.',
      'distance',
    );
  const measured = scatterOf(group.value, centred);
  const { value, interval } = lengthOfSpread(1, axisVariance(group.value), measured.degreesOfFreedom);
  const at = (spread: number): Scatter => {
    const [a, b] = measured.shape;
    return scatterAt({ spread: [spread * a, spread * b], offset: measured.offset }, shotAt, askedAt);
  };
  const scatter = at(value);
  const middle = expectedScore(scatter, shaftRadius, face);
  const others = interval.map((spread) => expectedScore(at(spread), shaftRadius, face).points);
  return ok({
    ...middle,
    interval: [Math.min(middle.points, ...others), Math.max(middle.points, ...others)],
    scatter,
  });
}

function scatterOf(moments: Moments, centred: boolean): { shape: [number, number]; offset: Point; degreesOfFreedom: number } {
  // Two shots always lie on a line: they are taken as round.
  const factor = moments.n < 3 ? 0.5 : shapeFactor([moments]);
  const oval = Math.sqrt(2 * factor - 1);
  const turn = -covarianceEllipse(moments.covariance, 1).direction;
  const { x, y } = moments.centre;
  return {
    shape: [Math.sqrt(1 + oval), Math.max(THINNEST, Math.sqrt(1 - oval))],
    offset: centred ? { x: 0, y: 0 } : { x: x * Math.cos(turn) - y * Math.sin(turn), y: x * Math.sin(turn) + y * Math.cos(turn) },
    degreesOfFreedom: (moments.n - 1) / factor,
  };
}
