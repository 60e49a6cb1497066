import { describe, expect, it } from 'vitest';
import { bendingFrequencies } from '../../../core/arrow/index.ts';
import type { Result } from '../../../core/model/index.ts';
import { suitability } from '../../../core/suitability/index.ts';
import { setUp } from '../trials/build.ts';

const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;
const valueOf = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};

/** Ordinary matched set-ups, as remembered and from no chart: pounds, arrow and spine in inches, point in grains [from memory]. */
const matched = [
  [18, 27, 1.4, 60],
  [20, 27.5, 1.2, 70],
  [28, 28, 0.85, 90],
  [34, 28.5, 0.7, 100],
  [38, 28.5, 0.62, 110],
  [40, 28.7, 0.6, 120],
  [44, 29, 0.52, 120],
  [48, 29.5, 0.45, 120],
] as const;

describe('bending cycles of ordinary set-ups', () => {
  it('lie near .9 with the small parts on the ends, and a few per cent higher with every part at its place [from memory]', () => {
    for (const [lb, lengthIn, spineIn, pointGr] of matched) {
      const drawLength = (lengthIn - 0.75) * inch;
      const bundle = setUp({
        archer: { drawLength },
        arrowSet: {
          length: lengthIn * inch,
          deflection: spineIn * inch,
          pointMass: pointGr * grain,
          weighed: null,
          linearDensity: (6.8 * grain) / inch,
        },
        settings: { weightOnFingers: lb * pound, weightDraw: drawLength },
      });
      const { cycles } = valueOf(suitability({ ...bundle, settings: bundle.setup.settings }));
      if (!cycles.applies) throw new Error(cycles.why);
      expect(cycles.figure, `${lb} lb`).toBeGreaterThan(0.88);
      expect(cycles.figure, `${lb} lb`).toBeLessThan(0.925);
      const [first = 0] = valueOf(bendingFrequencies(bundle.arrowSet));
      expect(first / cycles.frequency).toBeGreaterThan(1.02);
      expect(first / cycles.frequency).toBeLessThan(1.04);
    }
  });
});
