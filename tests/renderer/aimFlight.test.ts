import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { bareAndFletched, flightBasis } from '../../core/aim/index.ts';
import type { AirGiven } from '../../core/flight/index.ts';
import { defaultPreferences, exampleBundle, type Bundle, type UnitChoice } from '../../core/model/index.ts';
import { aimPicture } from '../../renderer/features/aim/derive.ts';
import { flightPart } from '../../renderer/features/aim/flight/index.tsx';
import { dropCsv } from '../../renderer/features/aim/flight/dropTable.ts';
import { flightSpeedsFromTable, flightSpeedsOf } from '../../renderer/features/aim/flight/flightSpeedRows.ts';
import {
  apartText,
  dragRests,
  dragTitle,
  dragWhy,
  launchNote,
  noseLimits,
  noseNote,
  noseSaid,
  noseWhy,
  speedNotes,
} from '../../renderer/features/aim/flight/words.ts';
import { basis as basisWords } from '../../renderer/features/aim/words.ts';
import { noseMarks } from '../../renderer/plots/noseAngle/marks.ts';
import { noseTable } from '../../renderer/plots/noseAngle/table.ts';
import { createBench } from '../../renderer/state/bench.ts';
import { BenchContext } from '../../renderer/state/useBench.ts';
import { expectApart, textsOf } from './labelsApart.ts';

const { units } = defaultPreferences;
const others: readonly UnitChoice[] = [
  units,
  { ...units, distance: 'yd', setting: 'in' },
  { ...units, speed: 'm/s', setting: 'cm' },
];
const [foot, yard] = [0.3048, 0.9144];
const degree = Math.PI / 180;

const withSpeeds = (
  pairs: readonly (readonly [distance: number, speed: number])[] = [],
  arrowSpeed: number | null = 55,
  diameter: number | null = exampleBundle.arrowSet.diameter,
): Bundle => ({
  ...exampleBundle,
  arrowSet: { ...exampleBundle.arrowSet, diameter },
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, arrowSpeed },
    flightSpeeds: pairs.map(([distance, speed]) => ({ distance, speed })),
  },
});
/** Speeds along a flight that cannot all be of one arrow: the first is too low (published as such). */
const odd = (
  [
    [0, 287],
    [20, 277],
    [30, 266],
    [40, 255],
  ] as const
).map(([yards, feet]) => [yards * yard, feet * foot] as const);

const basisOf = (bundle: Bundle, air: AirGiven | null = null) => {
  const basis = flightBasis(bundle, air);
  if (!basis.ok) throw new Error(basis.problem.sentence);
  return basis.value;
};
const pictureOf = (bundle: Bundle, air: AirGiven | null = null) => {
  const picture = aimPicture(bundle, { setFor: 50, air }, units);
  if (!picture.ok) throw new Error(picture.problem.sentence);
  return picture.value;
};

