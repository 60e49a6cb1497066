import { describe, expect, it } from 'vitest';
import { forceDrawOf } from '../../../core/bow/index.ts';
import type { Bundle, ForceReading } from '../../../core/model/index.ts';
import { bowRead, inch, pound, readingsOf, steadyRows, valueOf } from './readings.ts';

const drawn = (bundle: Bundle) => valueOf(forceDrawOf(bundle));
const withReadings = (forceDraw: readonly ForceReading[]): Bundle => {
  const bundle = bowRead([]);
  return { ...bundle, bow: { ...bundle.bow, forceDraw: [...forceDraw] } };
};
const codes = (bundle: Bundle) => drawn(bundle).flags.map(({ index, code }) => [index, code]);

describe('what is odd about readings', () => {
  it('is nothing where they rise from the brace height to full draw', () => {
    expect(codes(bowRead(steadyRows))).toEqual([]);
    expect(drawn(bowRead(steadyRows)).notes).toEqual([]);
  });

  it('names the one reading that stands against all the others, keeps it, and widens the band by the contradiction', () => {
    const rows = steadyRows.map((row, i) => (i === 4 ? ([20, 31.8] as const) : row));
    const odd = drawn(bowRead(rows));
    expect(odd.flags.map(({ index, code }) => [index, code])).toEqual([[4, 'not rising']]);
    expect(odd.flags[0]?.sentence).toContain('31.8 lb at 20 in is more than 24.8 lb at 22 in');
    expect(odd.used).toContain(4);
    const there = odd.force(20 * inch);
    expect(there.value / pound).toBeCloseTo(31.8, 9);
    // Without it there would be about 21.8 lb there; if it is right, there is no less than 31.8 lb farther out.
    expect(there.low / pound).toBeLessThan(21.9);
    expect(odd.force(24 * inch).high / pound).toBeCloseTo(31.8, 9);
    const even = drawn(bowRead(steadyRows));
    expect(odd.energy.high - odd.energy.low).toBeGreaterThan(3 * (even.energy.high - even.energy.low));
    expect(odd.energy.low).toBeLessThan(even.energy.value);
  });

  it('of two readings that fall names the later, and never more rows than stand in the way', () => {
    expect(codes(bowRead([...steadyRows.slice(0, 8), [27, 30.2], [28, 34]]))).toEqual([[8, 'not rising']]);
  });

  it('takes the mean of one draw read twice and says by how much they differ', () => {
    const twice = drawn(bowRead([...steadyRows, [20, 22.4]]));
    expect(twice.force(20 * inch).value / pound).toBeCloseTo(22.1, 9);
    expect(twice.force(20 * inch).low / pound).toBeCloseTo(21.8, 9);
    expect(twice.force(20 * inch).high / pound).toBeCloseTo(22.4, 9);
    expect(twice.flags.map(({ index, code }) => [index, code])).toEqual([
      [4, 'same draw'],
      [9, 'same draw'],
    ]);
    expect(twice.flags[0]?.sentence).toContain('21.8 lb to 22.4 lb');
    expect(codes(bowRead([...steadyRows, [20, 21.8]]))).toEqual([]);
  });

  it('leaves out what was read at or below the brace height, and says why', () => {
    const low = drawn(bowRead([[10, 1], [10.25, 0], ...steadyRows]));
    expect(low.flags.map(({ index, code }) => [index, code])).toEqual([
      [0, 'below brace'],
      [1, 'below brace'],
    ]);
    expect(low.used).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(low.energy).toEqual(drawn(bowRead(steadyRows)).energy);
  });

  it('counts no energy beyond full draw, where readings only shape the end', () => {
    const beyond = drawn(bowRead([...steadyRows, [30, 38]]));
    expect(beyond.flags.map(({ index, code }) => [index, code])).toEqual([[9, 'beyond full draw']]);
    expect(Math.abs(beyond.energy.value / drawn(bowRead(steadyRows)).energy.value - 1)).toBeLessThan(0.002);
  });

  it('draws on past the last reading with a band that holds a curve going soft or stacking, and says how far', () => {
    const short = drawn(bowRead(steadyRows.slice(0, 7)));
    expect(short.notes.join(' ')).toContain('The readings end at 24 in, 4 in short of full draw');
    expect(short.weight.low / pound).toBeLessThan(34);
    expect(short.weight.high / pound).toBeGreaterThan(34);
    expect(short.weight.high / short.weight.low).toBeGreaterThan(1.1);
    expect(short.energy.high / short.energy.low).toBeGreaterThan(1.03);
    expect(forceDrawOf(bowRead(steadyRows.slice(0, 2))).ok).toBe(true);
    expect(drawn(bowRead(steadyRows.slice(0, 2))).from).toBe('marked weight');
  });

  it('refuses figures that no scale shows, and readings without any force', () => {
    for (const bad of [Number.NaN, -1, Number.POSITIVE_INFINITY])
      for (const key of ['draw', 'force'] as const) {
        const [first, ...rest] = readingsOf(steadyRows);
        if (first === undefined) throw new Error('There are rows.');
        expect(forceDrawOf(withReadings([{ ...first, [key]: bad }, ...rest])).ok).toBe(false);
      }
    const slack = forceDrawOf(bowRead(steadyRows.map(([drawIn]) => [drawIn, 0] as const)));
    expect(slack.ok ? '' : slack.problem.sentence).toContain('no force');
  });
});

