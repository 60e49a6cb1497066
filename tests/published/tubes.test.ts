import { describe, expect, it } from 'vitest';
import { aluminium, deflectionOf, spineOf, tubeDensity, tubeStiffness, woodPounds } from '../../core/arrow/index.ts';

const inch = 0.0254;
const grain = 6.479891e-5;

// Aluminium tubes by outer diameter and wall: spine at 72 and 69 GPa, mass per length at 2.81 g/cm³, wood pounds. Computed independently for
// the practice notes from E π (D⁴ − d⁴)/64 and printed to two figures or so.
const rows = [
  { outer: 14, wallIn: 0.013, spine: [1.9, 1.99], density: 6.0, pounds: [16, 17] },
  { outer: 16, wallIn: 0.016, spine: [1.05, 1.1], density: 8.4, pounds: [29, 30] },
  { outer: 18, wallIn: 0.016, spine: [0.72, 0.75], density: 9.5, pounds: [42, 44] },
  { outer: 20, wallIn: 0.013, spine: [0.62, 0.65], density: 8.7, pounds: [49, 51] },
  { outer: 20, wallIn: 0.016, spine: [0.52, 0.54], density: 10.6, pounds: [58, 61] },
  { outer: 22, wallIn: 0.013, spine: [0.46, 0.48], density: 9.6, pounds: [66, 69] },
  { outer: 23, wallIn: 0.015, spine: [0.35, 0.37], density: 11.5, pounds: [86, 89] },
] as const;

describe('aluminium tubes by their geometry', () => {
  it('has rows to check', () => {
    expect(rows.length).toBe(7);
  });

  it.each(rows)('$outer/64 in by $wallIn in: the printed spine, mass and pounds [computed independently]', (row) => {
    const outer = (row.outer / 64) * inch;
    const wall = row.wallIn * inch;
    const { modulus, density } = aluminium;
    expect([modulus.low, modulus.high, density]).toEqual([69e9, 72e9, 2810]);
    const stiff = deflectionOf(tubeStiffness(outer, wall, modulus.high), '28 in, 880 g');
    const soft = deflectionOf(tubeStiffness(outer, wall, modulus.low), '28 in, 880 g');
    expect(Math.abs(stiff / inch - row.spine[0])).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(soft / inch - row.spine[1])).toBeLessThanOrEqual(0.0051);
    expect(Math.abs((tubeDensity(outer, wall, density) * inch) / grain - row.density)).toBeLessThanOrEqual(0.051);
    expect(Math.abs(woodPounds(soft, '28 in, 880 g') - row.pounds[0])).toBeLessThanOrEqual(0.51);
    expect(Math.abs(woodPounds(stiff, '28 in, 880 g') - row.pounds[1])).toBeLessThanOrEqual(0.51);
  });

  it('gives a shaft that nobody spined the band between the two moduli, and a spined one its own figure', () => {
    const tube = { material: 'aluminium', diameter: (18 / 64) * inch, wall: 0.016 * inch, convention: '28 in, 880 g' } as const;
    const found = spineOf({ ...tube, deflection: null });
    const spined = spineOf({ ...tube, deflection: 0.8 * inch });
    if (!found.ok || !spined.ok) throw new Error('A spine was expected.');
    expect(found.value.from).toBe('tube');
    // The same row of the table: 0.72 to 0.75 in.
    expect(Math.abs(found.value.deflection.low / inch - 0.72)).toBeLessThan(0.0051);
    expect(Math.abs(found.value.deflection.high / inch - 0.75)).toBeLessThan(0.0051);
    expect(spined.value.from).toBe('measured');
    expect(spined.value.deflection.value / inch).toBeCloseTo(0.8, 12);
  });

  it('is a rod when the wall is half the diameter: E π D⁴/64 and ρ π D²/4 [second moment of a circle, any handbook]', () => {
    expect(tubeStiffness(0.008, 0.004, 10e9)).toBeCloseTo((10e9 * Math.PI * 0.008 ** 4) / 64, 12);
    expect(tubeDensity(0.008, 0.004, 500)).toBeCloseTo((500 * Math.PI * 0.008 ** 2) / 4, 12);
  });
});
