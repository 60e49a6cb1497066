import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingModes, buildArrow, spineOf } from '../../../core/arrow/index.ts';
import { forceDrawOf, speedFor, stringFigures, strokeOfSetup, virtualMassOf } from '../../../core/bow/index.ts';
import { bestMatched, setStatistics, spreadAtTarget } from '../../../core/dozen/index.ts';
import { fieldOf } from '../../../core/findings/index.ts';
import { type Result, type ShotBundle } from '../../../core/model/index.ts';
import { suitability, whatWouldCentre } from '../../../core/suitability/index.ts';
import { anyShotBundle, anyUnits } from '../anyRecords.ts';

/** Distances are asked for on the screen that wants them, and belong to no record. */
const ofNoRecord = ['shootingDistance'];

describe('where the field of a figure stands', () => {
  it('is known of everything that a refusal of a set-up names', () => {
    const named = new Set<string>();
    fc.assert(
      fc.property(anyShotBundle, anyUnits, (bundle: ShotBundle, units) => {
        const { arrowSet, setup } = bundle;
        const answers: readonly Result<unknown>[] = [
          forceDrawOf(bundle, units),
          virtualMassOf(bundle, units),
          speedFor(bundle, 0.02),
          strokeOfSetup(bundle, units),
          stringFigures(bundle),
          buildArrow(arrowSet, units),
          bendingModes(arrowSet),
          spineOf(arrowSet),
          setStatistics(arrowSet, units),
          bestMatched(arrowSet, 6),
          spreadAtTarget(bundle, 30),
          suitability({ ...bundle, settings: setup.settings }),
          whatWouldCentre(bundle, units),
        ];
        for (const answer of answers)
          if (!answer.ok && answer.problem.field !== undefined && !ofNoRecord.includes(answer.problem.field))
            named.add(answer.problem.field);
      }),
      { numRuns: 100, seed: 7 },
    );
    expect([...named]).toEqual(expect.arrayContaining(['forceDraw', 'chronograph', 'arrows', 'stringMaterial', 'bowKind']));
    const nowhere = ['first', ''] as const;
    expect([...named].filter((field) => fieldOf(field, nowhere)[1] === '')).toEqual([]);
  });

  it('leads to the tables themselves', () => {
    const other = ['first', ''] as const;
    expect(['forceDraw', 'readingForce', 'chronograph', 'arrows'].map((field) => fieldOf(field, other)[1])).toEqual([
      'bow.forceDraw',
      'bow.forceDraw',
      'setup.chronograph',
      'arrowSet.arrows',
    ]);
  });
});
