import { describe, expect, it } from 'vitest';
import { farthestOffered } from '../../core/aim/index.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { aimPicture } from '../../renderer/features/aim/derive.ts';
import { farEndFor } from '../../renderer/features/aim/distances.ts';
import { flightData } from '../../renderer/features/aim/flightData.ts';
import { touches, type Box } from '../../renderer/plots/boxes.ts';
import type { FlightData } from '../../renderer/plots/flight/data.ts';
import type { Label } from '../../renderer/plots/labels.ts';
import { flightMarks, type FlightMarks } from '../../renderer/plots/flight/marks.ts';
import { stepped } from '../../renderer/plots/flight/stepped.ts';

const metres = defaultPreferences.units;
const yards: UnitChoice = { ...metres, distance: 'yd' };
/** The work's width at 1280 and at 1024 px, and a little either side [px]. */
const widths = [836, 788, 752, 720];
const speeds = [null, 30, 45, 60, 90];

const shot = (arrowSpeed: number | null): Bundle => ({
  ...exampleBundle,
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, arrowSpeed },
    form: { ...exampleBundle.setup.form, aiming: 'none', eyeHeight: 0.07 },
  },
});

interface Case {
  readonly name: string;
  readonly data: FlightData;
  readonly units: UnitChoice;
}

/** Flights of slow, usual and fast arrows, set for near and far, with and without the bar of the point-on distance. */
const cases: Case[] = speeds.flatMap((speed) =>
  [8, 10, 18, 25, 30, 43, 50, 60, 70, 90].flatMap((setFor) =>
    [metres, yards].flatMap((units) => {
      const picture = aimPicture(shot(speed), { setFor }, units);
      if (!picture.ok || setFor > farthestOffered(picture.value.basis.speed, picture.value.basis.drag)) return [];
      const data = flightData(picture.value, farEndFor(setFor, units), 'band: speed and drag', setFor % 20 === 10);
      return [{ name: `${speed ?? 'estimated'} m/s set for ${setFor} m in ${units.distance}`, data, units }];
    }),
  ),
);

const allLabels = (marks: FlightMarks): Label[] => [
  ...marks.labels,
  ...marks.ticks.map((tick) => tick.label),
  ...(marks.target.words === null ? [] : [marks.target.words.name, marks.target.words.figure]),
];

const inside = (box: Box, marks: FlightMarks): boolean =>
  box.left >= 0 && box.right <= marks.width && box.top >= 0 && box.bottom <= marks.height;

const drawn = cases.flatMap((one) =>
  widths.flatMap((width) => [false, true].map((low) => ({ one, width, marks: flightMarks(one.data, width, one.units, low) }))),
);

/** What is wrong, over every case at every width: nothing should be. The table must not be empty. */
function complaints(check: (marks: FlightMarks, one: Case) => readonly string[]): string[] {
  expect(drawn.length).toBeGreaterThan(240);
  return drawn.flatMap(({ one, width, marks }) => check(marks, one).map((what) => `${one.name}, ${width} px: ${what}`));
}

const unless = (holds: boolean, what: string): string[] => (holds ? [] : [what]);

