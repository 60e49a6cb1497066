import { describe, expect, it } from 'vitest';
import { arrowModel, arrowsDiffer } from '../../core/group/index.ts';

/** Johnson and Wichern, 6th edition, example 6.9: three groups in the plane. Here each is one arrow, shot several times in one end. */
const groups = [
  [
    [9, 3],
    [6, 2],
    [9, 7],
  ],
  [
    [0, 4],
    [2, 0],
  ],
  [
    [3, 8],
    [1, 9],
    [2, 7],
  ],
] as const;

describe('Arrows that differ in the plane', () => {
  it('have the W, B, Λ and F of Johnson and Wichern, example 6.9', () => {
    const model = arrowModel(groups.flatMap((rows, i) => rows.map(([x, y]) => ({ x, y, arrow: i + 1, end: 1 }))));
    if (model === null) throw new Error('A model was expected.');
    expect([model.rest.xx, model.rest.xy, model.rest.yy]).toEqual([10, 1, 24].map((v) => expect.closeTo(v, 10)));
    expect([model.explained.xx, model.explained.xy, model.explained.yy]).toEqual([78, -12, 48].map((v) => expect.closeTo(v, 10)));
    const { wilks } = arrowsDiffer(model);
    // The book prints .0385 and 8.19; more digits and p computed independently.
    expect(wilks?.lambda).toBeCloseTo(0.03845535, 8);
    expect(wilks?.f).toBeCloseTo(8.1988595638, 8);
    expect(wilks?.df).toEqual([4, 8]);
    expect(wilks?.p).toBeCloseTo(0.0062340859, 9);
  });
});