describe('the words of the drag', () => {
  it('say how much speed is lost, with the band, and which coefficients it rests on', () => {
    const basis = basisOf(withSpeeds());
    expect(dragTitle(basis, units)).toMatch(/^It loses \d\.\d % of its speed in 20 m, \d\.\d\sto\s\d\.\d$/);
    expect(dragRests(basis)).toBe(
      'At this speed and thickness the air along the shaft may be smooth or turbulent: a drag coefficient of 1.5 to 2.6.',
    );
    // Miyazaki 2013, Ortiz 2020: laminar up to the large vanes' 2.05, turbulent from there on.
    expect(dragRests(basisOf(withSpeeds([], 30, 0.0045)))).toContain('smooth: a drag coefficient of 1.5 to 2.05');
    expect(dragRests(basisOf(withSpeeds([], 70, 0.0093)))).toContain('turbulent air along it: a drag coefficient of 2.05 to 2.6');
    expect(dragRests(basisOf(withSpeeds([], 55, null)))).toContain('diameter is assumed');
  });

  it('say that it was read off speeds along the flight once it was, here and in the headline', () => {
    const bundle = withSpeeds([
      [0, 55],
      [30, 55 * Math.exp(-0.06)],
      [60, 55 * Math.exp(-0.12)],
    ]);
    expect(dragRests(basisOf(bundle))).toMatch(
      /^Read off three speeds along the flight: a drag coefficient of 2\.\d+ to 2\.\d+\.$/,
    );
    expect(speedNotes(basisOf(bundle), units)).toEqual([]);
    expect(basisWords(pictureOf(bundle), false, units)).toContain('a drag read off speeds along the flight');
    expect(basisWords(pictureOf(withSpeeds()), false, units)).toContain('a drag coefficient of 1.5 to 2.6');
  });

  it('name the first reading of speeds whose drag cannot be, and take no drag from them', () => {
    const basis = basisOf(withSpeeds(odd));
    expect(speedNotes(basis, { ...units, distance: 'yd' })[0]).toContain('The first reading, 287 ft/s at 0 yd, does not fit');
    expect(dragRests(basis)).toContain('a drag coefficient of 1.5 to 2.6');
    expect(launchNote(basis, 55, units)).toBeNull();
  });

  it('say of speeds that rise, lie too near, or ask for no arrow’s drag, why they are not used', () => {
    const notes = (...pairs: (readonly [number, number])[]) => speedNotes(basisOf(withSpeeds(pairs)), units).join(' ');
    expect(notes([0, 55], [40, 56])).toContain('an arrow only slows down');
    expect(notes([0, 55], [6, 54.5])).toContain('less well than the coefficients of other arrows');
    expect(notes([0, 55], [50, 55 * Math.exp(-0.4)])).toContain('No arrow has the drag coefficient');
  });

  it('offer the speed at the bow that they come to, unless it is on record', () => {
    const speeds = [
      [10, 55 * Math.exp(-0.02)],
      [60, 55 * Math.exp(-0.12)],
    ] as const;
    expect(launchNote(basisOf(withSpeeds(speeds, null)), null, units)?.text).toMatch(
      /^Carried back to the bow the arrow left at 180 ft\/s/,
    );
    expect(launchNote(basisOf(withSpeeds(speeds, 50)), 50, units)?.text).toContain('164 ft/s is on record');
    expect(launchNote(basisOf(withSpeeds(speeds, 55)), 55, units)).toBeNull();
  });

  it('have a why with every symbol’s value, whichever way the drag was found', () => {
    for (const bundle of [
      withSpeeds(),
      withSpeeds([
        [0, 55],
        [60, 49],
      ]),
    ])
      for (const choice of others) {
        const why = dragWhy(basisOf(bundle), choice);
        expect(why.symbols.length).toBeGreaterThan(4);
        for (const { value } of why.symbols) expect(value).toMatch(/\d/);
        expect(JSON.stringify(why)).not.toMatch(/NaN|undefined|Infinity/);
      }
  });
});

describe('the flight in other air', () => {
  it('drops less where the air is thin, in the picture of the whole page', () => {
    const high = { temperature: null, pressure: null, altitude: 2500, humidity: null };
    const [there, here] = [pictureOf(withSpeeds(), high), pictureOf(withSpeeds())];
    const dropAt = (picture: typeof here) => picture.rows.find(({ distance }) => distance === 50)?.figures?.drop.value ?? NaN;
    expect(dropAt(there)).toBeLessThan(dropAt(here));
    expect(there.basis.airGiven).toBe(true);
  });
});

describe('the sheet of speeds along the flight', () => {
  it('reads a pasted table in any unit, and says which row cannot be kept', () => {
    const { rows, read } = flightSpeedsFromTable('distance\tspeed\n0 yd\t287\n20 yd\t277 ft/s\n30 m\t80 m/s', units);
    expect(read.taken).toBe(3);
    const kept = flightSpeedsOf(rows, units);
    expect(kept.wrong).toBeNull();
    expect(kept.found[1]?.distance).toBeCloseTo(20 * yard, 12);
    expect(kept.found[2]).toEqual({ distance: 30, speed: 80 });
    const half = flightSpeedsOf([...rows, { distance: { text: '40', si: 40 }, speed: { text: '', si: null } }], units);
    expect(half.wrong).toBe('Row 4: A speed and the distance that it was read at belong together.');
  });
});

describe('the table of drops as a file', () => {
  it('has a figure and both ends of its band in every column, and blanks where the arrow is down', () => {
    const { rows } = pictureOf(withSpeeds());
    for (const choice of others) {
      const csv = dropCsv(rows, choice);
      expect(csv.columns).toHaveLength(13);
      expect(csv.rows.length).toBe(rows.length);
      for (const [index, row] of csv.rows.entries()) {
        expect(row).toHaveLength(13);
        expect(row[1] === null).toBe(rows[index]?.figures === null);
      }
    }
  });
});

