import { describe, expect, it } from 'vitest';
import { launchSlope, marksPicture, seeded, strip } from '../../core/aim/index.ts';
import { exampleNow } from '../../core/model/example.ts';
import type { Settings } from '../../core/model/index.ts';
import { textQuantity } from '../../core/units/index.ts';
import { marksView, spanDistances, withStrip } from '../../renderer/features/aim/marks/derive.ts';
import { bundle, mark, read, set, units, viewOf, yards } from './marksShot.ts';
import { lineData } from '../../renderer/features/aim/marks/plots.ts';
import { rangeCard } from '../../renderer/features/aim/marks/rangeCard.ts';
import { stripPaper } from '../../renderer/features/aim/marks/stripPaper.ts';
import {
  changeText,
  expectedText,
  fixedOf,
  halfText,
  lineNote,
  marksHead,
  nextText,
  tableNote,
  verdictText,
} from '../../renderer/features/aim/marks/words.ts';

describe('The table of marks', () => {
  it('is blank before the first mark, and asks for two', () => {
    const view = viewOf([]);
    expect(view.rows).toEqual([]);
    expect(view.next).toBeNull();
    expect(marksHead(view, units).title).toBe('Two marks, shot in, will fix the sight');
    expect(tableNote(view)).toContain('two distances that lie far apart');
  });

  it('has the usual distances and the known ones, each with a reading and what it is on the face', () => {
    const { rows } = viewOf([mark(18), mark(55)]);
    expect(rows.map(({ distance }) => distance)).toEqual([10, 18, 20, 30, 40, 50, 55, 60, 70]);
    expect(rows.filter((row) => row.mark !== null).map(({ distance }) => distance)).toEqual([18, 55]);
    for (const { reading, onFace, distance } of rows) {
      const half = ((reading?.high ?? NaN) - (reading?.low ?? NaN)) / 2000;
      // The rule of the sight, b = Δq R/r, with r near the measured one.
      expect(onFace).toBeGreaterThan((half * distance) / 0.87);
      expect(onFace).toBeLessThan((half * distance) / 0.83);
    }
  });

  it('has yards by preference, and distances from one to another by choice', () => {
    const inYards = viewOf([mark(18), mark(50)], bundle, yards).rows.map(({ distance }) =>
      textQuantity(distance, 'distance', yards),
    );
    expect(inYards).toEqual(['10 yd', '19.7 yd', '20 yd', '30 yd', '40 yd', '50 yd', '54.7 yd', '60 yd', '70 yd', '80 yd']);
    const span = { from: 10, to: 30, step: 5 };
    expect(
      marksView(bundle, marksPicture(bundle, [mark(18), mark(50)], null), null, units, span).rows.map(({ distance }) => distance),
    ).toEqual([10, 15, 18, 20, 25, 30, 50]);
    expect(spanDistances({ from: 1, to: 120, step: 0.1 })).toHaveLength(120);
  });

  // A learner with a slow bow is not sent to 70 m: 40 m/s at 8 degrees carry 45 m without air.
  it('does not send a slow bow far, unless its mark is there', () => {
    const slow = set({ arrowSpeed: 40, sightUnit: 0.001, sightGrows: 'down' });
    const far = (distances: readonly number[]) =>
      Math.max(
        ...viewOf(
          distances.map((distance) => mark(distance, 20 + distance, slow)),
          slow,
        ).rows.map((row) => row.distance),
      );
    expect(far([10, 25])).toBe(40);
    expect(far([10, 55])).toBe(55);
  });

  // 38 m/s at 20 degrees carry 95 m without air, from v² sin 2θ/g, and less with it: nobody is led to raise a bow further.
  it('names no next distance for which a slow bow would be raised too far, though the table be asked for it', () => {
    const slow = set({ arrowSpeed: 38, sightUnit: 0.001, sightGrows: 'down', sightRadius: 0.85 });
    const place = (distance: number) => 10 + 850 * launchSlope(38, 0.0022, 0.11, distance);
    const marks = [10, 18].map((distance) => mark(distance, place(distance), slow));
    const view = marksView(slow, marksPicture(slow, marks, null), null, units, { from: 10, to: 120, step: 10 });
    const farthest = Math.max(...view.rows.filter(({ reading }) => reading !== null).map(({ distance }) => distance));
    expect(farthest).toBeGreaterThan(95);
    expect(view.next?.distance).toBeLessThan(95);
    expect(view.next?.worstAt).toBeLessThan(95);
  });

  it('keeps two marks of one distance apart, and marks that fit no flight without a reading', () => {
    const { rows } = viewOf([mark(18), mark(18, read(18) + 0.2), mark(50)]);
    expect(rows.filter(({ distance }) => distance === 18)).toHaveLength(2);
    const refused = viewOf([mark(30, 120 - read(30)), mark(50, 120 - read(50))]);
    expect(refused.rows.map(({ distance, reading }) => [distance, reading])).toEqual([
      [30, null],
      [50, null],
    ]);
    expect(marksHead(refused, units).title).toBe('The marks stand in the wrong order');
    expect(refused.otherScale).toMatchObject({ grows: 'up' });
  });
});

