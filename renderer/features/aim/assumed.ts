import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { Form } from '../../../core/model/archer.ts';
import type { Band } from '../../../core/model/band.ts';

/** What a shaft measures across when nobody has measured it, by material [m]: from memory, wide on purpose. */
const usualDiameter: Readonly<Record<ArrowSet['material'], Band>> = {
  carbon: { value: 0.006, low: 0.005, high: 0.0075 },
  aluminium: { value: 0.0075, low: 0.006, high: 0.0094 },
  wood: { value: 0.008, low: 0.0075, high: 0.0088 },
  other: { value: 0.007, low: 0.005, high: 0.0094 },
};

/** From the arrow up to the eye, by anchor [m]: from memory. Good enough for a flight, not for a point of aim. */
const usualEyeHeight = { 'under the jaw': 0.115, 'side of the face': 0.08, other: 0.1 } as const;

export interface Assumable {
  readonly value: number;
  readonly measured: boolean;
}

export const diameterOf = (arrowSet: ArrowSet): Band & Assumable =>
  arrowSet.diameter === null
    ? { ...usualDiameter[arrowSet.material], measured: false }
    : { value: arrowSet.diameter, low: arrowSet.diameter, high: arrowSet.diameter, measured: true };

export const eyeHeightOf = (form: Form): Assumable =>
  form.eyeHeight === null
    ? { value: usualEyeHeight[form.anchor ?? 'other'], measured: false }
    : { value: form.eyeHeight, measured: true };
