/**
 * What a move of the pin is on the face.
 *
 * @equation b = Δq R/r
 * @param pin - Δq, along the bar [m]
 * @param distance - R [m]
 * @param sightRadius - r, from the eye to the pin [m]
 * @returns b, up or down on the face [m]
 * @validity small moves near the level; throws RangeError for a radius that is not above 0
 * @source own derivation
 * @example onFace(0.001, 50, 0.8) // 0.0625
 */
export function onFace(pin: number, distance: number, sightRadius: number): number {
  if (!(sightRadius > 0)) throw new RangeError('A sight radius above 0 was expected.');
  return (pin * distance) / sightRadius;
}
