import { standardGravity } from '../units/exact.ts';

/**
 * How far an arrow would carry without air, back to the height it left.
 *
 * @equation R = v₀² sin 2θ / g
 * @param speed - v₀, launch speed [m/s]
 * @param elevation - θ, launch angle above the horizontal [rad]
 * @returns R, range [m]
 * @validity no air, level ground; an upper bound for a real arrow
 * @source own derivation
 * @example vacuumRange(9.80665, Math.PI / 4) // 9.80665
 */
export function vacuumRange(speed: number, elevation: number): number {
  return (speed ** 2 * Math.sin(2 * elevation)) / standardGravity;
}

/**
 * The speed left after a stretch of path, with quadratic drag and without gravity.
 *
 * @equation v = v₀ e^(−k s)
 * @param speed - v₀, speed at the start of the stretch [m/s]
 * @param k - drag parameter [1/m]
 * @param path - s, length of the stretch [m]
 * @returns v, speed at its end [m/s]
 * @validity flat flight, where gravity changes the speed little; k constant along the stretch
 * @source own derivation
 * @example speedAfter(60, 0.001, 0) // 60
 */
export function speedAfter(speed: number, k: number, path: number): number {
  return speed * Math.exp(-k * path);
}

/**
 * The time of a flat flight over a distance, with quadratic drag and without gravity.
 *
 * @equation t = (e^(k x) − 1) / (k u),  x / u when k = 0
 * @param speed - u, horizontal launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @param distance - x [m]
 * @returns t, time of flight [s]
 * @validity flat flight
 * @source own derivation
 * @example flatFireTime(50, 0, 100) // 2
 */
export function flatFireTime(speed: number, k: number, distance: number): number {
  return k === 0 ? distance / speed : Math.expm1(k * distance) / (k * speed);
}

/**
 * How high an arrow rises that is shot straight up. For the check of the trajectory: never shoot upward.
 *
 * @equation h = ln(1 + k v₀²/g) / (2k),  v₀²/(2g) when k = 0
 * @param speed - v₀, launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @returns h, height gained [m]
 * @validity still air, quadratic drag with constant k
 * @source own derivation
 * @example verticalHeight(9.80665, 0) // 4.903325
 */
export function verticalHeight(speed: number, k: number): number {
  return k === 0 ? speed ** 2 / (2 * standardGravity) : Math.log1p((k * speed ** 2) / standardGravity) / (2 * k);
}