describe('The words of the marks', () => {
  it('say how far the sight is fixed, how well, and what to shoot next', () => {
    const view = viewOf([mark(18), mark(30)]);
    expect(nextText(view, units)).toMatch(/^Shoot 70 m next: the worst, ± .* mm there, comes down to ± .* mm\.$/);
    expect(marksHead(view, units).note).toMatch(/95 %: shoot one more mark there before you print it\.$/);
  });

  // At least a quarter narrower, or nobody's end is better spent: from memory.
  it('rest their advice once one more mark would tell little', () => {
    const view = viewOf([mark(18), mark(30), mark(50)]);
    const fixed = fixedOf(view);
    expect(fixed).not.toBeNull();
    expect(marksHead(view, units).title).toMatch(/^Three marks fix the sight to \d\.?\d? mm (out to|from 1\d m to) [567]0 m$/);
    expect(marksHead(view, units).note).toMatch(/^At 70 m.* it is ± \d+\.?\d? mm, or \d+ cm on the face. 95 %\.$/);
    expect([view.next, nextText(view, units)]).toEqual([null, null]);
    const asked = viewOf([mark(18), mark(30)]).next;
    expect(asked?.worstThen).toBeLessThanOrEqual(0.75 * (asked?.worstNow ?? 0));
  });

  it('say that one mark leaves the rest to the figures', () => {
    const view = viewOf([mark(30)], set({ sightUnit: 0.001, sightGrows: 'down' }));
    expect(marksHead(view, units).title).toMatch(/^One mark (leaves the sight unsure|fixes the sight)/);
    expect(view.picture.fit?.ok === true && view.picture.fit.value.notes.map(({ code }) => code)).toEqual(['one-mark']);
  });

  it('name the mark that does not fit, and ask for nothing else first', () => {
    const view = viewOf([mark(18), mark(30), mark(40, read(40) + 12), mark(50), mark(60)]);
    expect(marksHead(view, units).title).toBe('The mark for 40 m does not fit the other four');
    expect(view.next).toBeNull();
    expect(view.rows.filter(({ mark: one }) => one !== null).map(verdictText)).toEqual([
      'fits',
      'fits',
      'does not fit',
      'fits',
      'fits',
    ]);
    const out = viewOf(view.picture.proven.map((one) => (one.distance === 40 ? { ...one, leftOut: 'misread' } : one)));
    expect(out.rows.map(verdictText).filter((text) => text !== '')).toEqual(['fits', 'fits', 'left out', 'fits', 'fits']);
    expect(marksHead(out, units).title).toMatch(/^Four marks fix/);
  });

  it('name none of two that do not go together', () => {
    const head = marksHead(viewOf([mark(18), mark(50, read(50) + 12)]), units);
    expect(head.title).toBe('The two marks do not go together');
    expect(head.note).toMatch(/^Neither can be blamed by itself/);
  });

  it('say first of all that the marks go together on another scale', () => {
    const of = set({ arrowSpeed: 55, sightRadius: 0.85 });
    const view = viewOf([mark(18, read(18) / 10, of), mark(50, read(50) / 10, of)], of);
    expect(view.otherScale?.unit).toBe(0.01);
    expect(marksHead(view, units).note).toMatch(/^Read with 10 mm a unit they go together/);
  });

  it('say nothing but the brace height while that must be mended first', () => {
    const view = viewOf([mark(18), mark(30)]);
    expect(marksHead(view, units, true)).toEqual({
      title: marksHead(view, units).title,
      note: 'Brace height first: mending it moves every mark.',
    });
  });

  it('say that the pin does not go there, and send nobody there', () => {
    const short = set({ ...bundle.setup.settings, sightHighest: 104 });
    const view = viewOf([mark(18, read(18), short), mark(22, read(22), short)], short);
    const off = view.rows.filter((row) => verdictText(row).includes('off the bar')).map(({ distance }) => distance);
    expect(off).toContain(70);
    expect(view.rows.filter(({ bar }) => bar === 'off').every(({ reading }) => (reading?.value ?? 0) > 104)).toBe(true);
    expect(viewOf([mark(18), mark(22)]).next?.distance).toBe(70);
    expect(view.next?.distance ?? 0).toBeLessThan(70);
    expect(marksHead(view, units).title).not.toContain('70 m');
    // Numbers that grow upward come down to nought with the distance.
    const up = set({ ...bundle.setup.settings, sightGrows: 'up' });
    const below = viewOf([mark(18, 100 - read(18), up), mark(30, 100 - read(30), up)], up);
    expect(below.rows.filter(({ bar }) => bar === 'below 0').map(verdictText)).toContain('below 0: off the bar?');
    expect(tableNote(below)).toContain('Whether the pin goes below 0');
  });

  it('are in the numbers of the scale where settings are shown in inches', () => {
    const inches = { ...units, setting: 'in' } as const;
    const view = viewOf([mark(18), mark(30)], bundle, inches);
    expect(marksHead(view, inches).title).toMatch(/ \d\.\d on the scale /);
    expect(nextText(view, inches)).toMatch(/± \d+\.\d on the scale there/);
    expect(lineData(view, inches)?.unit).toBe('on the scale');
    expect(lineData(view, inches)?.line).toEqual(lineData(view, units)?.line);
  });

  it('tell what the mark that is typed should read', () => {
    const view = viewOf([mark(18), mark(50)]);
    const row = view.rows.find(({ distance }) => distance === 60)?.reading;
    const [value, half] = [row?.value ?? NaN, ((row?.high ?? NaN) - (row?.low ?? NaN)) / 2];
    expect(expectedText(view, 60)).toBe(`${value.toFixed(1)} ± ${half.toFixed(1)}`);
    expect(expectedText(viewOf([]), 60)).toBeNull();
  });

  it('say that no mark is proven any more, and what changed', () => {
    const now = set({ arrowSpeed: 55, sightUnit: 0.001, sightGrows: 'down', sightRadius: 0.85, strands: 18 });
    const then = set({
      arrowSpeed: 57,
      sightUnit: 0.001,
      sightGrows: 'down',
      sightRadius: 0.85,
      strands: 16,
      stringFitted: '2026-03-01',
    });
    const view = viewOf([mark(18, read(18), then), mark(50, read(50), then)], now);
    expect(marksHead(view, units).title).toBe('Both marks are no longer proven');
    expect(view.picture.unproven[0]?.changes.map((change) => changeText(change, units, exampleNow))).toEqual([
      'Measured speed: 187 ft/s then, 180 ft/s now',
      'Strands: 16 then, 18 now',
    ]);
    expect(view.rows.every(({ mark: one, reading }) => one === null && reading !== null)).toBe(true);
    expect(lineData(view, units)).toBeNull();
  });

  it('say what of the scale is assumed', () => {
    const told = (settings: Partial<Settings>) => tableNote(viewOf([mark(18, read(18), set(settings))], set(settings)));
    expect(told({ arrowSpeed: 55 })).toContain('taken as 1 mm until somebody gives it. Its numbers are taken to grow downward.');
    expect(told({ arrowSpeed: 55, sightUnit: 0.001, sightGrows: 'down' })).not.toContain('taken as 1 mm');
  });
});

