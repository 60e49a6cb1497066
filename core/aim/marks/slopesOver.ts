import { launchSlope } from './launchSlope.ts';

/** Nearer than this the eye's height bends the curve too sharply to read between few places [m]. */
const nearest = 8;
const PLACES = 14;

/** Steeper than this an arrow comes near the end of its reach, where the curve is no polynomial. */
const steepest = 0.45;

/** The slopes for one arrow after another at the same distances. */
export type SlopesOf = (speed: number, k: number, eyeHeight: number) => Float64Array;

/**
 * Launch slopes at many distances, at the price of few.
 *
 * @equation R tan θ(R) as the polynomial through its values at 14 Chebyshev places (barycentric form); one by one nearer than 8 m or steeper than 0.45
 * @param distances - R, ascending [m]
 * @returns what gives the slopes for a speed, a drag parameter and an eye height; the same list each time [function]
 * @validity as `launchSlope` to 1e-6, NaN out of reach
 * @source berrut-trefethen-2004
 * @example slopesOver([18, 30])(57, 0.001, 0.12)[0].toFixed(4) // "0.0342"
 */
export function slopesOver(distances: readonly number[]): SlopesOf {
  const slopes = new Float64Array(distances.length);
  const far = distances.findIndex((distance) => distance >= nearest);
  const one = (from: number, to: number, speed: number, k: number, eyeHeight: number) => {
    for (let i = from; i < to; i++) slopes[i] = launchSlope(speed, k, eyeHeight, distances[i] ?? NaN);
  };
  if (far < 0 || distances.length - far <= PLACES)
    return (speed, k, eyeHeight) => {
      one(0, distances.length, speed, k, eyeHeight);
      return slopes;
    };
  const [low, high] = [distances[far] ?? NaN, distances.at(-1) ?? NaN];
  const places = Array.from({ length: PLACES }, (_, j) => {
    return (low + high) / 2 + ((high - low) / 2) * Math.cos((Math.PI * (j + 0.5)) / PLACES);
  });
  const rows = distances.slice(far).map((distance) => rowFor(distance, places));
  const known = new Float64Array(PLACES);
  return (speed, k, eyeHeight) => {
    one(0, far, speed, k, eyeHeight);
    for (let j = 0; j < PLACES; j++) known[j] = (places[j] ?? NaN) * launchSlope(speed, k, eyeHeight, places[j] ?? NaN);
    // The first place is the farthest: what carries there without steepness carries everywhere.
    if (!((known[0] ?? NaN) <= steepest * (places[0] ?? NaN))) {
      one(far, distances.length, speed, k, eyeHeight);
      return slopes;
    }
    for (let i = 0; i < rows.length; i++) {
      const row = rows[i] as Float64Array;
      let sum = 0;
      for (let j = 0; j < PLACES; j++) sum += (row[j] ?? 0) * (known[j] ?? 0);
      slopes[far + i] = sum / (distances[far + i] ?? NaN);
    }
    return slopes;
  };
}

/** By how much each place counts at one distance. */
function rowFor(distance: number, places: readonly number[]): Float64Array {
  const parts = places.map((place, j) => ((-1) ** j * Math.sin((Math.PI * (j + 0.5)) / PLACES)) / (distance - place));
  const met = places.indexOf(distance);
  if (met >= 0) return Float64Array.from(places, (_, j) => (j === met ? 1 : 0));
  const whole = parts.reduce((sum, part) => sum + part, 0);
  return Float64Array.from(parts, (part) => part / whole);
}
