import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleBundle, type ArrowSet, type Result } from '../../../core/model/index.ts';
import { cyclesOnString, suitability, type Suitability, type SuitabilityInput } from '../../../core/suitability/index.ts';

const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;

const input: SuitabilityInput = { ...exampleBundle, settings: exampleBundle.setup.settings };
const arrows = (over: Partial<ArrowSet>): SuitabilityInput => ({ ...input, arrowSet: { ...exampleBundle.arrowSet, ...over } });
const fingers = (lb: number | null): SuitabilityInput => ({
  ...input,
  settings: { ...input.settings, weightOnFingers: lb === null ? null : lb * pound },
});

const valueOf = (result: Result<Suitability>): Suitability => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
const sentenceOf = (result: Result<Suitability>) => (result.ok ? '' : result.problem.sentence);

const longbow: SuitabilityInput = {
  bow: { ...exampleBundle.bow, bowKind: 'longbow', arrowPass: 'hand', length: 68 * inch, braceLow: null, braceHigh: null },
  archer: { drawLength: 27 * inch },
  settings: { weightOnFingers: 40 * pound, weightDraw: 27 * inch, braceHeight: 6.5 * inch },
  arrowSet: {
    ...exampleBundle.arrowSet,
    material: 'wood',
    length: 28 * inch,
    deflection: (26 / 40) * inch,
    convention: '26 in, 2 lb',
    linearDensity: (11.3 * grain) / inch,
    pointMass: 125 * grain,
    insertMass: null,
    weighed: null,
  },
};

