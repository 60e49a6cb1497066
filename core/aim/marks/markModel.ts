import type { Band } from '../../model/band.ts';
import { launchSlope } from './launchSlope.ts';
import type { MarkParameters, MarkPriors, SightScale } from './types.ts';

/** How many arrows settle a mark when nobody counted: two ends of three. From memory. */
export const usualShots = 6;

/** How finely a pin is set and its scale is read, one standard deviation [m]: from memory. */
const setting = 0.25e-3;

/** Half a 95 % interval of a normal figure, in standard deviations. */
export const Z95 = 1.959963984540054;

const sdOf = (band: Band): number => Math.max((band.high - band.low) / (2 * Z95), 1e-6 * Math.abs(band.value), 1e-9);
const logSdOf = (band: Band): number => Math.max(Math.log(band.high / band.low) / (2 * Z95), 1e-6);

/** What is held of ln v, e, ln k and r beforehand, as independent normal figures. */
export interface Held {
  readonly means: readonly [number, number, number, number];
  readonly sds: readonly [number, number, number, number];
}

/**
 * What is held beforehand, as normal figures.
 *
 * @equation mean ln v, e, ln k, r; SD = (high − low)/(2 × 1.96), of the logarithms where they are logarithms
 * @param priors - bands of 95 % [record]
 * @returns means and standard deviations of ln v, e [m], ln k and r [m] [record]
 * @validity speed, drag and sight radius above 0; a band without width is held to a millionth
 * @source own derivation
 * @example heldOf({ ...examplePriors, eyeHeight: { value: 0.12, low: 0.1, high: 0.14 } }).sds[1].toFixed(5) // "0.01020"
 */
export function heldOf(priors: MarkPriors): Held {
  const { speed, eyeHeight, k, sightRadius } = priors;
  return {
    means: [Math.log(speed.value), eyeHeight.value, Math.log(k.value), sightRadius.value],
    sds: [logSdOf(speed), sdOf(eyeHeight), logSdOf(k), sdOf(sightRadius)],
  };
}

/**
 * How far the pin of a mark stands from its true place by chance alone.
 *
 * @equation σ² = (s r)²/n + (0.25 mm)²
 * @param priors - the archer's spread s [rad] and the sight radius r [m] [record]
 * @param shots - n, arrows that settled the mark [-]
 * @returns σ, one standard deviation on the bar [m]
 * @validity independent arrows; the setting of the pin from memory
 * @source own derivation
 * @example markError({ ...examplePriors, spreadPerMetre: 0 }, 6) // 0.00025
 */
export function markError({ spreadPerMetre, sightRadius }: MarkPriors, shots: number): number {
  return Math.hypot((spreadPerMetre * sightRadius.value) / Math.sqrt(shots), setting);
}

/** Whether the scale's numbers grow with the pin's way down. */
const signOf = ({ grows }: SightScale): number => (grows === 'down' ? 1 : -1);

/**
 * A reading as a place on the bar.
 *
 * @equation q = ± reading × unit, + where the numbers grow downward
 * @param reading - in the scale's numbers [-]
 * @param scale - unit [m] and direction [record]
 * @returns the place, downward, from where the scale has its nought [m]
 * @validity any scale
 * @source own derivation
 * @example placeOf(40, { unit: 0.001, grows: 'up' }) // -0.04
 */
export function placeOf(reading: number, scale: SightScale): number {
  return signOf(scale) * reading * scale.unit;
}

/**
 * A place on the bar as a reading.
 *
 * @equation reading = ± q / unit
 * @param place - q, downward, from where the scale has its nought [m]
 * @param scale - unit [m] and direction [record]
 * @returns in the scale's numbers [-]
 * @validity any scale
 * @source own derivation
 * @example readingOf(-0.04, { unit: 0.001, grows: 'up' }) // 40
 */
export function readingOf(place: number, scale: SightScale): number {
  return (signOf(scale) * place) / scale.unit;
}

/**
 * Where the pin stands for a distance.
 *
 * @equation q = q₀ + r tan θ(R; v, e, k)
 * @param parameters - ln v, e, ln k, r and q₀ [list]
 * @param distance - R [m]
 * @returns q, downward, or NaN out of reach [m]
 * @validity level ground, still air
 * @source own derivation
 * @example (1000 * pinPlace([Math.log(57), 0.12, Math.log(0.0010914), 0.85, 0], 50)).toFixed(1) // "69.0"
 */
export function pinPlace(parameters: MarkParameters, distance: number): number {
  const [logSpeed, eyeHeight, logK, sightRadius, zero] = parameters;
  return zero + sightRadius * launchSlope(Math.exp(logSpeed), Math.exp(logK), eyeHeight, distance);
}

const steps = [1e-4, 1e-5, 1e-3] as const;

/**
 * How the pin's place for a distance moves with each unknown.
 *
 * @equation ∂q/∂(ln v, e, ln k, r, q₀), the first three by central differences
 * @param parameters - ln v, e, ln k, r and q₀ [list]
 * @param distance - R [m]
 * @returns the five slopes, or null where an arrow hardly carries [list]
 * @validity level ground, still air
 * @source own derivation
 * @example pinSlopes([Math.log(57), 0.12, Math.log(0.001), 0.85, 0], 50)[4] // 1
 */
export function pinSlopes(parameters: MarkParameters, distance: number): readonly number[] | null {
  const at = (j: number, by: number) =>
    pinPlace(parameters.map((value, i) => (i === j ? value + by : value)) as unknown as MarkParameters, distance);
  const moves = steps.map((step, j) => (at(j, step) - at(j, -step)) / (2 * step));
  const [, , , sightRadius, zero] = parameters;
  const slopes = [...moves, (pinPlace(parameters, distance) - zero) / sightRadius, 1];
  return slopes.every(Number.isFinite) ? slopes : null;
}
