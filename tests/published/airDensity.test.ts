import { describe, expect, it } from 'vitest';
import { airDensity, airOf, airUnsaid, airViscosity, standardAtmosphere } from '../../core/flight/index.ts';

const mmHg = 133.322387415; // conventional millimetre of mercury, NIST SP 811

describe('the density of moist air', () => {
  it('is the worked figure of Gupta, Mass Metrology, p. 205: 10 °C, 730 mmHg, 40 %', () => {
    expect(Math.abs(airDensity(283.15, 730 * mmHg, 0.4) - 1.19569)).toBeLessThan(1e-5);
  });

  // Saturation pressures of the steam tables (IAPWS-95, from memory). As ideal gases; that air holds a little more vapour than a vacuum, and
  // that vapour is no ideal gas, are each worth about half a per cent of the difference and pull apart.
  it.each([
    [20, 2339.3],
    [40, 7384.9],
  ])('falls from dry to saturated at %i °C as the steam tables ask, within 1 %%', (celsius, saturation) => {
    const [dry, wet] = [airDensity(273.15 + celsius, 101325, 0), airDensity(273.15 + celsius, 101325, 1)];
    const share = (dry - wet) / dry / ((1 - 18.015 / 28.965) * (saturation / 101325));
    expect(Math.abs(share - 1)).toBeLessThan(0.01);
  });
});

describe('the standard atmosphere', () => {
  // U.S. Standard Atmosphere 1976, table by geometric height; the row of 1000 m as read, the others from memory.
  it.each([
    [0, 288.15, 101325, 1.225],
    [1000, 281.65, 89876, 1.1117],
    [5000, 255.68, 54048, 0.73643],
    [10000, 223.25, 26500, 0.41351],
  ])('at %i m is the printed row', (altitude, temperature, pressure, density) => {
    const air = standardAtmosphere(altitude);
    expect(Math.abs(air.temperature - temperature)).toBeLessThan(0.006);
    expect(Math.abs(air.pressure / pressure - 1)).toBeLessThan(2e-5);
    expect(Math.abs(air.density / density - 1)).toBeLessThan(5e-5);
  });

  it('and CIPM-2007 agree on dry air at 15 °C within 0.05 %: two published formulas', () => {
    expect(Math.abs(airDensity(288.15, 101325, 0) / standardAtmosphere(0).density - 1)).toBeLessThan(5e-4);
  });
});

// U.S. Standard Atmosphere 1976, table of dynamic viscosity by geometric height: from memory but for the one at sea level.
describe('the viscosity of the air', () => {
  it.each([
    [0, 1.7894e-5],
    [5000, 1.6282e-5],
    [10000, 1.4577e-5],
  ])('at %i m is the printed figure', (altitude, printed) => {
    expect(Math.abs(airViscosity(standardAtmosphere(altitude).temperature) / printed - 1)).toBeLessThan(5e-5);
  });
});

describe('the air as somebody knows it', () => {
  const of = (known: Partial<typeof airUnsaid>) => {
    const air = airOf({ ...airUnsaid, ...known });
    if (!air.ok) throw new Error(air.problem.sentence);
    return air.value;
  };

  it('is the worked figure of Gupta, Mass Metrology, p. 205, told by its temperature, pressure and humidity', () => {
    const air = of({ temperature: 283.15, pressure: 730 * mmHg, humidity: 0.4 });
    expect(Math.abs(air.density - 1.19569)).toBeLessThan(1e-5);
    expect(air.assumed).toEqual([]);
  });

  it('is within the water vapour of the printed density of the standard atmosphere at a height alone (U.S. Standard Atmosphere 1976, 1000 m)', () => {
    const air = of({ altitude: 1000 });
    expect(Math.abs(air.pressure - 89876)).toBeLessThan(1);
    expect(Math.abs(air.temperature - 281.65)).toBeLessThan(0.006);
    // The table is of dry air; half saturated at 8.5 °C is up to 0.3 % lighter.
    expect(air.density / 1.1117).toBeGreaterThan(0.997);
    expect(air.density / 1.1117).toBeLessThan(1);
    expect(air.assumed).toEqual(['temperature', 'humidity']);
  });
});
