import { describe, expect, it } from 'vitest';
import type { DrawWeight } from '../../../core/bow/index.ts';
import { ruleOfThumb, thumbPounds, type ThumbInput } from '../../../core/suitability/index.ts';

const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;

const read = (lb: number): DrawWeight => ({
  value: lb * pound,
  low: lb * 0.99 * pound,
  high: lb * 1.01 * pound,
  from: 'on the fingers',
});

const wood = (over: Partial<ThumbInput> = {}): ThumbInput => ({
  material: 'wood',
  arrowPass: 'shelf',
  weight: read(40),
  length: 28 * inch,
  pointMass: 125 * grain,
  deflection: 0.65 * inch,
  convention: '26 in, 2 lb',
  ...over,
});

const whyNot = (over: Partial<ThumbInput>) => {
  const view = ruleOfThumb(wood(over));
  return view.applies ? null : view.why;
};
const viewOf = (over: Partial<ThumbInput> = {}) => {
  const view = ruleOfThumb(wood(over));
  if (!view.applies) throw new Error(view.why);
  return view;
};

describe('the rule of thumb for wooden arrows', () => {
  it('asks for the pounds on the fingers at 28 in and 125 gr [common practice]', () => {
    expect(thumbPounds(45 * pound, 28 * inch, 125 * grain)).toBeCloseTo(45, 9);
  });

  it('asks for 5 lb more for each inch and each 25 gr, and less the other way [common practice]', () => {
    expect(thumbPounds(45 * pound, 29 * inch, 125 * grain)).toBeCloseTo(50, 9);
    expect(thumbPounds(45 * pound, 28 * inch, 100 * grain)).toBeCloseTo(40, 9);
    expect(thumbPounds(45 * pound, 30 * inch, 150 * grain)).toBeCloseTo(60, 9);
  });

  it('finds a 40 lb shaft right on a 40 lb bow, a 35 lb one weak and a 45 lb one stiff', () => {
    expect(viewOf().verdict).toBe('in range');
    expect(viewOf().measuredPounds).toBeCloseTo(40, 9);
    expect(viewOf({ deflection: (26 / 35) * inch }).verdict).toBe('weak');
    expect(viewOf({ deflection: (26 / 45) * inch }).verdict).toBe('stiff');
  });

  it('gives its band as deflection on the standard tester: 37.5 and 42.5 lb are 0.840 and 0.741 in [P = 31.5 / deflection]', () => {
    const { needed } = viewOf();
    expect(needed.high / inch).toBeCloseTo(31.5 / 37.5, 3);
    expect(needed.low / inch).toBeCloseTo(31.5 / 42.5, 3);
  });

  it('cannot tell when only the marked weight is known and its ends disagree', () => {
    const marked: DrawWeight = { value: 40 * pound, low: 36 * pound, high: 44 * pound, from: 'marked weight' };
    expect(viewOf({ weight: marked }).verdict).toBe('cannot tell');
  });

  it('keeps to its domain, and says why it does not apply', () => {
    expect(whyNot({ material: 'carbon' })).toContain('wooden');
    expect(whyNot({ arrowPass: 'rest and button' })).toContain('button');
    // Both units, since the rule is the trade's and the person may think in others; by hand: 30 lb are 13.6 kg, 31 in 78.7 cm, 100 gr 6.5 g.
    const weight = 'The rule of thumb holds from 30 to 60 lb (13.6 to 27.2 kg) on the fingers; this bow draws ';
    expect([whyNot({ weight: read(20) }), whyNot({ weight: read(62) })]).toEqual([`${weight}less.`, `${weight}more.`]);
    const length = 'The rule of thumb holds for arrows of 27 to 31 in (68.6 to 78.7 cm); these are ';
    expect([26, 31.5].map((lengthIn) => whyNot({ length: lengthIn * inch }))).toEqual([`${length}shorter.`, `${length}longer.`]);
    const point = 'The rule of thumb holds for points of 100 to 150 gr (6.5 to 9.7 g); these are ';
    expect([60, 160].map((gr) => whyNot({ pointMass: gr * grain }))).toEqual([`${point}lighter.`, `${point}heavier.`]);
  });

  it('still holds on the edges of its domain', () => {
    for (const lb of [30, 60]) expect(whyNot({ weight: read(lb) })).toBeNull();
    for (const lengthIn of [27, 31]) expect(whyNot({ length: lengthIn * inch })).toBeNull();
    for (const gr of [100, 150]) expect(whyNot({ pointMass: gr * grain })).toBeNull();
    expect(whyNot({ arrowPass: 'hand' })).toBeNull();
  });
});
