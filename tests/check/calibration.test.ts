import { describe, expect, it } from 'vitest';
import { figures, rowsAt, worstRows } from '../calibration/all.ts';
import { rowsOf, type Figure } from '../calibration/row.ts';
import { round } from '../calibration/scatter.ts';
import { FALSE_SHIFT, falseShift } from '../calibration/shift.ts';
import { renewed, tableOf } from '../calibration/table.ts';

const threes = { n: [3, 3], first: round, second: round, words: 'round' } as const;
const honest = falseShift(FALSE_SHIFT, threes, [0.03, 0.06]);
/** A test that is told to keep 20 % where 5 % is promised. */
const broken = falseShift(FALSE_SHIFT, threes, [0.03, 0.06], 0.2);
const few = (figure: Figure): Figure => ({ ...figure, draws: 4000 });

describe('The calibration', () => {
  it('counts the same whatever was counted before it, and something else with another seed', () => {
    const [first, second] = [0, 1];
    const forwards = [rowsAt(first, 7, true), rowsAt(second, 7, true)];
    const backwards = [rowsAt(second, 7, true), rowsAt(first, 7, true)].reverse();
    expect(forwards[0]?.length).toBe(1);
    expect(backwards).toEqual(forwards);
    expect(rowsAt(first, 8, true)).not.toEqual(forwards[0]);
  });

  it('says that a test which gives 20 % of false alarms does not hold', () => {
    const [[good], [bad]] = [rowsOf(few(honest), 1, false), rowsOf(few(broken), 1, false)];
    expect([good?.holds, bad?.holds]).toEqual([true, false]);
    expect(bad?.value).toBeGreaterThan(0.12);
    const worst = worstRows([good, bad].flatMap((row) => (row === undefined ? [] : [row])));
    expect(worst.map(({ value, holds }) => [value, holds])).toEqual([[bad?.value, false]]);
    expect(tableOf(bad === undefined ? [] : [bad])).toMatch(/\| \.1\d\d .*\| \.030 to \.060 \| \*\*no\*\* +\|/);
  });

  it('has a name of its own for every figure, which is its seed', () => {
    expect(figures.length).toBeGreaterThan(100);
    expect(new Set(figures.map(({ name }) => name)).size).toBe(figures.length);
  });

  it('puts its table between the marks of a page, and nowhere else', () => {
    const page = 'above\n<!-- calibration: begin -->\nold\n<!-- calibration: end -->\nbelow\n';
    expect(renewed(page, 'new')).toBe('above\n<!-- calibration: begin -->\n\nnew\n\n<!-- calibration: end -->\nbelow\n');
    expect(() => renewed('a page without marks', 'new')).toThrow(/no place/);
  });
});
