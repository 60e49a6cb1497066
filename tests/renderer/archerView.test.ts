import { describe, expect, it } from 'vitest';
import { goldAboveGround, groundMark } from '../../core/aim/index.ts';
import { face } from '../../core/group/index.ts';
import type { Band } from '../../core/model/band.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { halfWidthAt } from '../../renderer/plots/archerView/arrowSeen.ts';
import type { ArcherViewData, SeenArrow } from '../../renderer/plots/archerView/data.ts';
import { viewFrame } from '../../renderer/plots/archerView/frame.ts';
import { archerViewMarks, type ArcherViewMarks } from '../../renderer/plots/archerView/marks.ts';
import { holdTexts } from '../../renderer/plots/archerView/texts.ts';
import { touches, type Box } from '../../renderer/plots/boxes.ts';

const { units } = defaultPreferences;
const yards: UnitChoice = { ...units, distance: 'yd' };
const shaft: SeenArrow = { kind: 'tip', forward: 0.74, eyeHeight: 0.085, diameter: 0.008 };
const eye = 1.6;

const markerAt = (hold: number, distance: number) => groundMark(hold, distance, eye - goldAboveGround, eye);

function view(distance: number, hold: number, half = 0.1, change: Partial<ArcherViewData> = {}): ArcherViewData {
  const up: Band = { value: hold, low: hold - half, high: hold + half };
  const out = markerAt(hold, distance);
  const marker =
    out === null ? null : { value: out, low: markerAt(up.low, distance) ?? out, high: markerAt(up.high, distance) ?? distance };
  return {
    distance,
    face: face('80'),
    hand: 'right',
    eyeAboveGround: eye,
    centreAboveGround: goldAboveGround,
    by: shaft,
    up,
    across: 0,
    marker,
    ...change,
  };
}

const drawn = (data: ArcherViewData, width = 320, inUnits = units): ArcherViewMarks =>
  archerViewMarks(data, width, inUnits, holdTexts(data, inUnits));

/** Holds as they come: under the ground, on stand, butt and centre, over the butt, for near and far targets of slow and fast bows. */
const holds: readonly (readonly [distance: number, hold: number])[] = [
  [5, -0.5],
  [10, -0.5],
  [10, -1.3],
  [18, -0.55],
  [18, -2.1],
  [20, 2],
  [28, 0],
  [30, -2.94],
  [30, -0.9],
  [30, 0.15],
  [40, -0.02],
  [50, -2.8],
  [50, 3.4],
  [60, 6.2],
  [60, -2],
  [70, -0.4],
  [76, 0.01],
  [90, 1.9],
];
const cases = holds.flatMap(([distance, hold]) =>
  [0.02, 0.35, 1.4].flatMap((half) =>
    (['right', 'left'] as const).flatMap((hand) =>
      [280, 300, 320, 372].flatMap((width) =>
        [units, yards].map((inUnits) => {
          const data = view(distance, hold, half, { hand });
          const name = `${hold} m at ${distance} m, ${half} m either way, ${hand} hand, ${width} px, ${inUnits.distance}`;
          return { name, data, width, marks: drawn(data, width, inUnits) };
        }),
      ),
    ),
  ),
);

/** A box of the turned picture, as it stands on the page. */
const onPage = (box: Box, { mirrored, width }: ArcherViewMarks): Box =>
  mirrored ? { ...box, left: width - box.right, right: width - box.left } : box;

function complaints(check: (one: (typeof cases)[number]) => readonly string[]): string[] {
  expect(cases.length).toBe(holds.length * 3 * 2 * 4 * 2);
  return cases.flatMap((one) => check(one).map((what) => `${one.name}: ${what}`));
}