describe('letting down', () => {
  const down = steadyRows.map(([drawIn, forceLb]) => [drawIn, 0.94 * forceLb, 'let-down'] as const);

  it('keeps the share that lies between the curves: 6 % where every force is 6 % less', () => {
    const { loss, energy } = drawn(bowRead([...steadyRows, ...down]));
    expect(loss?.share).toBeCloseTo(0.06, 9);
    expect(loss?.energy).toBeCloseTo(0.06 * energy.value, 9);
  });

  it('keeps nothing where both curves are one, and nothing is told of a single reading', () => {
    const same = steadyRows.map(([drawIn, forceLb]) => [drawIn, forceLb, 'let-down'] as const);
    expect(drawn(bowRead([...steadyRows, ...same])).loss?.energy).toBeCloseTo(0, 9);
    expect(drawn(bowRead([...steadyRows, ...down.slice(0, 1)])).loss).toBeNull();
  });

  it('flags each reading above the draw, and tells no gain for a loss', () => {
    const above = steadyRows.map(([drawIn, forceLb]) => [drawIn, 1.05 * forceLb, 'let-down'] as const);
    const { loss, flags } = drawn(bowRead([...steadyRows, ...above]));
    expect(loss).toBeNull();
    expect(flags.map(({ index, code }) => [index, code])).toEqual(above.map((_, i) => [9 + i, 'let-down above draw']));
  });

  it('says nothing of the part that only one of the two was read over', () => {
    const { loss, energy } = drawn(bowRead([...steadyRows, ...down.slice(0, 5)]));
    expect(loss?.share).toBeCloseTo(0.06, 3);
    expect(loss?.energy ?? 0).toBeLessThan(0.06 * 0.5 * energy.value);
  });
});

describe('a brace height that has moved since the bow was read', () => {
  const read = { forceDrawBrace: 8 * inch };

  it('is said, leaves full draw alone, and stores less when it is higher and more when it is lower', () => {
    const still = drawn(bowRead(steadyRows, { forceDrawBrace: 8.5 * inch }));
    const higher = drawn(bowRead(steadyRows, read, { braceHeight: 8.5 * inch }));
    const lower = drawn(bowRead(steadyRows, { forceDrawBrace: 9 * inch }, { braceHeight: 8.5 * inch }));
    expect(still.notes).toEqual([]);
    expect(higher.notes.join(' ')).toContain('taken at a brace height of 8 in and it is 8 1/2 in now');
    for (const moved of [higher, lower]) {
      expect(moved.weight.value / pound).toBeCloseTo(34, 9);
      expect(moved.force(10.25 * inch).value).toBe(0);
      expect(moved.energy.high - moved.energy.low).toBeGreaterThan(still.energy.high - still.energy.low);
    }
    const before = drawn(bowRead(steadyRows, read, { braceHeight: 8 * inch }));
    expect(higher.energy.value).toBeLessThan(before.energy.value);
    expect(lower.energy.value).toBeGreaterThan(
      drawn(bowRead(steadyRows, { forceDrawBrace: 9 * inch }, { braceHeight: 9 * inch })).energy.value,
    );
  });

  it('makes the readings another bow’s when it has moved by a quarter of the stroke', () => {
    const far = drawn(bowRead(steadyRows, { forceDrawBrace: 3.5 * inch }));
    expect(far.from).toBe('marked weight');
    expect(far.notes.join(' ')).toContain('too far');
  });

  it('does not alter what was lost between drawing and letting down', () => {
    const rows = [...steadyRows, ...steadyRows.map(([drawIn, forceLb]) => [drawIn, 0.94 * forceLb, 'let-down'] as const)];
    expect(drawn(bowRead(rows, read)).loss?.share).toBeCloseTo(0.06, 9);
  });
});
