/** Nobody is led to raise the bow further than this [rad]: about 20 degrees. From memory. */
export const highestOffered = 0.35;

/**
 * What must be said where a shot asks for a bow that is raised far, level or up a hill.
 *
 * @equation from 0.35 rad on a caution; below it nothing
 * @param elevation - θ, launch angle above the horizontal [rad]
 * @returns a sentence, or null [text]
 * @validity any launch angle; it never says that a lesser one is harmless
 * @source common practice
 * @example raisedCaution(0.1) // null
 */
export function raisedCaution(elevation: number): string | null {
  if (!(elevation >= highestOffered)) return null;
  const degrees = Math.round((elevation * 180) / Math.PI);
  return `The bow is raised by ${degrees}°: an arrow that passes the butt may fly as far as it can. Never without a bank or rising ground high behind the butt; the range officer decides.`;
}