describe('a nose off its path, bare and fletched', () => {
  const flown = (angle: number, choice: UnitChoice = units) => {
    const one = choice.distance === 'm' ? 1 : yard;
    const found = bareAndFletched(
      exampleBundle,
      basisOf(exampleBundle),
      angle,
      Array.from({ length: 61 }, (_, i) => (i / 2) * one),
    );
    if (!found.ok) throw new Error(found.problem.sentence);
    return found.value;
  };

  it('is drawn without a text that touches another, at every width and unit', () => {
    let drawn = 0;
    for (const choice of others)
      for (const width of [280, 340, 424, 460, 560])
        for (const angle of [-3, -1, 0.2, 1, 3]) {
          const marks = noseMarks(flown(angle * degree, choice).at, width, choice);
          const labels = [...marks.labels, ...textsOf(marks.across), ...marks.lanes.flatMap(({ up }) => textsOf(up))];
          expectApart(labels, width, marks.height, `${angle}° at ${width} px`);
          expect(JSON.stringify(marks)).not.toContain('NaN');
          drawn += 1;
        }
    expect(drawn).toBe(75);
  });

  it('says sides only as far as the band lets it', () => {
    const band = (value: number, low: number, high: number) => ({ value: value / 1000, low: low / 1000, high: high / 1000 });
    expect(apartText(band(3, -3, 13), units)).toBe(
      '3 mm farther to that side than the fletched, anything from 3 mm less to 13 more',
    );
    expect(apartText(band(0.2, -4, 9), units)).toBe(
      'about as far to that side as the fletched, anything from 4 mm less to 9 more',
    );
    expect(apartText(band(20, 8, 40), units)).toBe('20 mm farther to that side than the fletched, 8 to 40');
    expect(apartText(band(-3, -5, -1), units)).toBe('3 mm less far to that side than the fletched, 1 to 5');
    expect(apartText(band(0, 0, 0), units)).toBe('as far to that side as the fletched');
  });

  it('says plainly that what a bare shaft lifts is fitted and not claimed, and what it assumes', () => {
    const all = flown(degree);
    expect(noseLimits(all).join(' ')).toContain('fitted, never claimed');
    expect(noseLimits(all).join(' ')).toContain('height of the vanes');
    expect(noseNote(all, all.at[36]!, units)).toMatch(
      /^At 18 m the bare shaft is .*The fletched nose swings there and back in \d+ m/,
    );
    expect(noseSaid(all.at[36]!, units).where).toBe('At 18 m');
    expect(noseWhy(all).source).toContain('Barrowman');
    expect(noseTable(all.at, units).rows).toHaveLength(61);
  });
});

describe('the part of the page', () => {
  const pageOf = (bundle: Bundle) => {
    const value = createBench({ call: () => Promise.reject(new Error('no host here')), subscribe: () => () => undefined });
    const { Body } = flightPart;
    return renderToStaticMarkup(
      createElement(BenchContext, { value }, createElement(Body, { bundle, picture: pictureOf(bundle) })),
    );
  };

  it('has every figure that the flight rests on as a field, and the reading that does not fit marked in words', () => {
    const html = pageOf(withSpeeds(odd, 55, null));
    for (const field of [
      'aim.setFor',
      'settings.arrowSpeed',
      'form.eyeHeight',
      'arrowSet.diameter',
      'aim.air.temperature',
      'aim.air.altitude',
      'aim.air.pressure',
      'aim.air.humidity',
      'setup.flightSpeeds',
    ])
      expect(html, field).toContain(`data-field="${field}"`);
    expect(html.match(/does not fit</g)).toHaveLength(1);
    expect(html).not.toMatch(/NaN|undefined/);
  });

  it('says what the nose waits for where the arrow’s parts are not known, and shows the rest', () => {
    const html = pageOf({ ...withSpeeds(), arrowSet: { ...exampleBundle.arrowSet, pointMass: null } });
    expect(html).toContain('enter a point mass');
    expect(html).toContain('speed left');
  });
});
