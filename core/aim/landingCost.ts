import { expectedScore, type ExpectedScore, type Face, type Point, type Scatter } from '../group/index.ts';
import type { Band } from '../model/band.ts';
import { bandOver, type Corners } from './bands.ts';

/** What it costs to strike beside the middle. */
export interface LandingCost {
  /** One arrow with its group on the middle. */
  readonly atMiddle: ExpectedScore;
  /** One arrow with its group where it comes to lie. */
  readonly there: ExpectedScore;
  /** Its points with every launch of the band. */
  readonly points: Band;
}

/**
 * What one arrow scores on average with its group on the middle of the face and with it where it comes to lie.
 *
 * @equation expectedScore of the archer's scatter about the middle, and about each place
 * @param place - of the middle of the group from that of the face [m], with its corners [record]
 * @param spread - one standard deviation across and up of the archer's own arrows there [m]
 * @param shaftRadius - half the shaft's diameter [m]
 * @param face - the face [record]
 * @returns the two scores, and the band of the second over the corners [record]
 * @validity normal scatter with axes across and up; where the band of the place holds the middle the best score in it may lie a little above the band told
 * @source wa-rules; own derivation
 * @example landingCost({ value: { x: 0.1, y: 0 }, corners: [] }, [0.00001, 0.00001], 0.003, face('122')).there.points // 9
 */
export function landingCost(place: Corners<Point>, spread: Scatter['spread'], shaftRadius: number, face: Face): LandingCost {
  const scoreAt = (offset: Point): ExpectedScore => expectedScore({ spread, offset }, shaftRadius, face);
  const there = scoreAt(place.value);
  const corners = place.corners.map((corner) => scoreAt(corner).points);
  return {
    atMiddle: scoreAt({ x: 0, y: 0 }),
    there,
    points: bandOver({ value: there.points, corners }, (points) => points),
  };
}