describe('the archer’s view, by similar triangles', () => {
  const marks = drawn(view(30, -2.1));

  it('stands the target on the ground: 1.24 m of butt, its middle 1.3 m up, in one scale (World Archery rule book, from memory)', () => {
    const perMetre = marks.butt.side / 1.24;
    expect((marks.foot - marks.centre.y) / perMetre).toBeCloseTo(1.3, 9);
    expect(marks.butt.y + marks.butt.side / 2).toBeCloseTo(marks.centre.y, 9);
    expect(marks.faceSize / perMetre).toBeCloseTo(0.8, 9);
    expect((marks.held.y - marks.centre.y) / perMetre).toBeCloseTo(2.1, 9);
  });

  it('has the horizon at the height of the eye, 0.3 m over a centre that stands 0.3 m lower', () => {
    expect(((marks.centre.y - marks.frame.horizon) / marks.butt.side) * 1.24).toBeCloseTo(0.3, 9);
  });

  it('draws the ground half as far under the horizon at twice the distance', () => {
    const depth = (figure: number) => {
      const line = marks.ground.find((one) => one.figure === figure);
      return (line?.y ?? NaN) - marks.frame.horizon;
    };
    expect(depth(20)).toBeCloseTo(2 * depth(40), 9);
    expect(depth(30)).toBeCloseTo(marks.foot - marks.frame.horizon, 9);
  });

  it('lays the marker under the tip: seen from 1.6 m up, 2.1 m under the centre at 30 m is the ground at 20 m', () => {
    const data = view(30, -2.1);
    expect(data.marker?.value).toBeCloseTo(20, 9);
    expect(marks.marker?.y).toBeCloseTo(marks.held.y, 9);
    expect(marks.ground.find(({ figure }) => figure === 20)?.y).toBeCloseTo(marks.held.y, 9);
  });

  it('shows an 8 mm shaft at arm’s length as wide as its distance from the eye has it, and wider as it comes nearer', () => {
    expect(2 * halfWidthAt(shaft, 0, 0)).toBeCloseTo(0.008 / Math.hypot(0.74, 0.085), 9);
    const widths = [0, -0.02, -0.05, -0.1].map((slope) => halfWidthAt(shaft, 0, slope));
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    // Looked along, it is as wide as its end.
    expect(halfWidthAt({ ...shaft, eyeHeight: 0 }, 0, -0.1)).toBeCloseTo(0.004 / 0.74, 9);
  });
});

describe('the archer’s view', () => {
  it('keeps target, tip and band in the picture, and some of the arrow under the tip', () => {
    expect(
      complaints(({ marks, data }) => {
        const { height, butt, held, foot, interval } = marks;
        const inside = (y: number) => y >= 2 && y <= height - 2;
        return [
          ...(inside(butt.y) && inside(foot) ? [] : ['target']),
          ...(held.y >= 2 && held.y <= height - viewFrame.underTip + 1e-6 ? [] : [`tip at ${held.y}`]),
          ...(interval === null || (inside(interval.low) && inside(interval.high)) ? [] : ['band']),
          ...((data.marker === null) === (marks.marker === null) ? [] : ['marker']),
          ...(butt.x >= 0 && marks.bow.x + marks.bow.width <= marks.width ? [] : ['aside']),
        ];
      }),
    ).toEqual([]);
  });

  it('keeps its texts inside, apart, and off butt, bow and arrow', () => {
    expect(
      complaints(({ marks }) => {
        const { labels, butt, bow, arrow, held, height, width } = marks;
        const things: Box[] = [
          { left: butt.x, right: butt.x + butt.side, top: butt.y, bottom: butt.y + butt.side },
          { left: bow.x, right: bow.x + bow.width, top: 0, bottom: height },
          ...(arrow === null ? [] : [{ left: held.x - arrow.half, right: held.x + arrow.half, top: held.y, bottom: height }]),
        ].map((box) => onPage(box, marks));
        return labels.flatMap(({ box, text }, i) => [
          ...(box.left >= 0 && box.right <= width && box.top >= 0 && box.bottom <= height ? [] : [`${text} outside`]),
          ...(things.some((thing) => touches(box, thing)) ? [`${text} on something`] : []),
          ...labels.slice(i + 1).flatMap((other) => (touches(box, other.box) ? [`${text} on ${other.text}`] : [])),
        ]);
      }),
    ).toEqual([]);
  });

  it('keeps the words of the hold off the horizon where its dimension leaves room beside it, and the horizon’s name from them', () => {
    // As it was found: 67 cm over the centre at 45 m, anywhere from 0 to 148.
    for (const hand of ['right', 'left'] as const) {
      const { labels, frame } = drawn(view(45, 0.67, 0.74, { hand }));
      const words = labels.filter(({ text }) => /cm$|^\d+ below|^\d+ to|centre$/.test(text));
      expect(words).toHaveLength(3);
      for (const { text, box } of words) expect(box.bottom < frame.horizon || box.top > frame.horizon, text).toBe(true);
    }
    expect(
      complaints(({ marks: { labels } }) => {
        const name = labels.find(({ text }) => text === 'horizon');
        if (name === undefined) return [];
        const around = { ...name.box, left: name.box.left - 13, right: name.box.right + 13 };
        return labels.filter((other) => other !== name && touches(around, other.box)).map(({ text }) => `horizon beside ${text}`);
      }),
    ).toEqual([]);
  });

  it('always says the distance, the hold with its side, and the marker where there is one', () => {
    expect(
      complaints(({ marks, data }) => {
        const texts = marks.labels.map(({ text }) => text);
        const said = (pattern: RegExp) => texts.some((text) => pattern.test(text));
        return [
          ...(said(/^\d+(\.\d)? (m|yd)$/) ? [] : ['no distance']),
          ...(said(/ the centre$/) ? [] : ['no side']),
          ...(Math.abs(data.up.value) < 0.03 || said(/^[\d.]+ (cm|in)$/) ? [] : ['no hold']),
          ...(data.marker === null || said(/^ground marker$/) ? [] : ['no marker']),
        ];
      }),
    ).toEqual([]);
  });

  it('for the other hand is the mirror image, with the same words', () => {
    for (const [distance, hold] of holds) {
      const [right, left] = (['right', 'left'] as const).map((hand) => drawn(view(distance, hold, 0.2, { hand })));
      if (right === undefined || left === undefined) throw new Error('two views were expected');
      expect({ ...left, mirrored: false, labels: [] }).toEqual({ ...right, labels: [] });
      expect(left.labels.map(({ text }) => text)).toEqual(right.labels.map(({ text }) => text));
      left.labels.forEach(({ box }, i) => expect(box.left + (right.labels[i]?.box.right ?? NaN)).toBeCloseTo(left.width, 9));
    }
  });

  it('keeps its scale while the target is moved', () => {
    const begun = drawn(view(30, -0.9));
    const farther = view(50, 3.4);
    const moved = archerViewMarks(farther, 320, units, holdTexts(farther, units), begun.frame);
    expect(moved.frame).toBe(begun.frame);
    expect(moved.butt.side / begun.butt.side).toBeCloseTo(30 / 50, 9);
  });
});