describe('The known marks off the fitted line', () => {
  it('are off by what they read more than the fit, in the unit of settings', () => {
    const data = lineData(viewOf([mark(18), mark(30), mark(50, read(50) + 1), { ...mark(60), leftOut: 'windy' }]), units);
    expect(data?.known.map(({ counts }) => counts)).toEqual([true, true, true, false]);
    const [, , at50] = data?.known ?? [];
    // What was added is shared between the mark and the line that follows it.
    expect(at50?.off).toBeGreaterThan(0.1);
    expect(at50?.off).toBeLessThan(1.5);
    expect(data?.line).toHaveLength(61);
  });
});

describe('The line where a mark does not fit', () => {
  it('is that of the others, and the mark lies off it', () => {
    const view = viewOf([mark(18), mark(30), mark(40, read(40) + 12), mark(50), mark(60)]);
    const data = lineData(view, units);
    const half = (at: number) =>
      data?.line.reduce((a, b) => (Math.abs(b.distance - at) < Math.abs(a.distance - at) ? b : a)).half;
    expect(data?.known).toHaveLength(5);
    for (const { distance, off, fits } of data?.known ?? []) {
      expect(fits).toBe(distance !== 40);
      if (fits) expect(Math.abs(off)).toBeLessThan(half(distance) ?? 0);
      else expect(off).toBeGreaterThan(4 * (half(distance) ?? NaN));
    }
    expect(lineNote(view, units)).toContain('of the others');
    expect(lineNote(viewOf([mark(18), mark(50)]), units)).not.toContain('of the others');
  });
});

