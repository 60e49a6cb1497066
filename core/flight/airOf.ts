import { given as believable } from '../model/given.ts';
import { defaultPreferences, type UnitChoice } from '../model/preferences.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { textQuantity } from '../units/index.ts';
import { airDensity, airViscosity, standardAtmosphere, standingAir } from './air.ts';

/** What somebody knows of the air; null where nobody does. */
export interface AirGiven {
  /** [K] */
  readonly temperature: number | null;
  /** As a barometer on the spot reads it, not reduced to sea level [Pa]. */
  readonly pressure: number | null;
  /** Of the range above the sea [m]. */
  readonly altitude: number | null;
  /** 0 to 1 [-]. */
  readonly humidity: number | null;
}

/** The air that an arrow flies through. */
export interface Air {
  readonly temperature: number;
  readonly pressure: number;
  readonly humidity: number;
  /** [kg/m³] */
  readonly density: number;
  /** [Pa s] */
  readonly viscosity: number;
  /** What nobody gave, and an ordinary figure stands for. */
  readonly assumed: readonly ('temperature' | 'pressure' | 'humidity')[];
}

/** Nobody said anything of the air. */
export const airUnsaid: AirGiven = { temperature: null, pressure: null, altitude: null, humidity: null };

/** What the weather makes of the standard pressure of a height, at most: from memory, records a little beyond. */
const weather = { least: 0.92, most: 1.06 } as const;

/**
 * The air from what is known of it: temperature, the pressure or else the height above the sea, and the humidity if anybody knows it.
 *
 * @equation ρ of airDensity, µ of airViscosity; a blank temperature or pressure is the standard atmosphere's at the height, sea level when that is blank too; a blank humidity is a half
 * @param known - temperature [K], pressure [Pa], altitude [m] and humidity [-], each null where it is not known [record]
 * @param units - the person's choice of units, for the sentences; the default when left out [record]
 * @returns temperature [K], pressure [Pa], humidity [-], density [kg/m³], viscosity [Pa s] and what was assumed; or a refusal that says what was expected [record]
 * @validity −30 to 50 °C, 500 to 1090 hPa, −450 to 5500 m; a pressure that the height cannot have is refused, since a forecast gives it reduced to sea level
 * @source picard-2008
 * @example airOf({ temperature: 283.15, pressure: 97325, altitude: null, humidity: 0.4 }).value.density.toFixed(5) // "1.19569"
 */
export function airOf(known: AirGiven, units: UnitChoice = defaultPreferences.units): Result<Air> {
  const height = known.altitude ?? 0;
  const there = believable('the air', { altitude: height });
  if (!there.ok) return there;
  const standard = standardAtmosphere(height);
  const figures = believable('the air', {
    airTemperature: known.temperature ?? (known.altitude === null ? standingAir.temperature : standard.temperature),
    airPressure: known.pressure ?? standard.pressure,
    humidity: known.humidity ?? standingAir.relativeHumidity,
  });
  if (!figures.ok) return figures;
  const { airTemperature: temperature, airPressure: pressure, humidity } = figures.value;
  const share = pressure / standard.pressure;
  if (known.altitude !== null && !(share >= weather.least && share <= weather.most))
    return refuse(
      'pressure against height',
      `At ${textQuantity(height, 'altitude', units)} a barometer reads about ${textQuantity(standard.pressure, 'pressure', units)}, and a forecast’s figure is for sea level: leave it out.`,
      'airPressure',
    );
  const assumed = (
    [
      ['temperature', known.temperature === null],
      ['pressure', known.pressure === null && known.altitude === null],
      ['humidity', known.humidity === null],
    ] as const
  ).flatMap(([name, blank]) => (blank ? [name] : []));
  return ok({
    temperature,
    pressure,
    humidity,
    density: airDensity(temperature, pressure, humidity),
    viscosity: airViscosity(temperature),
    assumed,
  });
}
