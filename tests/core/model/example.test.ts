import { describe, expect, it } from 'vitest';
import { Archer, ArrowSet, Bow, exampleBundle, exampleNow, Setup, ShotGroup, Stamp } from '../../../core/model/index.ts';

describe('the records behind the documented examples', () => {
  it('are records that the notebook would accept', () => {
    expect(Archer.parse(exampleBundle.archer)).toEqual(exampleBundle.archer);
    expect(Bow.parse(exampleBundle.bow)).toEqual(exampleBundle.bow);
    expect(ArrowSet.parse(exampleBundle.arrowSet)).toEqual(exampleBundle.arrowSet);
    expect(Setup.parse(exampleBundle.setup)).toEqual(exampleBundle.setup);
    expect(exampleBundle.groups).toHaveLength(2);
    for (const group of exampleBundle.groups) expect(ShotGroup.parse(group)).toEqual(group);
    expect(Stamp.parse(exampleNow)).toEqual(exampleNow);
  });

  it('point to each other', () => {
    const { archer, bow, arrowSet, setup, groups } = exampleBundle;
    expect([setup.archerId, setup.bowId, setup.arrowSetId]).toEqual([archer.id, bow.id, arrowSet.id]);
    for (const group of groups) expect([group.setupId, group.context.arrowSetId]).toEqual([setup.id, arrowSet.id]);
  });
});