describe('The intervals of the worker', () => {
  const view = viewOf([mark(18), mark(50), mark(54.864)]);
  const told = view.picture.fit?.ok === true ? strip(view.picture.fit.value, 10, 70, 1, 400, seeded(3)) : null;
  const rows = told?.ok === true ? told.value : [];
  const finer = withStrip(view, rows);

  it('stand in table, headline and papers alike once they are there', () => {
    expect(rows).toHaveLength(61);
    const paper = stripPaper(finer, rows, units);
    const card = rangeCard(finer, { from: 10, to: 70, step: 10 }, units);
    if (!paper.ok || !card.ok) throw new Error('no paper');
    for (const { distance, reading } of finer.rows) {
      const onPaper = paper.value.rows.find((row) => Math.abs(row.distance - distance) < 0.005);
      expect(onPaper?.reading).toEqual(reading);
      const onCard = card.value.rows[Math.round(distance / 10) - 1];
      if (distance % 10 === 0) expect(onCard?.[2]).toBe(halfText(reading ?? { value: 0, low: 0, high: 0 }, view.picture.scale));
    }
    expect(finer.rows.map(({ mark: one }) => one?.id)).toEqual(view.rows.map(({ mark: one }) => one?.id));
    const half = (of: typeof view) => of.rows.map(({ reading }) => ((reading?.high ?? 0) - (reading?.low ?? 0)) / 2);
    half(finer).forEach((one, i) => expect(one / (half(view)[i] ?? NaN)).toBeCloseTo(1, 0));
    expect(half(finer)).not.toEqual(half(view));
  });
});
