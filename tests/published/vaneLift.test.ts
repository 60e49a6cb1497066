import { describe, expect, it } from 'vitest';
import { vaneCentre, vaneLift, type Vanes } from '../../core/flight/index.ts';

/** The area that lift coefficients are told on: the shaft's cross-section. */
const section = (diameter: number) => (Math.PI * diameter ** 2) / 4;
/** On a shaft as thin as a hair there is no body to interfere. */
const hair = 1e-9;

describe('the lift of vanes beside theories of wings', () => {
  // R. T. Jones 1946 (NACA Report 835, from memory): a wing of vanishing aspect ratio lifts π A/2 on its area, so 2 π s² over the half span s.
  it('is that of a slender wing, 2 π s² for each pair, when the vanes are very low', () => {
    const [height, chord] = [1e-4, 1];
    const four = vaneLift({ count: 4, height, rootChord: chord, tipChord: chord, sweep: 0, diameter: hair }) * section(hair);
    expect(Math.abs(four / (2 * Math.PI * height ** 2) - 1)).toBeLessThan(1e-4);
  });

  // Thin aerofoils (any textbook on aerodynamics): 2 π on the area of the wing.
  it('is that of a thin aerofoil, 2 π on the area of each pair, when the vanes are very high', () => {
    const [height, chord] = [1, 1e-4];
    const four = vaneLift({ count: 4, height, rootChord: chord, tipChord: chord, sweep: 0, diameter: hair }) * section(hair);
    expect(Math.abs(four / (2 * Math.PI * 2 * height * chord) - 1)).toBeLessThan(2e-4);
  });

  // Barrowman 1967 builds a fin on Diederich's formula for a swept wing: C_Nα = 2 π A (S/A_r)/(2 + √(4 + (A/cos Γ)²)), Γ the sweep of the
  // line through the middles of the chords, and N/2 of it for N fins; times 1 + r/(s + r) for the body. Worked here by that form.
  it.each([
    [3, 0.009, 0.045, 0.015, 0.02, 0.0058],
    [3, 0.013, 0.1, 0, 0.09, 0.0079],
    [4, 0.02, 0.03, 0.03, 0, 0.0093],
  ])('is what the swept wing of the thesis has: %i vanes %f m high', (count, height, rootChord, tipChord, sweep, diameter) => {
    const vanes: Vanes = { count, height, rootChord, tipChord, sweep, diameter };
    const area = (height * (rootChord + tipChord)) / 2;
    const aspect = (2 * height ** 2) / area;
    const gamma = Math.atan((sweep + tipChord / 2 - rootChord / 2) / height);
    const one = (2 * Math.PI * aspect * (area / section(diameter))) / (2 + Math.sqrt(4 + (aspect / Math.cos(gamma)) ** 2));
    const body = 1 + diameter / 2 / (height + diameter / 2);
    expect(vaneLift(vanes) / (body * (count / 2) * one)).toBeCloseTo(1, 12);
  });

  // Barrowman 1967: lift at a quarter of the mean aerodynamic chord, whose place and length any textbook on aerodynamics gives for a trapezium.
  it.each([
    [0.045, 0.015, 0.02],
    [0.1, 0, 0.09],
    [0.03, 0.03, 0],
  ])('acts at the quarter point of the mean chord: root %f m, outer edge %f m, swept %f m', (rootChord, tipChord, sweep) => {
    const taper = tipChord / rootChord;
    const mean = ((2 / 3) * rootChord * (1 + taper + taper ** 2)) / (1 + taper);
    const out = (1 + 2 * taper) / (3 * (1 + taper));
    expect(vaneCentre({ count: 3, height: 0.01, rootChord, tipChord, sweep, diameter: 0.006 })).toBeCloseTo(
      sweep * out + mean / 4,
      12,
    );
  });
});
