import { type Result, ok, refuse } from '../model/problem.ts';
import type { SourceKey } from '../sources.ts';
import type { Band } from '../model/band.ts';

/** A measured drag coefficient on the shaft's cross-section, and the Reynolds numbers (of the diameter) at which it holds. */
export interface DragCorrelation {
  readonly name: string;
  readonly coefficient: number;
  readonly reynolds: { readonly from: number; readonly to: number | null };
  readonly source: SourceKey;
}

/** The boundary layer along the shaft changes over somewhere between Re 1e4 and 2e4, where arrows fly: hence never one constant. */
export const dragCorrelations = [
  { name: 'boundary layer laminar', coefficient: 1.5, reynolds: { from: 0, to: 2e4 }, source: 'miyazaki-2013' },
  { name: 'boundary layer turbulent', coefficient: 2.6, reynolds: { from: 1e4, to: null }, source: 'miyazaki-2013' },
  { name: 'small straight vanes', coefficient: 1.56, reynolds: { from: 1.2e4, to: 1.2e4 }, source: 'ortiz-2020' },
  { name: 'large straight vanes', coefficient: 2.05, reynolds: { from: 1.2e4, to: 1.2e4 }, source: 'ortiz-2020' },
] as const satisfies readonly DragCorrelation[];

/** How fast the arrow flies between the loose and the target, and what it flies through. */
export interface FlownAt {
  /** [m/s] */
  readonly fastest: number;
  readonly slowest: number;
  /** Of the air [Pa s]; at 15 °C when left out. */
  readonly viscosity?: number;
}

/** Which boundary layers are possible somewhere on the way. */
export type BoundaryLayer = 'laminar' | 'either' | 'turbulent';

const [laminar, turbulent, , largeVanes] = dragCorrelations;
/** Below the one nobody has seen a turbulent boundary layer on an arrow, above the other no laminar one. */
const changesOver = { from: turbulent.reynolds.from, to: laminar.reynolds.to } as const;
const at15 = 1.7894e-5;

/**
 * The Reynolds number of an arrow, on its diameter: which boundary layers are possible.
 *
 * @equation Re_D = ρ v D / µ,  µ = 1.7894e-5 Pa s at 15 °C
 * @param speed - v [m/s]
 * @param diameter - D, outer diameter of the shaft [m]
 * @param density - ρ, of the air [kg/m³]
 * @param viscosity - µ, of the air; at 15 °C when left out [Pa s]
 * @returns Re_D [-]
 * @validity any speed and diameter above 0
 * @source us-standard-atmosphere-1976
 * @example reynoldsNumber(57, 0.0055, 1.225) // 21461.802838940428
 */
export function reynoldsNumber(speed: number, diameter: number, density: number, viscosity: number = at15): number {
  return (density * speed * diameter) / viscosity;
}

/**
 * The drag parameter of an arrow: how fast it loses speed, per metre and as a share.
 *
 * @equation k = ½ ρ C_D A / m,  A = π D²/4
 * @param coefficient - C_D, on the shaft's cross-section [-]
 * @param diameter - D, outer diameter of the shaft [m]
 * @param mass - m, of the whole arrow [kg]
 * @param density - ρ, of the air [kg/m³]
 * @returns k [1/m]
 * @validity an arrow that flies along its path
 * @source miyazaki-2013
 * @example dragParameter(8 / Math.PI, 0.01, 0.02, 1) // 0.005
 */
export function dragParameter(coefficient: number, diameter: number, mass: number, density: number): number {
  return (density * coefficient * Math.PI * diameter ** 2) / (8 * mass);
}

