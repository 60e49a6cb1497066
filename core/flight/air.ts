import { standardGravity } from '../units/exact.ts';

/** The air when nobody has said otherwise: 15 °C, 101325 Pa, half saturated. */
export const standingAir = { temperature: 288.15, pressure: 101325, relativeHumidity: 0.5 } as const;

const freezing = 273.15;

/**
 * The density of moist air, CIPM-2007.
 *
 * @equation ρ = p M_a (1 − x_v (1 − M_v/M_a)) / (Z R T),  x_v = h f(p, t) p_sv(T) / p
 * @param temperature - T [K]
 * @param pressure - p, as a barometer on the spot reads it and not reduced to sea level [Pa]
 * @param relativeHumidity - h, 0 to 1 [-]
 * @returns ρ, with 0.04 % of CO₂ in the air [kg/m³]
 * @validity stated for 15 to 27 °C and 600 to 1100 hPa, where it is good to 22 in a million; used here from −40 to 60 °C and 300 to 1100 hPa, beyond which it throws RangeError
 * @source picard-2008
 * @example airDensity(283.15, 97325, 0.4).toFixed(5) // "1.19569"
 */
export function airDensity(
  temperature: number = standingAir.temperature,
  pressure: number = standingAir.pressure,
  relativeHumidity: number = standingAir.relativeHumidity,
): number {
  const inRange =
    temperature >= 233.15 &&
    temperature <= 333.15 &&
    pressure >= 3e4 &&
    pressure <= 1.1e5 &&
    relativeHumidity >= 0 &&
    relativeHumidity <= 1;
  if (!inRange)
    throw new RangeError('Air between -40 and 60 °C, 300 and 1100 hPa, and a humidity between 0 and 1 were expected.');

  const [T, p, t] = [temperature, pressure, temperature - freezing];
  const saturation = Math.exp(1.2378847e-5 * T * T - 1.9121316e-2 * T + 33.93711047 - 6.3431645e3 / T);
  const enhancement = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
  const x = (relativeHumidity * enhancement * saturation) / p;
  const first =
    1.58123e-6 - 2.9331e-8 * t + 1.1043e-10 * t * t + (5.707e-6 - 2.051e-8 * t) * x + (1.9898e-4 - 2.376e-6 * t) * x * x;
  const compressibility = 1 - (p / T) * first + (p / T) ** 2 * (1.83e-11 - 0.765e-8 * x * x);
  const [dryMolarMass, waterMolarMass, gasConstant] = [28.96546e-3, 18.01528e-3, 8.314472];
  return ((p * dryMolarMass) / (compressibility * gasConstant * T)) * (1 - x * (1 - waterMolarMass / dryMolarMass));
}

/**
 * The viscosity of air, after Sutherland.
 *
 * @equation µ = β T^(3/2)/(T + S),  β = 1.458e-6,  S = 110.4 K
 * @param temperature - T [K]
 * @returns µ, which the pressure hardly changes [Pa s]
 * @validity 100 to 1000 K; throws RangeError below 100 K and above 1000 K
 * @source us-standard-atmosphere-1976
 * @example airViscosity(288.15).toExponential(4) // "1.7894e-5"
 */
export function airViscosity(temperature: number): number {
  if (!(temperature >= 100 && temperature <= 1000)) throw new RangeError('A temperature between 100 and 1000 K was expected.');
  return (1.458e-6 * temperature ** 1.5) / (temperature + 110.4);
}

/** Temperature [K], pressure [Pa] and density [kg/m³] of the air at some height. */
export interface AirState {
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
}

/**
 * The U.S. Standard Atmosphere 1976 in the troposphere: for a range whose height is known and whose weather is not.
 *
 * @equation H = r₀ Z/(r₀ + Z),  T = T₀ − L H,  p = p₀ (T/T₀)^(g M/(R L)),  ρ = p M/(R T)
 * @param altitude - Z, height above sea level [m]
 * @returns temperature, pressure and density [record]
 * @validity −500 to 11000 m, dry air; throws RangeError elsewhere
 * @source us-standard-atmosphere-1976
 * @example standardAtmosphere(0).pressure // 101325
 */
export function standardAtmosphere(altitude: number): AirState {
  if (!(altitude >= -500 && altitude <= 11_000)) throw new RangeError('A height between -500 and 11000 m was expected.');
  const [molarMass, gasConstant, lapse, earthRadius] = [28.9644e-3, 8.31432, 6.5e-3, 6_356_766];
  const geopotential = (earthRadius * altitude) / (earthRadius + altitude);
  const temperature = 288.15 - lapse * geopotential;
  const pressure = 101325 * (temperature / 288.15) ** ((standardGravity * molarMass) / (gasConstant * lapse));
  return { temperature, pressure, density: (pressure * molarMass) / (gasConstant * temperature) };
}
