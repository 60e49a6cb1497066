import type { ArrowSet } from '../model/arrowSet.ts';
import type { Form } from '../model/archer.ts';
import type { Band } from '../model/band.ts';

/** A figure that a flight can do with, and whether somebody measured it. */
export interface Assumable {
  readonly value: number;
  readonly measured: boolean;
}

/** What a shaft measures across when nobody has measured it, by material [m]: from memory, wide on purpose. */
const usualDiameter: Readonly<Record<ArrowSet['material'], Band>> = {
  carbon: { value: 0.006, low: 0.005, high: 0.0075 },
  aluminium: { value: 0.0075, low: 0.006, high: 0.0094 },
  wood: { value: 0.008, low: 0.0075, high: 0.0088 },
  other: { value: 0.007, low: 0.005, high: 0.0094 },
};

/** From the arrow up to the eye, by anchor [m]: from memory. Good enough for a flight, not for a point of aim. */
const usualEyeHeight = { 'under the jaw': 0.115, 'side of the face': 0.08, other: 0.1 } as const;

/**
 * The outer diameter of a shaft, as measured or else the usual one of its material with a wide band.
 *
 * @equation as measured; else carbon 6 (5 to 7.5), aluminium 7.5 (6 to 9.4), wood 8 (7.5 to 8.8), other 7 (5 to 9.4) mm
 * @param arrowSet - diameter [m] and material [record]
 * @returns the diameter with its band [m], and whether it was measured [record]
 * @validity good enough for the drag of a flight
 * @source from memory
 * @example diameterOf({ diameter: null, material: 'carbon' }).high // 0.0075
 */
export function diameterOf(arrowSet: Pick<ArrowSet, 'diameter' | 'material'>): Band & Assumable {
  const { diameter, material } = arrowSet;
  if (diameter === null) return { ...usualDiameter[material], measured: false };
  return { value: diameter, low: diameter, high: diameter, measured: true };
}

/**
 * From the arrow's axis up to the eye at full draw, as measured or else the usual height of the anchor.
 *
 * @equation as measured; else 11.5 cm under the jaw, 8 cm at the side of the face, 10 cm otherwise
 * @param form - eyeHeight [m] and anchor [record]
 * @returns the height [m], and whether it was measured [record]
 * @validity good enough for a flight; a point of aim waits for the measured one
 * @source from memory
 * @example eyeHeightOf({ eyeHeight: null, anchor: 'under the jaw' }).value // 0.115
 */
export function eyeHeightOf(form: Pick<Form, 'eyeHeight' | 'anchor'>): Assumable {
  if (form.eyeHeight === null) return { value: usualEyeHeight[form.anchor ?? 'other'], measured: false };
  return { value: form.eyeHeight, measured: true };
}
