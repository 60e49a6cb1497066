import { peak } from '../../flight/index.ts';
import { launchSlope } from './launchSlope.ts';

const [nearest, farthest] = [1, 60];

/**
 * The distance at which the pin stands highest: nearer than this the readings turn back, because the eye is above the arrow.
 *
 * @equation least tan θ(R), near v √(2 e/g)
 * @param speed - v, launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @param eyeHeight - e, from the arrow's axis up to the eye [m]
 * @returns R, or 1 where it lies nearer than that [m]
 * @validity level ground, still air; to 0.01 m between 1 and 60 m
 * @source own derivation
 * @example turningDistance(57, 0.001, 0.12).toFixed(0) // "9"
 */
export function turningDistance(speed: number, k: number, eyeHeight: number): number {
  const high = (distance: number) => {
    const slope = launchSlope(speed, k, eyeHeight, distance);
    return Number.isFinite(slope) ? -slope : -distance;
  };
  return peak(high, nearest, farthest, 0.005);
}
