import {
  boundaryLayer,
  coefficientBand,
  type Air,
  type BoundaryLayer,
  type DragAlong,
  dragAlong,
  dragBand,
  dragParameter,
  speedAfter,
} from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import type { FlightSpeed } from '../model/readings.ts';
import type { Result } from '../model/problem.ts';

/** The drag of an arrow, and what it rests on. */
export interface DragFound {
  /** [1/m] */
  readonly drag: Band;
  readonly dragFrom: 'speeds' | 'band';
  /** The least that it can come to anywhere, for how far an arrow could fly: loosed high it slows until the layer may be smooth [1/m]. */
  readonly leastDrag: number;
  /** The coefficient that this drag comes to on the shaft's cross-section [-]. */
  readonly coefficient: Band;
  /** Which boundary layers the arrow may have on the way. */
  readonly layer: BoundaryLayer;
  /** What its speeds along the flight say; null where fewer than two were read. */
  readonly along: Result<DragAlong> | null;
  /** Why they are not used although they agree: they tell less than the band does, or no arrow has such a coefficient. */
  readonly unused: 'wider' | 'no arrow' | null;
}

/** As far as anybody shoots at a target: there the arrow is slowest [m]. */
const FARTHEST = 90;
/** Below and above every arrow: a third less than any that was measured, and great feathers. From memory. */
const believable = { low: 1, high: 4.5 } as const;

/**
 * The drag of an arrow: out of its speeds along the flight where they tell it, else from the boundary layers that its speed allows.
 *
 * @equation k of dragAlong when its readings agree, its band is no wider than the other's and 2 k m/(ρ A) can lie between 1 and 4.5; else k of dragBand, with the least on the thinnest believable shaft and the greatest on the thickest, from the loose to 90 m
 * @param arrow - mass [kg] and diameter with its band [m] [record]
 * @param speed - v, launch speed with its band [m/s]
 * @param air - density [kg/m³] and viscosity [Pa s] [record]
 * @param readings - speeds along the flight [m], [m/s] [list]
 * @returns k [1/m], where it is from, the coefficient it comes to [-], and what the speeds say [record]
 * @validity speeds count in the air they were read in: they are not moved to another
 * @source miyazaki-2013, ortiz-2020
 * @example dragOf({ mass: 0.02, diameter: { value: 0.0055, low: 0.0055, high: 0.0055 } }, { value: 57, low: 56, high: 58 }, { density: 1.225, viscosity: 1.79e-5 }, []).layer // "either"
 */
export function dragOf(
  arrow: { readonly mass: number; readonly diameter: Band },
  speed: Band,
  air: Pick<Air, 'density' | 'viscosity'>,
  readings: readonly FlightSpeed[],
): DragFound {
  const { mass, diameter } = arrow;
  const { density, viscosity } = air;
  const flown = (across: number) => {
    const most = dragParameter(coefficientBand('either').high, across, mass, density);
    return { fastest: speed.high, slowest: speedAfter(speed.low, most, FARTHEST), viscosity };
  };
  const bandOn = (across: number) => dragBand(across, mass, density, flown(across));
  const band = { low: bandOn(diameter.low).low, value: bandOn(diameter.value).value, high: bandOn(diameter.high).high };
  const smooth = dragParameter(coefficientBand('laminar').low, diameter.low, mass, density);
  const coefficientOf = (k: number, across: number) => k / dragParameter(1, across, mass, density);
  const layer = boundaryLayer(diameter.value, density, flown(diameter.value));
  const along = readings.length < 2 ? null : dragAlong(readings);
  const k = along?.ok === true && along.value.holds ? along.value.k : null;
  const coefficient = k === null ? null : coefficients(k, diameter, coefficientOf);
  const unused =
    k === null || coefficient === null
      ? null
      : coefficient.low > believable.high || coefficient.high < believable.low
        ? 'no arrow'
        : k.high - k.low > band.high - band.low
          ? 'wider'
          : null;
  if (k === null || coefficient === null || unused !== null)
    return {
      drag: band,
      dragFrom: 'band',
      leastDrag: Math.min(band.low, smooth),
      coefficient: coefficientBand(layer),
      layer,
      along,
      unused,
    };
  return { drag: k, dragFrom: 'speeds', leastDrag: Math.min(k.low, smooth), coefficient, layer, along, unused };
}

/** The least drag on the thickest shaft is the least coefficient. */
const coefficients = (k: Band, diameter: Band, of: (k: number, across: number) => number): Band => ({
  value: of(k.value, diameter.value),
  low: of(k.low, diameter.high),
  high: of(k.high, diameter.low),
});
