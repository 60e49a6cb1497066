import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shiftOfGroups } from '../../../core/group/index.ts';
import { group } from './arbitraries.ts';
import { polygon, valueOf } from './shots.ts';

describe('the verdict on a shift', () => {
  it('is real for two tight groups far apart, on the axis they are apart on', () => {
    const shift = valueOf(shiftOfGroups(polygon(6), polygon(6, 0.1)));
    expect(shift.verdict).toBe('real');
    expect(shift.axisReal).toEqual({ x: true, y: false });
    expect(shift.size).toBeCloseTo(0.1, 12);
    expect(shift.direction).toBeCloseTo(0, 12);
    expect(shift.more).toBeNull();
  });

  it('cannot tell a shift of one spread with six and six, and asks for the 15 more that make the 21 of the table', () => {
    // 21 arrows each find one spread with 80 % (table of arrows needed, computed independently).
    const shift = valueOf(shiftOfGroups(polygon(6), polygon(6, 0.01), { matters: 0.01 }));
    expect(shift.verdict).toBe('cannot tell');
    expect(shift.more).toBe(15);
  });

  it('asks for enough to settle a shift that stays half as large as matters: 49 arrows each, 43 more than six', () => {
    // The circle must shrink to half a spread: 4/n · F with 2 and 4 (n - 1) degrees of freedom is .504² for 48 and .498² for 49 (scipy 1.17).
    expect(valueOf(shiftOfGroups(polygon(6), polygon(6, 0.005), { matters: 0.01 })).more).toBe(43);
  });

  it('asks for more where less must be seen, and for the same when both halves are exchanged', () => {
    const more = (matters: number): number => valueOf(shiftOfGroups(polygon(6), polygon(6), { matters })).more ?? NaN;
    expect(more(0.005)).toBeGreaterThan(more(0.01));
    const [there, back] = [shiftOfGroups(polygon(4), polygon(9, 0.005)), shiftOfGroups(polygon(9, 0.005), polygon(4))].map(
      valueOf,
    );
    expect(there?.more).toBe(back?.more);
  });

  it('shows no sign of a shift with sixty and sixty on one centre, and says how large one could be', () => {
    const shift = valueOf(shiftOfGroups(polygon(60), polygon(60)));
    expect(shift.verdict).toBe('no sign');
    // √(2 · 2 s²/60 · F), F = 3.0340833 for 2 and 236 degrees of freedom (computed independently, scipy 1.17).
    expect(shift.largest).toBeCloseTo(0.01 * Math.sqrt((4 / 60) * 3.0340833), 7);
  });

  it('is real exactly when p is below 5 %, and then the circle leaves out nought', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        const shift = valueOf(shiftOfGroups(a, b));
        expect(shift.verdict === 'real').toBe(shift.p < 0.05);
        if (Math.abs(shift.p - 0.05) > 1e-9) expect(shift.size > shift.radius).toBe(shift.p < 0.05);
        if (shift.axisReal.x || shift.axisReal.y) expect(shift.verdict).toBe('real');
        if (shift.verdict === 'no sign') expect(shift.largest).toBeLessThanOrEqual(shift.matters);
        expect(shift.more === null).toBe(shift.verdict !== 'cannot tell');
      }),
    );
  });

  it('is stricter at one in a hundred', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        const [usual, strict] = [valueOf(shiftOfGroups(a, b)), valueOf(shiftOfGroups(a, b, { alpha: 0.01 }))];
        expect(strict.radius).toBeGreaterThan(usual.radius);
        if (strict.verdict === 'real') expect(usual.verdict).toBe('real');
      }),
    );
    expect(() => shiftOfGroups(polygon(3), polygon(3), { alpha: 1 })).toThrow(RangeError);
  });
});
