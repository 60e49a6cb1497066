import type { FaceId } from '../model/group.ts';
import type { Point } from './points.ts';

export type FaceColour = 'gold' | 'red' | 'blue' | 'black' | 'white';

export interface Ring {
  readonly points: number;
  /** To the outer edge of the line, which belongs to the higher zone [m]. */
  readonly radius: number;
}

export interface Face {
  readonly id: FaceId;
  readonly name: string;
  /** Of the full ten-ring face whose rings these are [m]; the printed part ends at `rings[0].radius`. */
  readonly diameter: number;
  /** Outermost first. */
  readonly rings: readonly Ring[];
  /** Radius of the inner ten [m]. */
  readonly innerTen: number;
  /** Colour of a zone; null for a miss. */
  readonly colourOf: (points: number) => FaceColour | null;
}

export interface ShotScore {
  readonly points: number;
  readonly inner: boolean;
}

export interface GroupScore {
  readonly total: number;
  readonly tens: number;
  readonly inner: number;
  readonly misses: number;
}

/** Full diameter [m] and the lowest zone that is printed. A triple is one of its three spots. */
const plans: Record<FaceId, { name: string; diameter: number; lowest: number }> = {
  '122': { name: '122 cm, 10 to 1', diameter: 1.22, lowest: 1 },
  '80': { name: '80 cm, 10 to 1', diameter: 0.8, lowest: 1 },
  '80-six': { name: '80 cm, six rings, 10 to 5', diameter: 0.8, lowest: 5 },
  '60': { name: '60 cm, 10 to 1', diameter: 0.6, lowest: 1 },
  '40': { name: '40 cm, 10 to 1', diameter: 0.4, lowest: 1 },
  '40-triple': { name: '40 cm triple, one spot, 10 to 6', diameter: 0.4, lowest: 6 },
  '60-triple': { name: '60 cm triple, one spot, 10 to 6', diameter: 0.6, lowest: 6 },
};

/** From the outermost pair of zones inwards: 1-2, 3-4, 5-6, 7-8, 9-10. */
const colours: readonly FaceColour[] = ['white', 'black', 'blue', 'red', 'gold'];

/** A shaft that just touches must not lose its line to the last bit of a sum [m]. */
const TOUCH = 1e-9;

/**
 * A target face with its rings.
 *
 * @equation outer diameter of zone n = D (11 - n)/10; inner ten D/20; reduced faces keep the rings of the full face
 * @param id - which face [choice]
 * @returns name, rings outermost first, inner ten and colours [record]
 * @validity the ten-ring faces of 122, 80, 60 and 40 cm and their reduced forms; verify against the current rule book
 * @source wa-rules
 * @example face('80-six').rings[0].radius // 0.24
 */
export function face(id: FaceId): Face {
  const { name, diameter, lowest } = plans[id];
  const rings = Array.from({ length: 11 - lowest }, (_, i) => ({
    points: lowest + i,
    radius: (diameter * (11 - lowest - i)) / 20,
  }));
  const colourOf = (points: number): FaceColour | null => colours[Math.ceil(points / 2) - 1] ?? null;
  return { id, name, diameter, rings, innerTen: diameter / 40, colourOf };
}

/**
 * The score of one shot by the line-cutter rule.
 *
 * @equation the highest zone with √(x² + y²) - shaft radius ≤ ring radius; no zone scores 0
 * @param point - place of the shaft's centre from the centre of the face [m]
 * @param shaftRadius - half the shaft's diameter at the face, ≥ 0 [m]
 * @param face - the face [record]
 * @returns points, and whether the inner ten is touched [record]
 * @validity a place that is not a number or a shaft radius below 0 throws RangeError
 * @source wa-rules
 * @example scoreShot({ x: 0.064, y: 0 }, 0.0035, face('122')).points // 10
 */
export function scoreShot(point: Point, shaftRadius: number, face: Face): ShotScore {
  const reach = Math.hypot(point.x, point.y) - shaftRadius - TOUCH;
  if (!Number.isFinite(reach) || shaftRadius < 0)
    throw new RangeError('A finite place and a shaft radius of 0 or more are needed.');
  const ring = face.rings.findLast(({ radius }) => reach <= radius);
  return { points: ring?.points ?? 0, inner: reach <= face.innerTen };
}

/**
 * The score of a group by the line-cutter rule.
 *
 * @equation sum of the shots' points; counts of tens (inner tens are tens too), inner tens and misses
 * @param points - places of the shafts' centres from the centre of the face [m]
 * @param shaftRadius - half the shaft's diameter at the face, ≥ 0 [m]
 * @param face - the face [record]
 * @returns total, tens, inner tens and misses [record]
 * @validity as for one shot; no shots score 0
 * @source wa-rules
 * @example scoreGroup([{ x: 0, y: 0 }, { x: 0.1, y: 0 }, { x: 1, y: 0 }], 0.003, face('122')) // { "total": 19, "tens": 1, "inner": 1, "misses": 1 }
 */
export function scoreGroup(points: readonly Point[], shaftRadius: number, face: Face): GroupScore {
  const score = { total: 0, tens: 0, inner: 0, misses: 0 };
  for (const point of points) {
    const shot = scoreShot(point, shaftRadius, face);
    score.total += shot.points;
    if (shot.points === 10) score.tens += 1;
    if (shot.inner) score.inner += 1;
    if (shot.points === 0) score.misses += 1;
  }
  return score;
}
