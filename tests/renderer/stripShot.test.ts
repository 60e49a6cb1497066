import { describe, expect, it } from 'vitest';
import { seeded, strip } from '../../core/aim/index.ts';
import { yard } from '../../core/units/exact.ts';
import { rangeCard } from '../../renderer/features/aim/marks/rangeCard.ts';
import { stripPaper } from '../../renderer/features/aim/marks/stripPaper.ts';
import { bundle, mark, units, viewOf } from './marksShot.ts';

describe('Marks that were shot in yards, on a strip of metres', () => {
  const view = viewOf([mark(20 * yard), mark(50 * yard), { ...mark(40 * yard), leftOut: 'windy' }, mark(30)]);
  const paperTo = (to: number) => {
    const { fit } = view.picture;
    const rows = fit?.ok === true ? strip(fit.value, 10, 45, 1, 200, seeded(3)) : null;
    const paper = stripPaper(view, rows?.ok === true ? rows.value : [], units, to);
    if (!paper.ok) throw new Error(paper.problem.sentence);
    return paper.value.rows;
  };

  it('have rows of their own in their place, but for one that is left out', () => {
    const rows = paperTo(60);
    // 20 yd are 18.288 m and 50 yd are 45.72 m.
    expect(rows.filter(({ known }) => known).map(({ label }) => label)).toEqual(['18.3', '30', '45.7']);
    expect(rows.map(({ distance }) => distance)).toEqual(rows.map(({ distance }) => distance).toSorted((a, b) => a - b));
    expect(rows).toHaveLength(36 + 2);
    const readings = ['18', '18.3', '19'].map((name) => rows.find(({ label }) => label === name)?.reading?.value ?? NaN);
    expect(readings).toEqual(readings.toSorted((a, b) => a - b));
    expect(readings).not.toContain(NaN);
  });

  it('but none past the end that was asked for', () => {
    expect(
      paperTo(45)
        .filter(({ known }) => known)
        .map(({ label }) => label),
    ).toEqual(['18.3', '30']);
  });
});

describe('Marks of another arrow length than the one in use', () => {
  it('are no longer proven on paper', () => {
    const { arrowSet } = bundle;
    const longer = { ...bundle, arrowSet: { ...arrowSet, length: (arrowSet.length ?? 0.7) + 0.02 } };
    for (const [of, proven] of [
      [bundle, true],
      [longer, false],
    ] as const) {
      const view = viewOf([mark(18), mark(30), mark(50)], of);
      expect(stripPaper(view, [], units)).toMatchObject({ ok: true, value: { proven } });
      expect(rangeCard(view, { from: 20, to: 50, step: 10 }, units)).toMatchObject({ ok: true, value: { proven } });
    }
  });
});
