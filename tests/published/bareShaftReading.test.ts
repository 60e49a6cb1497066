import { describe, expect, it } from 'vitest';
import { defaultPreferences, type Hand } from '../../core/model/index.ts';
import { readBareShaft } from '../../core/trials/index.ts';
import { ring, setUp } from '../core/trials/build.ts';

const { units } = defaultPreferences;
const fletched = ring('fletched', 12, [0, 0], 20);

/** The trade's table of bare shafts against fletched arrows. Common practice, every row; millimetres as the archer sees them. */
const table: readonly {
  readonly where: string;
  readonly hand: Hand;
  readonly bareMm: readonly [number, number];
  readonly lateral: 'stiff' | 'weak' | null;
  readonly vertical: 'nocking point high' | 'nocking point low' | null;
  readonly first: RegExp;
}[] = [
  {
    where: 'low',
    hand: 'right',
    bareMm: [0, -90],
    lateral: null,
    vertical: 'nocking point high',
    first: /^Lower the nocking point/,
  },
  {
    where: 'low',
    hand: 'left',
    bareMm: [0, -90],
    lateral: null,
    vertical: 'nocking point high',
    first: /^Lower the nocking point/,
  },
  {
    where: 'high',
    hand: 'right',
    bareMm: [0, 90],
    lateral: null,
    vertical: 'nocking point low',
    first: /^Raise the nocking point/,
  },
  {
    where: 'high',
    hand: 'left',
    bareMm: [0, 90],
    lateral: null,
    vertical: 'nocking point low',
    first: /^Raise the nocking point/,
  },
  { where: 'left', hand: 'right', bareMm: [-90, 0], lateral: 'stiff', vertical: null, first: /^Soften the button/ },
  { where: 'right', hand: 'left', bareMm: [90, 0], lateral: 'stiff', vertical: null, first: /^Soften the button/ },
  { where: 'right', hand: 'right', bareMm: [90, 0], lateral: 'weak', vertical: null, first: /^Firm the button/ },
  { where: 'left', hand: 'left', bareMm: [-90, 0], lateral: 'weak', vertical: null, first: /^Firm the button/ },
];

describe('bare shafts against fletched arrows (common practice)', () => {
  it('has rows for both hands', () => {
    expect(table.length).toBe(8);
    expect(new Set(table.map(({ hand }) => hand)).size).toBe(2);
  });

  for (const { where, hand, bareMm, lateral, vertical, first } of table)
    it(`${where} of the fletched, ${hand}-handed, reads ${lateral ?? vertical ?? 'nothing'} and names the trade's first remedy`, () => {
      const bundle = setUp({ archer: { hand }, bow: { hand } });
      const reading = readBareShaft(bundle, fletched, ring('bare', 8, bareMm, 20), units);
      expect([reading.lateral, reading.vertical, reading.shift?.verdict]).toEqual([lateral, vertical, 'real']);
      expect(reading.next.title).toMatch(first);
    });

  it('mends the height before the side when both are shown (common practice)', () => {
    const reading = readBareShaft(setUp(), fletched, ring('bare', 8, [90, -90], 20), units);
    expect([reading.lateral, reading.vertical]).toEqual(['weak', 'nocking point high']);
    expect(reading.next.title).toBe('Lower the nocking point 1.6 mm');
  });

  it('moves a nocking point by 1.6 mm, or 0.8 mm for a small shift (common practice: 0.8 to 1.6 mm)', () => {
    const many = ring('fletched', 40, [0, 0], 20);
    const small = readBareShaft(setUp(), many, ring('bare', 40, [0, -18], 20), units);
    expect(small.vertical).toBe('nocking point high');
    expect([small.next, ...small.others].map(({ title }) => title)).toContain('Lower the nocking point 0.8 mm');
  });

  it('turns a button by a quarter or, for a large shift, half a turn (common practice: ¼ to ½)', () => {
    const titleFor = (xMm: number) => readBareShaft(setUp(), fletched, ring('bare', 8, [xMm, 0], 20), units).next.title;
    expect(titleFor(35)).toBe('Firm the button a quarter turn');
    expect(titleFor(90)).toBe('Firm the button half a turn');
  });

  it('lists the further remedies for stiff in the trade\u2019s order (common practice)', () => {
    const reading = readBareShaft(setUp(), fletched, ring('bare', 8, [-90, 0], 20), units);
    expect(reading.others.slice(0, 4).map(({ title }) => title)).toEqual([
      'Both limb bolts in by 1/2 to 1 turn',
      'Fit points 10 to 20 gr heavier',
      'A lighter string',
      'Last: a longer or weaker shaft',
    ]);
  });

  it('lists the further remedies for weak in the trade\u2019s order (common practice)', () => {
    const reading = readBareShaft(setUp(), fletched, ring('bare', 8, [90, 0], 20), units);
    expect(reading.others.slice(0, 5).map(({ title }) => title)).toEqual([
      'Both limb bolts out by 1/2 to 1 turn',
      'Fit points 10 to 20 gr lighter',
      'Shorten the arrows by 1/4 in',
      'A heavier string',
      'Last: a stiffer shaft',
    ]);
  });

  it('without a button thins or builds out the side plate (from memory)', () => {
    const shelf = setUp({
      bow: { arrowPass: 'shelf', bowKind: 'longbow', braceLow: null, braceHigh: null },
      settings: { braceHeight: 0.17 },
    });
    const titleFor = (xMm: number) =>
      readBareShaft(shelf, withShelf(fletched), withShelf(ring('bare', 8, [xMm, 0], 20)), units).next.title;
    const withShelf = (group: typeof fletched) => ({ ...group, context: { ...group.context, settings: shelf.setup.settings } });
    expect(titleFor(-90)).toBe('Thin the side plate a little');
    expect(titleFor(90)).toBe('Build the side plate out a little');
  });

  it('stops the trial when the bare shafts are erratic, and asks for the powder test and a coach (common practice)', () => {
    const reading = readBareShaft(setUp(), fletched, ring('bare', 8, [60, 0], 200), units);
    expect([reading.erratic, reading.lateral, reading.vertical]).toEqual([true, null, null]);
    expect(reading.next.kind).toBe('stop');
    expect(reading.next.text).toMatch(/powder/);
    expect(reading.next.caution).toMatch(/coach/);
  });
});
