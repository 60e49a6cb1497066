import { levelReach } from './levelReach.ts';
import { peak } from './peak.ts';

// Drag and the height of the bow both lower the best angle below 45 degrees, never above it.
const [flattest, steepest] = [0.1, Math.PI / 4 + 0.01];

/**
 * The greatest distance that an arrow reaches over level ground, loosed at the worst angle.
 *
 * @equation R = max over θ of x where the flight is down at y = −h
 * @param speed - v₀, launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @param height - h, of the bow above the ground, ≥ 0 [m]
 * @returns R, along the ground [m]
 * @validity still air, a solid arrow that flies along its path; throws RangeError for a negative height and where `trajectory` does
 * @source own derivation
 * @example greatestReach(9.80665, 0, 0).toFixed(3) // "9.807"
 */
export function greatestReach(speed: number, k: number, height: number): number {
  const reach = (elevation: number): number => levelReach(speed, k, elevation, height);
  return reach(peak(reach, flattest, steepest, 1e-4));
}
