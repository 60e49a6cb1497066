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

/**
 * The Reynolds number of an arrow, on its diameter: which boundary layers are possible.
 *
 * @equation Re_D = ρ v D / µ,  µ = 1.7894e-5 Pa s at 15 °C
 * @param speed - v [m/s]
 * @param diameter - D, outer diameter of the shaft [m]
 * @param density - ρ, of the air [kg/m³]
 * @returns Re_D [-]
 * @validity air near 15 °C: the viscosity changes by 3 % in 10 °C
 * @source us-standard-atmosphere-1976
 * @example reynoldsNumber(57, 0.0055, 1.225) // 21461.802838940428
 */
export function reynoldsNumber(speed: number, diameter: number, density: number): number {
  return (density * speed * diameter) / 1.7894e-5;
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
 * The drag parameter of a fletched arrow with what is not known about it: from a boundary layer that stays laminar to one that is turbulent.
 *
 * @equation k = ½ ρ C_D A / m with C_D = 1.5, 2.05 and 2.6
 * @param diameter - D, outer diameter of the shaft [m]
 * @param mass - m, of the whole arrow [kg]
 * @param density - ρ, of the air [kg/m³]
 * @returns low, high and the middle between them as the value [1/m]
 * @validity arrows near Re 1e4 to 4e4, where either boundary layer is found; feathers may lie above: then fit k to two speeds
 * @source miyazaki-2013
 * @example dragBand(0.01, 0.02, 8 / Math.PI).low // 0.0075
 */
export function dragBand(diameter: number, mass: number, density: number): Band {
  const [laminar, turbulent] = [dragCorrelations[0].coefficient, dragCorrelations[1].coefficient];
  const k = (coefficient: number) => dragParameter(coefficient, diameter, mass, density);
  return { value: k((laminar + turbulent) / 2), low: k(laminar), high: k(turbulent) };
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
