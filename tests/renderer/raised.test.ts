import { describe, expect, it } from 'vitest';
import { launchBand, raisedCaution } from '../../core/aim/index.ts';
import { hillOf } from '../../renderer/features/aim/conditions/lands.ts';

const exactly = (value: number) => ({ value, low: value, high: value });

describe('A bow that is raised far', () => {
  // Without air the low angle for a place at R cos φ, R sin φ is that of x = R cos φ, y = R sin φ in y = x tan θ − g x²/(2 v² cos² θ).
  it('is told of up a hill by the whole of its angle, and not down the same one', () => {
    const degrees = (angle: number) => (angle * Math.PI) / 180;
    const found = hillOf(launchBand(exactly(50), exactly(0), 0, 0), 40, degrees(30));
    if (!found.ok) throw new Error(found.problem.sentence);
    const [x, y] = [40 * Math.cos(degrees(30)), 40 * Math.sin(degrees(30))];
    const fall = (9.80665 * x * x) / (2 * 50 * 50);
    const tangent = (x - Math.sqrt(x * x - 4 * fall * (y + fall))) / (2 * fall);
    const [up, down] = found.value.sides.map(({ raised }) => raised);
    expect(up).toBeCloseTo(Math.atan(tangent), 6);
    expect(raisedCaution(up ?? NaN)).toContain(`raised by ${Math.round((Math.atan(tangent) * 180) / Math.PI)}°`);
    expect(raisedCaution(down ?? NaN)).toBeNull();
  });

  // 57 m/s at 70 m on level ground asks for some 6 to 7 degrees: common practice.
  it('is not spoken of where targets are shot at, and never called safe', () => {
    expect(raisedCaution((7 * Math.PI) / 180)).toBeNull();
    for (const by of [0.36, 0.8, 1.2]) expect(raisedCaution(by)).not.toMatch(/safe/i);
    expect(raisedCaution(NaN)).toBeNull();
  });
});
