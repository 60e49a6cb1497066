import { describe, expect, it } from 'vitest';
import { type AimInput, type AimPlan, aimPlan, pointOnDistance } from '../../../core/aim/index.ts';

// An invented recurve of ordinary figures.
const input: AimInput = {
  speed: { value: 55, low: 53, high: 57 },
  mass: 0.0211,
  diameter: 0.0058,
  airDensity: 1.225,
  eyeHeight: 0.11,
  arrowLength: 0.711,
  targetDrop: 0.3,
  distances: [18, 30, 50, 70],
  setFor: 50,
};
const planned = (change: Partial<AimInput> = {}): AimPlan => {
  const made = aimPlan({ ...input, ...change });
  if (!made.ok) throw new Error(made.problem.sentence);
  return made.value;
};

describe('the plan for aiming', () => {
  const plan = planned();

  it('is plain data without a NaN: it survives being written down', () => {
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    expect(JSON.stringify(plan)).not.toContain('null');
  });

  it('has its apex above every row, half way to where it is set for', () => {
    for (const { height } of plan.table) expect(height.value).toBeLessThanOrEqual(plan.apex.height.value + 1e-6);
    expect(plan.apex.x.value).toBeGreaterThan(20);
    expect(plan.apex.x.value).toBeLessThan(30);
  });

  it('has a row for every distance, nought over the line at the one it is set for', () => {
    expect(plan.table.map((row) => row.distance)).toEqual([18, 30, 50, 70]);
    const row = plan.table[2]!;
    expect(Math.max(Math.abs(row.height.low), Math.abs(row.height.high))).toBeLessThan(1e-6);
    for (const key of ['drop', 'time'] as const)
      expect(plan.table.map((each) => each[key].value)).toEqual(plan.table.map((each) => each[key].value).sort((a, b) => a - b));
    for (const each of plan.table) expect(each.speed.high).toBeLessThan(57.001);
  });

  it('gives a wider band for a wider band of speed, and for drag that is not known', () => {
    const width = (made: AimPlan) => made.table[3]!.height.high - made.table[3]!.height.low;
    expect(width(planned({ speed: { value: 55, low: 50, high: 60 } }))).toBeGreaterThan(width(plan));
    expect(width(planned({ drag: { value: 0.0016, low: 0.0016, high: 0.0016 } }))).toBeLessThan(width(plan));
    expect(width(planned({ drag: { value: 0.0016, low: 0.0016, high: 0.0016 }, speed: { value: 55, low: 55, high: 55 } }))).toBe(
      0,
    );
  });

  it('counts the point ahead of the shaft, 20 mm where nothing is said', () => {
    expect(planned({ arrowLength: 0.731, pointLength: 0 }).pointOn).toEqual(plan.pointOn);
    const exact = { speed: { value: 55, low: 55, high: 55 }, drag: { value: 0.0016, low: 0.0016, high: 0.0016 } };
    const expected = pointOnDistance({ speed: 55, k: 0.0016, eyeHeight: 0.11, targetDrop: 0.3 }, 0.731);
    const made = planned(exact).pointOn;
    expect(made.ok && expected.ok && made.value.value - expected.value).toBeCloseTo(0, 9);
  });

  it('still draws the flight when there is no point-on distance', () => {
    const made = planned({ eyeHeight: 0 });
    expect(made.table).toHaveLength(4);
    expect(made.pointOn).toMatchObject({ ok: false, problem: { code: 'no-point-on' } });
  });
});

describe('what cannot be planned', () => {
  const even = (value: number) => ({ value, low: value, high: value });
  const cases: [string, Partial<AimInput>, string | RegExp][] = [
    ['a speed below 20 m/s', { speed: even(19) }, 'An arrow speed between 20 and 120 m/s (66 and 394 ft/s) was expected.'],
    ['a speed above 120 m/s', { speed: even(121) }, 'An arrow speed between 20 and 120 m/s (66 and 394 ft/s) was expected.'],
    ['a speed that is no number', { speed: even(NaN) }, 'An arrow speed between 20 and 120 m/s (66 and 394 ft/s) was expected.'],
    ['a band upside down', { speed: { value: 55, low: 57, high: 53 } }, /band/],
    ['a band without an end', { speed: { value: 55, low: NaN, high: 57 } }, /band/],
    ['a drag below nought', { drag: even(-0.001) }, /band/],
    [
      'a distance out of reach',
      { speed: even(25), setFor: 90 },
      /^At 25 m\/s \(82 ft\/s\) this arrow does not carry to 90 m \(98 yd\)/,
    ],
    ['a distance that is no number', { setFor: NaN }, /distance/],
    ['a row that is no number', { distances: [18, NaN] }, /distance/],
    ['no mass', { mass: 0 }, /weighed arrow/],
    ['a diameter in millimetres', { diameter: 5.8 }, /shaft diameter/],
    ['an eye height in millimetres', { eyeHeight: 110 }, /eye height/],
    ['a length that is no number', { arrowLength: NaN }, /arrow length/],
    ['air like water', { airDensity: 1000 }, /air density/],
    ['air that is no number', { airDensity: NaN }, /air density/],
    ['a target on a tower', { targetDrop: -30 }, /target/],
    ['a point as long as the arrow', { pointLength: 0.7 }, /point/],
    ['more rows than anyone reads', { distances: Array.from({ length: 501 }, () => 18) }, /500/],
  ];

  it.each(cases)('%s is refused with a sentence', (_name, change, sentence) => {
    const made = aimPlan({ ...input, ...change });
    expect(made.ok).toBe(false);
    if (made.ok) return;
    if (typeof sentence === 'string') expect(made.problem.sentence).toBe(sentence);
    else expect(made.problem.sentence).toMatch(sentence);
    expect(made.problem.sentence).toMatch(/^[A-Z].*\.$/);
  });
});