describe('the drawn flight', () => {
  it('keeps every text inside the plot', () => {
    const found = complaints((marks) =>
      allLabels(marks)
        .filter((label) => !inside(label.box, marks))
        .map((label) => label.text),
    );
    expect(found).toEqual([]);
  });

  it('lets no two texts touch', () => {
    const found = complaints((marks) => {
      const labels = allLabels(marks);
      const pairs = labels.flatMap((a, i) => labels.slice(i + 1).map((b) => [a, b] as const));
      return pairs.filter(([a, b]) => touches(a.box, b.box)).map(([a, b]) => `${a.text} on ${b.text}`);
    });
    expect(found).toEqual([]);
  });

  it('keeps the names off the band', () => {
    const found = complaints((marks, { data }) =>
      data.samples.flatMap((sample) => {
        const [x, high] = [marks.x(sample.distance), marks.y(sample.high)];
        const low = Math.min(marks.y(sample.low), marks.window.bottom);
        return allLabels(marks)
          .filter(({ box }) => high <= marks.window.bottom && box.left < x && x < box.right && box.top < low && high < box.bottom)
          .map((label) => `${label.text} at ${sample.distance.toFixed(1)} m`);
      }),
    );
    expect(found).toEqual([]);
  });

  it('names the target, the rise and the band wherever there is something to name', () => {
    const found = complaints((marks) => [
      ...unless(marks.target.words !== null, 'no target'),
      ...unless(
        marks.labels.some((label) => label.text === 'band: speed and drag'),
        'no band',
      ),
      ...unless(marks.dimension === null || marks.labels.some((label) => label.lettering === 'strong'), 'no rise'),
    ]);
    expect(found).toEqual([]);
  });

  it('draws the edges of the band in order: the higher flight above the value, the lower one under it', () => {
    const found = complaints((marks, { data }) =>
      data.samples
        .filter(({ low, value, high }) => !(marks.y(high) <= marks.y(value) && marks.y(value) <= marks.y(low)))
        .map(({ distance }) => `at ${distance} m`),
    );
    expect(found).toEqual([]);
  });

  it('has no number that is not one in its paths', () => {
    const found = complaints((marks) =>
      [marks.curve, marks.band, ...marks.edges].filter((path) => path.length < 100 || /NaN|Infinity/.test(path)),
    );
    expect(found).toEqual([]);
  });

  it('stretches heights by exactly what it says, and distances evenly', () => {
    const found = complaints((marks, { data }) => {
      const perMetre = marks.x(1) - marks.x(0);
      const stretch = (marks.y(0) - marks.y(1)) / perMetre;
      const half = marks.x(data.farEnd) - marks.x(data.farEnd / 2);
      return [
        ...unless(Math.abs(stretch / marks.exaggeration - 1) < 1e-9, `${stretch} is not ${marks.exaggeration}`),
        ...unless(Math.abs(half / ((perMetre * data.farEnd) / 2) - 1) < 1e-9, 'uneven distances'),
      ];
    });
    expect(found).toEqual([]);
  });

  it('keeps the flight up to the target inside its window, between the readout’s lane and the axis', () => {
    const found = complaints((marks, { data }) => [
      ...data.samples
        .filter(({ distance, high }) => distance <= data.setFor && marks.y(high) < marks.window.top)
        .map(({ distance }) => `out at ${distance} m`),
      ...unless(marks.lineY < marks.axisY && marks.window.bottom <= marks.axisY, 'below the axis'),
    ]);
    expect(found).toEqual([]);
  });

  it('writes the unit on the last tick and nowhere else', () => {
    const found = complaints((marks, { units }) => {
      const texts = marks.ticks.map((tick) => tick.label.text);
      const last = new RegExp(`^\\d+ ${units.distance}$`);
      return texts.filter((text, i) => !(i === texts.length - 1 ? last : /^\d+$/).test(text));
    });
    expect(found).toEqual([]);
  });

  it('draws the ground 1.30 m under the gold where it is in the picture (World Archery rule book, from memory)', () => {
    const grounded = cases.map(({ data, units }) => flightMarks(data, 788, units)).filter((marks) => marks.groundY !== null);
    expect(grounded.length).toBeGreaterThan(10);
    for (const marks of grounded) expect(marks.groundY).toBeCloseTo(marks.y(-1.3), 6);
  });
});

describe('the keys of a slider', () => {
  it('move by one, five and ten steps, and to the ends', () => {
    expect(stepped('ArrowRight', false, 50, 1, 10, 90)).toBe(51);
    expect(stepped('ArrowDown', true, 50, 1, 10, 90)).toBe(45);
    expect(stepped('PageUp', false, 50, 1, 10, 90)).toBe(60);
    expect(stepped('Home', false, 50, 1, 10, 90)).toBe(10);
    expect(stepped('End', false, 50, 1, 10, 90)).toBe(90);
  });

  it('never leave the range, and leave other keys alone', () => {
    expect(stepped('PageUp', false, 85, 1, 10, 90)).toBe(90);
    expect(stepped('a', false, 50, 1, 10, 90)).toBeNull();
  });
});
