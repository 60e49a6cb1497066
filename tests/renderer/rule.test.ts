import { describe, expect, it } from 'vitest';
import type { FindingRule } from '../../core/findings/index.ts';
import { ruleOf } from '../../core/findings/parts.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { ruleMarks, ruleSize } from '../../renderer/plots/rule/marks.ts';
import { textWidth } from '../../renderer/plots/textWidth.ts';

const { units } = defaultPreferences;
const readings = (value: number, low: number, high: number): FindingRule => ({
  ...ruleOf(value, low, high, 'reading', units, false),
  lowText: low.toFixed(1),
  highText: high.toFixed(1),
});

describe('The rule under a finding', () => {
  it.each([
    ['a reading of 12.5 where 103.1 to 106.4 is expected', readings(12.5, 103.1, 106.4)],
    ['a reading far above', readings(960, 103.1, 106.4)],
    ['one between them', readings(104, 103.1, 106.4)],
    ['a brace height', ruleOf(0.21, 0.209, 0.235, 'length', units, false)],
    ['one end only', ruleOf(0.02, 0.021, null, 'mass', units, false)],
    ['a range that is nearly none', readings(50, 50.01, 50.02)],
  ])('keeps its figures apart and inside: %s', (_what, rule) => {
    const { labels } = ruleMarks(rule);
    expect(labels.length).toBeGreaterThan(0);
    const boxes = labels.map(({ x, text }) => {
      const half = textWidth(text, 12, 'text') / 2;
      return { left: x - half, right: x + half };
    });
    for (const { left, right } of boxes) {
      expect(left).toBeGreaterThanOrEqual(0);
      expect(right).toBeLessThanOrEqual(ruleSize.width);
    }
    const [low, high] = boxes;
    if (low !== undefined && high !== undefined) expect(high.left - low.right).toBeGreaterThan(7);
  });

  it('stands under its ends where there is room', () => {
    const { labels, ends } = ruleMarks(ruleOf(0.21, 0.2, 0.235, 'length', units, false));
    expect(labels.map(({ x }) => x)).toEqual(ends);
  });
});
