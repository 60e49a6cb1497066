import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ArrowSet } from '../../core/model/arrowSet.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { unmeasured } from '../../core/model/unmeasured.ts';
import { grain, inch } from '../../core/units/exact.ts';
import type { Marked } from '../../renderer/drawing/arrow/dimensions.ts';
import { arrowLayout } from '../../renderer/drawing/arrow/layout.ts';
import { detail, detailWidths, nockEnd } from '../../renderer/drawing/arrow/nockEnd.ts';
import { arrowPicture } from '../../renderer/drawing/arrow/picture.ts';
import { shaftSection } from '../../renderer/drawing/arrow/section.ts';
import { spineTester } from '../../renderer/drawing/arrow/tester.ts';
import { touches, type Box } from '../../renderer/plots/boxes.ts';
import { anyArrowSet, anyUnits } from '../core/anyEquipment.ts';

/** The drawing's width at 1280 and at 1024 px, with and without a scroll bar, and a little either side [px]. */
const widths = [788, 773, 752, 737, 720];
/** No finding asks for a figure; and one asks for each that any finding can. */
const unmarked: Marked = new Set();
const allMarked: Marked = new Set(['length', 'balance', 'pointMass']);
const detailPages = [788, 773, 752, 737];

interface Named {
  readonly name: string;
  readonly box: Box;
}

function boxesOf(arrowSet: ArrowSet, units: UnitChoice, width: number, marked: Marked): readonly Named[] {
  const { dimensions, masses } = arrowLayout(arrowSet, units, width, marked);
  return [
    { name: 'length', box: dimensions.length.box },
    { name: 'balance point', box: dimensions.balance.box },
    ...dimensions.foc.map(({ text, box }) => ({ name: text, box })),
    ...masses.map(({ part, box }) => ({ name: part.name, box })),
    ...masses.flatMap(({ more }) => (more === null ? [] : [{ name: more.text, box: more.box }])),
  ];
}

function complaints(arrowSet: ArrowSet, units: UnitChoice, width: number, marked = unmarked): string[] {
  const boxes = boxesOf(arrowSet, units, width, marked);
  expect(boxes.length).toBeGreaterThanOrEqual(9);
  return amiss(boxes, width, arrowLayout(arrowSet, units, width, unmarked).height);
}

function amiss(boxes: readonly Named[], width: number, height: number): string[] {
  const outside = boxes.filter(
    ({ box }) => box.left < -0.01 || box.right > width + 0.01 || box.top < -0.01 || box.bottom > height,
  );
  const touching = boxes.flatMap((a, i) =>
    boxes.slice(i + 1).flatMap((b) => (touches(a.box, b.box) ? [`${a.name} touches ${b.name}`] : [])),
  );
  return [...outside.map(({ name }) => `${name} leaves the drawing`), ...touching].map((what) => `${width} px: ${what}`);
}

/** The three details, each on a plate of its own; their widths at 1280 and at 1024 px. */
function detailComplaints(arrowSet: ArrowSet, units: UnitChoice, page: number): string[] {
  const widths = detailWidths(page);
  const picture = arrowPicture(arrowSet);
  const tester = spineTester(arrowSet, units, widths.spine, null, false);
  const section = shaftSection(arrowSet, picture, units, widths.section);
  const nock = nockEnd(arrowSet, picture, units, widths.nock);
  return [
    ...amiss(
      [{ name: 'deflection', box: tester.deflection.box }, ...tester.labels.map(({ text, box }) => ({ name: text, box }))],
      tester.width,
      detail.height,
    ),
    ...amiss(
      [
        { name: 'outer diameter', box: section.diameter.box },
        ...(section.wall === null ? [] : [{ name: 'wall', box: section.wall.box }]),
      ],
      section.width,
      detail.height,
    ),
    ...amiss(
      Object.entries(nock.fields).map(([name, { box }]) => ({ name, box })),
      nock.width,
      detail.height,
    ),
  ];
}

const blank: ArrowSet = { ...exampleBundle.arrowSet, ...unmeasured.arrowSet };
const filled: ArrowSet = {
  ...exampleBundle.arrowSet,
  pinMass: 8 * grain,
  wrapMass: 6.5 * grain,
  vaneCount: 3,
  vaneLength: 0.045,
  vaneFromThroat: 0.025,
  balance: 18.375 * inch,
};

