/** Vanes round a shaft, each a trapezium: of a triangle the outer chord is nought. */
export interface Vanes {
  readonly count: number;
  /** Out from the shaft [m]. */
  readonly height: number;
  /** Along the shaft, and along the outer edge [m]. */
  readonly rootChord: number;
  readonly tipChord: number;
  /** How far the outer edge begins behind the root [m]. */
  readonly sweep: number;
  /** Of the shaft [m]. */
  readonly diameter: number;
}

/**
 * How much lift a set of vanes gives for each radian of the nose against the path, on the shaft's cross-section: more than real vanes do.
 *
 * @equation C_Nα = (1 + r/(s + r)) 4 N (s/D)²/(1 + √(1 + (2 l/(c_r + c_t))²)),  r = D/2, l the line through the middles of both chords
 * @param vanes - count N, height s, chords c_r and c_t, sweep and shaft diameter D [m] [record]
 * @returns C_Nα on π D²/4 [-]
 * @validity three or more thin, flat, stiff vanes in clean air at small angles, well below the speed of sound; an upper estimate: real ones bend, sit in the shaft's slow air, and are curved; throws RangeError for a figure below 0 and for a shaft or a root of no size
 * @source barrowman-1967
 * @example vaneLift({ count: 3, height: 0.008, rootChord: 0.04, tipChord: 0.04, sweep: 0, diameter: 0.008 }).toFixed(2) // "7.92"
 */
export function vaneLift(vanes: Vanes): number {
  check(vanes);
  const { count, height, rootChord, tipChord, sweep, diameter } = vanes;
  const radius = diameter / 2;
  const middle = Math.hypot(height, sweep + tipChord / 2 - rootChord / 2);
  const alone = (4 * count * (height / diameter) ** 2) / (1 + Math.hypot(1, (2 * middle) / (rootChord + tipChord)));
  return (1 + radius / (height + radius)) * alone;
}

/**
 * Where the lift of vanes acts.
 *
 * @equation x = (x_s/3)(c_r + 2 c_t)/(c_r + c_t) + (c_r + c_t − c_r c_t/(c_r + c_t))/6,  x_s the sweep
 * @param vanes - height, chords and sweep [m] [record]
 * @returns x, behind the front end of the root [m]
 * @validity as vaneLift
 * @source barrowman-1967
 * @example vaneCentre({ count: 3, height: 0.01, rootChord: 0.04, tipChord: 0.04, sweep: 0, diameter: 0.006 }) // 0.01
 */
export function vaneCentre(vanes: Vanes): number {
  check(vanes);
  const { rootChord, tipChord, sweep } = vanes;
  const both = rootChord + tipChord;
  return (sweep * (rootChord + 2 * tipChord)) / (3 * both) + (both - (rootChord * tipChord) / both) / 6;
}

function check({ count, height, rootChord, tipChord, sweep, diameter }: Vanes): void {
  const sizes = [count, height, tipChord, sweep];
  if (!(sizes.every((size) => size >= 0 && size < Infinity) && rootChord > 0 && diameter > 0 && rootChord + diameter < Infinity))
    throw new RangeError('Vanes of a size of 0 or more on a shaft were expected.');
}