describe('the view with a sight', () => {
  const pin = { by: { kind: 'pin' }, marker: null } as const;

  it('holds the pin on the centre and measures nothing', () => {
    const marks = drawn(view(50, 0, 0, pin));
    expect(marks.held).toEqual(marks.centre);
    expect([marks.dimension, marks.sideways, marks.arrow]).toEqual([null, null, null]);
  });

  it('held off to the right stands to the right for either hand, and says so', () => {
    for (const hand of ['right', 'left'] as const) {
      const marks = drawn(view(50, 0.1, 0, { ...pin, hand, across: 0.3 }));
      const onScreen = (x: number) => (marks.mirrored ? marks.width - x : x);
      expect(onScreen(marks.held.x) - onScreen(marks.centre.x)).toBeCloseTo((0.3 / 1.24) * marks.butt.side, 9);
      expect(marks.labels.map(({ text }) => text)).toContain('30 cm right');
    }
  });
});

describe('the words on the view', () => {
  const said = (up: Band, across = 0, marker: Band | null = null) => holdTexts({ up, across, marker }, units);

  it('say size, band and side, nearer end first, and both sides where the band holds the centre', () => {
    expect(said({ value: -2.8, low: -2.85, high: -2.75 })).toMatchObject({
      figure: '280 cm',
      band: '275 to 285',
      side: 'below the centre',
    });
    expect(said({ value: 0.15, low: -0.1, high: 0.54 })).toMatchObject({
      figure: '15 cm',
      band: '10 below to 54 above',
      side: 'above the centre',
    });
  });

  it('say on the centre for nothing, and leave out a band that only repeats the figure', () => {
    expect(said({ value: 0, low: 0, high: 0 })).toEqual({
      figure: '',
      band: '',
      side: 'on the centre',
      across: null,
      marker: null,
    });
    expect(said({ value: 0.5, low: 0.499, high: 0.501 }, -0.2)).toMatchObject({ band: '', across: '20 cm left' });
    expect(said({ value: -2, low: -2.1, high: -1.9 }, 0, { value: 15.5, low: 15.2, high: 15.7 }).marker).toEqual({
      figure: '15.5 m',
      band: '15.2 to 15.7',
    });
  });
});