const extremes: readonly (readonly [string, ArrowSet])[] = [
  ['nothing measured', blank],
  ['everything measured', filled],
  ['a 20 in arrow', { ...filled, length: 20 * inch, balance: null }],
  ['a 34 in arrow', { ...filled, length: 34 * inch, balance: null }],
  ['a point of 300 gr', { ...filled, pointMass: 300 * grain, balance: null }],
  ['a balance point at the tail', { ...filled, balance: 5 * inch }],
  ['a balance point at the tip', { ...filled, balance: 28.5 * inch }],
  ['a balance point in the middle', { ...filled, balance: 14 * inch }],
  ['fletching far down the shaft', { ...filled, vaneFromThroat: 0.1, vaneLength: 0.2 }],
];
const metric: UnitChoice = { ...defaultPreferences.units, length: 'mm', mass: 'g', deflection: 'mm' };

describe('the drawn arrow', () => {
  it.each(extremes)('lets no two texts touch, nor one leave the drawing: %s', (_name, arrowSet) => {
    const found = widths.flatMap((width) =>
      [defaultPreferences.units, metric].flatMap((units) => complaints(arrowSet, units, width)),
    );
    expect(found).toEqual([]);
  });

  it('lets no two texts touch, whatever the record holds', () => {
    fc.assert(
      fc.property(anyArrowSet, anyUnits, fc.constantFrom(...widths), fc.boolean(), (arrowSet, units, width, marked) => {
        expect(complaints(arrowSet, units, width, marked ? allMarked : unmarked)).toEqual([]);
      }),
      { numRuns: 500, seed: 20260621 },
    );
  });

  it.each(extremes)('keeps the details’ texts apart and inside: %s', (_name, arrowSet) => {
    const found = detailPages.flatMap((page) =>
      [defaultPreferences.units, metric].flatMap((units) => detailComplaints(arrowSet, units, page)),
    );
    expect(found).toEqual([]);
  });

  it('keeps the details’ texts apart and inside, whatever the record holds', () => {
    fc.assert(
      fc.property(anyArrowSet, anyUnits, fc.constantFrom(...detailPages), (arrowSet, units, page) => {
        expect(detailComplaints(arrowSet, units, page)).toEqual([]);
      }),
      { numRuns: 500, seed: 20260623 },
    );
  });

  it('shows the front of centre of ordinary arrows beside their balance point', () => {
    // Common practice: from 7 % on a wooden arrow to 16 % on a light barrelled one; F1435 counts it from the middle of the shaft.
    for (const share of [0.07, 0.1, 0.13, 0.16]) {
      const length = 28.5 * inch;
      const balance = length / 2 + share * length;
      const { dimensions } = arrowLayout({ ...filled, length, balance }, defaultPreferences.units, 752, unmarked);
      expect(dimensions.foc.map(({ text }) => text)).toEqual([`${(100 * share).toFixed(1)} %`, 'front of centre']);
    }
  });

  it('draws every arrow to scale over its width, and says the scale', () => {
    // 96 px are an inch of a page at true size (CSS); the example is 28 in and its point and nock stand 27 mm beyond.
    const { scale, shapes } = arrowLayout(exampleBundle.arrowSet, defaultPreferences.units, 752, unmarked);
    const inchPx = scale.at(2 * inch) - scale.at(inch);
    expect(Number(scale.ratio.slice(4))).toBeCloseTo(96 / inchPx, 1);
    expect(scale.at(28 * inch) - scale.at(0)).toBeCloseTo(28 * inchPx, 6);
    expect(shapes.shaft).toMatch(/^M/);
  });

  it('makes the area of a dot go with its grains', () => {
    const radiusOf = (pointMass: number): number => {
      const { masses } = arrowLayout({ ...exampleBundle.arrowSet, pointMass }, defaultPreferences.units, 788, unmarked);
      return masses.find(({ part }) => part.name === 'point')?.radius ?? 0;
    };
    expect((radiusOf(200 * grain) / radiusOf(50 * grain)) ** 2).toBeCloseTo(4, 9);
  });

  it('keeps the labels of the masses in the order of their places', () => {
    fc.assert(
      fc.property(anyArrowSet, anyUnits, (arrowSet, units) => {
        const { masses } = arrowLayout(arrowSet, units, 752, unmarked);
        const xs = masses.map(({ x }) => x);
        const lefts = masses.map(({ box }) => (box.left + box.right) / 2);
        expect(xs).toEqual([...xs].sort((a, b) => a - b));
        expect(lefts).toEqual([...lefts].sort((a, b) => a - b));
      }),
      { numRuns: 200, seed: 20260622 },
    );
  });
});