/**
 * Which boundary layers an arrow may have between the loose and the target.
 *
 * @equation laminar when Re_D stays below 1e4, turbulent when it stays above 2e4, else either
 * @param diameter - D, outer diameter of the shaft [m]
 * @param density - ρ, of the air [kg/m³]
 * @param flown - fastest and slowest [m/s] and the air's viscosity [Pa s] [record]
 * @returns the layer [choice]
 * @validity a smooth flight: a shaft that wobbles or vibrates may turn turbulent earlier
 * @source miyazaki-2013
 * @example boundaryLayer(0.0055, 1.225, { fastest: 60, slowest: 50 }) // "either"
 */
export function boundaryLayer(diameter: number, density: number, flown: FlownAt): BoundaryLayer {
  const reynolds = (speed: number) => reynoldsNumber(speed, diameter, density, flown.viscosity);
  if (reynolds(flown.fastest) < changesOver.from) return 'laminar';
  return reynolds(flown.slowest) > changesOver.to ? 'turbulent' : 'either';
}

const ends: Readonly<Record<BoundaryLayer, readonly [low: number, high: number]>> = {
  laminar: [laminar.coefficient, largeVanes.coefficient],
  either: [laminar.coefficient, turbulent.coefficient],
  turbulent: [largeVanes.coefficient, turbulent.coefficient],
};

/**
 * The drag coefficient of a fletched arrow with what is not known of it, by the boundary layers that are possible.
 *
 * @equation laminar: C_D from 1.5 to that of large vanes, 2.05; turbulent: from 2.05 to 2.6; either: from 1.5 to 2.6
 * @param layer - the boundary layers that are possible [choice]
 * @returns low, high and the middle between them as the value [-]
 * @validity straight vanes; feathers may lie above: then measure speeds along the flight
 * @source miyazaki-2013, ortiz-2020
 * @example coefficientBand('laminar').high // 2.05
 */
export function coefficientBand(layer: BoundaryLayer): Band {
  const [low, high] = ends[layer];
  return { value: (low + high) / 2, low, high };
}

/**
 * The drag parameter of a fletched arrow with what is not known about it, from the boundary layers that its speeds allow.
 *
 * @equation k = ½ ρ C_D A / m with C_D of coefficientBand; either layer when the speeds are left out
 * @param diameter - D, outer diameter of the shaft [m]
 * @param mass - m, of the whole arrow [kg]
 * @param density - ρ, of the air [kg/m³]
 * @param flown - fastest and slowest on the way [m/s] and the air's viscosity [Pa s] [record]
 * @returns low, high and the middle between them as the value [1/m]
 * @validity as coefficientBand
 * @source miyazaki-2013, ortiz-2020
 * @example dragBand(0.01, 0.02, 8 / Math.PI).low // 0.0075
 */
export function dragBand(diameter: number, mass: number, density: number, flown?: FlownAt): Band {
  const band = coefficientBand(flown === undefined ? 'either' : boundaryLayer(diameter, density, flown));
  const k = (coefficient: number) => dragParameter(coefficient, diameter, mass, density);
  return { value: k(band.value), low: k(band.low), high: k(band.high) };
}

/**
 * The drag parameter out of two measured speeds of the same arrow.
 *
 * @equation k = ln(v₁/v₂) / s
 * @param near - v₁, speed at the first place [m/s]
 * @param far - v₂, speed further on [m/s]
 * @param path - s, path between the two places [m]
 * @returns k, or a refusal when the arrow would have gained speed [1/m]
 * @validity flat flight in still air
 * @source own derivation
 * @example dragFromSpeeds(60, 60 / Math.E, 1000).value // 0.001
 */
export function dragFromSpeeds(near: number, far: number, path: number): Result<number> {
  if (!(near > 0 && far > 0 && path > 0 && Number.isFinite(near + far + path)))
    return refuse('not-a-speed', 'Two speeds above 0 and the distance between the two places were expected.', 'arrowSpeed');
  if (far > near)
    return refuse(
      'speed-gained',
      'The speed further on is the higher of the two: an arrow only slows down. Measure both again.',
      'arrowSpeed',
    );
  return ok(Math.log(near / far) / path);
}
