import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airDensity,
  dragBand,
  dragCorrelations,
  dragFromSpeeds,
  dragParameter,
  reynoldsNumber,
  standardAtmosphere,
} from '../../../core/flight/index.ts';

const inside = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the air', () => {
  it('is thinner when it is warmer, lower in pressure or moister', () => {
    fc.assert(
      fc.property(inside(250, 320), inside(6e4, 1e5), inside(0.1, 0.8), (temperature, pressure, humidity) => {
        const density = airDensity(temperature, pressure, humidity);
        expect(airDensity(temperature + 5, pressure, humidity)).toBeLessThan(density);
        expect(airDensity(temperature, pressure - 1000, humidity)).toBeLessThan(density);
        expect(airDensity(temperature, pressure, humidity + 0.1)).toBeLessThan(density);
      }),
    );
  });

  it('that is no air is refused: Celsius for kelvin, hectopascal for pascal, per cent for a share, no number', () => {
    for (const [temperature, pressure, humidity] of [
      [15, 101325, 0.5],
      [288, 1013, 0.5],
      [288, 101325, 50],
      [NaN, 101325, 0.5],
    ] as const)
      expect(() => airDensity(temperature, pressure, humidity)).toThrow(RangeError);
    expect(() => standardAtmosphere(NaN)).toThrow(RangeError);
    expect(() => standardAtmosphere(20_000)).toThrow(RangeError);
  });
});

describe('the drag', () => {
  it('has the coefficients that were measured (Miyazaki 2013; Ortiz 2020)', () => {
    expect(dragCorrelations.map((row) => [row.coefficient, row.source])).toEqual([
      [1.5, 'miyazaki-2013'],
      [2.6, 'miyazaki-2013'],
      [1.56, 'ortiz-2020'],
      [2.05, 'ortiz-2020'],
    ]);
  });

  it('is always a band, from the laminar to the turbulent coefficient', () => {
    fc.assert(
      fc.property(inside(0.003, 0.014), inside(0.005, 0.1), inside(0.9, 1.4), (diameter, mass, density) => {
        const band = dragBand(diameter, mass, density);
        expect(band.low).toBeLessThan(band.value);
        expect(band.value).toBeLessThan(band.high);
        expect(band.high / band.low).toBeCloseTo(2.6 / 1.5, 12);
        expect(band.low).toBeCloseTo(dragParameter(1.5, diameter, mass, density), 15);
      }),
    );
  });

  it('comes back from two speeds of the flight it slows', () => {
    fc.assert(
      fc.property(inside(0.0003, 0.005), inside(30, 80), inside(5, 60), (k, speed, path) => {
        const fitted = dragFromSpeeds(speed, speed * Math.exp(-k * path), path);
        expect(fitted.ok && fitted.value).toBeCloseTo(k, 10);
      }),
    );
  });

  // 287, 277, 266 and 255 ft/s at 0, 20, 30 and 40 yd: the stretches imply drag that differs 2.4 times, so the first reading is wrong (computed independently).
  it('shows an inconsistent chronograph by stretches that disagree 2.4 times', () => {
    const [ft, yd] = [0.3048, 0.9144];
    const fit = (near: number, far: number, path: number) => {
      const k = dragFromSpeeds(near * ft, far * ft, path * yd);
      return k.ok ? k.value : NaN;
    };
    const stretches = [fit(287, 277, 20), fit(277, 266, 10), fit(266, 255, 10)];
    expect(Math.max(...stretches) / Math.min(...stretches)).toBeCloseTo(2.4, 1);
  });

  it('is refused when the arrow would have gained speed, or a figure is no number', () => {
    expect(dragFromSpeeds(50, 51, 20)).toMatchObject({ ok: false, problem: { code: 'speed-gained' } });
    expect(dragFromSpeeds(NaN, 51, 20)).toMatchObject({ ok: false, problem: { code: 'not-a-speed' } });
    expect(dragFromSpeeds(50, 49, 0)).toMatchObject({ ok: false, problem: { code: 'not-a-speed' } });
  });

  // Ortiz 2020: shots near 56.4 m/s fly at an average Re of 1.8e4, so the diameter was near 5 mm.
  it('of an arrow at target speed falls where the boundary layer changes over', () => {
    expect(reynoldsNumber(56.4, 0.005, 1.2)).toBeGreaterThan(1e4);
    expect(reynoldsNumber(56.4, 0.005, 1.2)).toBeLessThan(2e4);
  });
});