describe('suitability', () => {
  it('finds the example in range, its shaft between the two ends of what is needed', () => {
    const found = valueOf(suitability(input));
    expect(found.verdict).toBe('in range');
    expect(found.why).toBeNull();
    expect(found.margin.needed.low).toBeLessThan(found.margin.measured);
    expect(found.margin.measured).toBeLessThan(found.margin.needed.high);
    expect(found.margin.outside).toBe(0);
    expect(found.rule).toMatchObject({ applies: false });
    expect(found.viewsAgree).toBeNull();
  });

  it('reads one margin: plus is weak, minus is stiff, and the verdict goes with it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 1.6, noNaN: true }), (deflectionIn) => {
        const { margin, verdict, column } = valueOf(suitability(arrows({ deflection: deflectionIn * inch })));
        expect(Math.sign(margin.outside)).toBe(verdict === 'weak' ? 1 : verdict === 'stiff' ? -1 : 0);
        if (verdict === 'weak') expect(margin.value).toBeGreaterThan(0);
        if (verdict === 'stiff') expect(margin.value).toBeLessThan(0);
        // Sag and column figure are in proportion, so the band on one line is the band on the other.
        expect(margin.measured / margin.needed.middle).toBeCloseTo(column.figure / 1.45, 9);
      }),
      { numRuns: 40 },
    );
  });

  it('says the same of one shaft, whichever tester read it', () => {
    // Sag goes with load and the cube of the span.
    const factor = (2 * 0.45359237) / 0.88 / (28 / 26) ** 3;
    const older = valueOf(suitability(arrows({ deflection: 0.72 * factor * inch, convention: '26 in, 2 lb' })));
    const standard = valueOf(suitability(input));
    expect(older.margin.value).toBeCloseTo(standard.margin.value, 12);
    expect(older.column.figure).toBeCloseTo(standard.column.figure, 12);
  });

  it('acts weaker with more weight, a longer shaft, a heavier point or insert [common practice]', () => {
    const here = valueOf(suitability(input)).margin.value;
    expect(valueOf(suitability(fingers(36))).margin.value).toBeGreaterThan(here);
    expect(valueOf(suitability(arrows({ length: 29 * inch }))).margin.value).toBeGreaterThan(here);
    expect(valueOf(suitability(arrows({ pointMass: 130 * grain }))).margin.value).toBeGreaterThan(here);
    expect(valueOf(suitability(arrows({ insertMass: 40 * grain }))).margin.value).toBeGreaterThan(here);
  });

  it('is the same for a left-handed archer', () => {
    const left = { ...exampleBundle.bow, hand: 'left' as const };
    expect(suitability({ ...input, bow: left, archer: { ...exampleBundle.archer, hand: 'left' } } as SuitabilityInput)).toEqual(
      suitability(input),
    );
  });

  it('cannot tell when only the marked weight is known and its ends disagree, and asks for a scale', () => {
    // At 33 lb this shaft stands 1 % inside the stiff limit, so the mark's doubt straddles it.
    const needed = valueOf(suitability(fingers(33))).margin.needed.low;
    const edge = arrows({ deflection: needed * 1.01 });
    const marked = valueOf(suitability({ ...edge, settings: { ...input.settings, weightOnFingers: null } }));
    expect(marked.weight.from).toBe('marked weight');
    expect(marked.verdict).toBe('cannot tell');
    expect(marked.why).toContain('scale');
    expect(marked.column.figureLow).toBeLessThan(marked.column.band.low);
    expect(marked.column.figureHigh).toBeGreaterThan(marked.column.band.low);
  });

  it('still judges on a marked weight when the whole band says the same', () => {
    const weak = arrows({ deflection: 1.3 * inch });
    expect(valueOf(suitability({ ...weak, settings: { ...input.settings, weightOnFingers: null } })).verdict).toBe('weak');
  });

  it('takes other bands, so that the archer’s own groups may move them', () => {
    const bands = { 'rest and button': { low: 1.1, high: 1.2 }, shelf: { low: 1, high: 2 }, hand: { low: 1, high: 2 } };
    const moved = valueOf(suitability(input, bands));
    expect(moved.verdict).toBe('weak');
    expect(moved.column.band).toEqual({ low: 1.1, high: 1.2 });
  });

  it('gives the figure but no verdict outside 14 to 60 lb, where the bands were never seen', () => {
    const light = valueOf(suitability(fingers(12)));
    expect(light.verdict).toBe('cannot tell');
    expect(light.why).toContain('14 to 60 lb');
    expect(light.column.figure).toBeGreaterThan(0);
  });

  it('puts wood off the hand beside the rule of thumb, and they agree on an ordinary set-up', () => {
    const found = valueOf(suitability(longbow));
    expect(found.column.figure).toBeCloseTo(1.86, 1);
    expect(found.verdict).toBe('in range');
    expect(found.rule).toMatchObject({ applies: true, verdict: 'in range' });
    expect(found.viewsAgree).toBe(true);
  });

  it('does not hide that the two views differ', () => {
    const stiffer = valueOf(suitability({ ...longbow, arrowSet: { ...longbow.arrowSet, deflection: (26 / 42.7) * inch } }));
    expect(stiffer.column.verdict).toBe('in range');
    expect(stiffer.rule).toMatchObject({ applies: true, verdict: 'stiff' });
    expect(stiffer.viewsAgree).toBe(false);
  });

  it('cannot tell when one view says stiff and the other weak', () => {
    // Light bow, longest arrow, heaviest point of the rule's domain: the rule asks for 30 + 15 + 5 = 50 lb, the column for far less.
    const found = valueOf(
      suitability({
        ...longbow,
        settings: { ...longbow.settings, weightOnFingers: 30 * pound },
        arrowSet: { ...longbow.arrowSet, length: 31 * inch, pointMass: 150 * grain, deflection: (26 / 47) * inch },
      }),
    );
    expect(found.column.verdict).toBe('stiff');
    expect(found.rule).toMatchObject({ applies: true, verdict: 'weak' });
    expect(found.verdict).toBe('cannot tell');
    expect(found.why).toContain('rule of thumb');
    expect(found.viewsAgree).toBe(false);
  });

  it('refuses a compound and says why', () => {
    const compound = { ...input, bow: { ...exampleBundle.bow, bowKind: 'compound' as const } };
    expect(sentenceOf(suitability(compound))).toContain('finger release');
  });

  it('names everything that is missing', () => {
    const bare = arrows({ length: null, deflection: null, pointMass: null, linearDensity: null, weighed: null });
    const sentence = sentenceOf(
      suitability({
        ...bare,
        bow: { ...exampleBundle.bow, markedWeight: null },
        settings: { ...input.settings, weightOnFingers: null },
      }),
    );
    for (const name of ['arrow length', 'spine deflection', 'point mass', 'shaft mass per length', 'weight on the fingers'])
      expect(sentence).toContain(name);
    const noDraw = { ...input, archer: { drawLength: null }, settings: { ...input.settings, weightOnFingers: null } };
    expect(sentenceOf(suitability(noDraw))).toContain('draw length');
  });

  it.each([Number.NaN, 0, -1, 1e6])('refuses figures of %s', (bad) => {
    for (const key of ['length', 'deflection', 'pointMass', 'linearDensity'] as const)
      expect(suitability(arrows({ [key]: bad })).ok).toBe(false);
    if (bad !== 0)
      for (const key of ['insertMass', 'nockMass', 'fletchingMass'] as const)
        expect(suitability(arrows({ [key]: bad })).ok).toBe(false);
    expect(suitability(fingers(bad)).ok).toBe(false);
  });

  it('lets no NaN out, whatever believable figures come in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 14.5, max: 41, noNaN: true }),
        fc.double({ min: 0.11, max: 3.9, noNaN: true }),
        fc.double({ min: 5.1, max: 390, noNaN: true }),
        fc.double({ min: 2.1, max: 125, noNaN: true }),
        fc.constantFrom<('rest and button' | 'shelf' | 'hand')[]>('rest and button', 'shelf', 'hand'),
        (lengthIn, deflectionIn, pointGr, lb, arrowPass) => {
          const set = arrows({ length: lengthIn * inch, deflection: deflectionIn * inch, pointMass: pointGr * grain });
          const found = valueOf(
            suitability({
              ...set,
              bow: { ...exampleBundle.bow, arrowPass },
              settings: { ...input.settings, weightOnFingers: lb * pound },
            }),
          );
          const numbers = JSON.stringify(found, (_, value: unknown) =>
            typeof value === 'number' && !Number.isFinite(value) ? 'not finite' : value,
          );
          expect(numbers).not.toContain('not finite');
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('bending cycles during the power stroke', () => {
  it('come to .880 for 38 lb, 28.5 in, 0.62 in, 110 gr [computed independently with SciPy: elements and DOP853]', () => {
    const mass = (6.5 * 28.5 + 110 + 20) * grain;
    const cycles = cyclesOnString('take-down recurve', 38 * pound, (27.5 - 1.75 - 8.5) * inch, mass, {
      stiffness: (0.88 * 9.80665 * (28 * inch) ** 3) / 48 / (0.62 * inch),
      linearDensity: (6.5 * grain) / inch,
      length: 28.5 * inch,
      nockMass: 20 * grain,
      frontMass: 110 * grain,
    });
    expect(cycles?.figure).toBeCloseTo(0.8798260522, 6);
    expect(cycles?.frequency).toBeCloseTo(70.0440933, 4);
    expect(cycles?.virtualMass).toBe(0.006);
  });

  it('are a figure without verdict near .9, on which a measured or a middle brace height is named', () => {
    const measured = valueOf(suitability(input)).cycles;
    if (!measured.applies) throw new Error(measured.why);
    expect(Math.abs(measured.figure - 0.9)).toBeLessThan(0.08);
    expect(measured.braceFrom).toBe('measured');
    const guessed = valueOf(suitability({ ...input, settings: { ...input.settings, braceHeight: null } })).cycles;
    expect(guessed).toMatchObject({ applies: true, braceFrom: 'middle of its range' });
  });

  it('take 11.5 g of virtual mass for straight limbs and 6 g for recurves, and say which', () => {
    expect(valueOf(suitability(longbow)).cycles).toMatchObject({ virtualMass: 0.0115 });
    expect(valueOf(suitability(input)).cycles).toMatchObject({ virtualMass: 0.006 });
  });

  it('say what is missing without holding up the verdict', () => {
    const found = valueOf(suitability({ ...input, archer: { drawLength: null } }));
    expect(found.verdict).toBe('in range');
    expect(found.cycles).toMatchObject({ applies: false });
    expect(found.cycles.applies ? '' : found.cycles.why).toContain('draw length');
  });
});
