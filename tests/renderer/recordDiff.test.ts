import { describe, expect, it } from 'vitest';
import { frozenFigures } from '../../core/compare/index.ts';
import { defaultPreferences, exampleBundle, Snapshot, type ShownFigure } from '../../core/model/index.ts';
import { isUse } from '../../core/units/index.ts';
import { diffOf } from '../../renderer/features/record/diff.ts';
import { snapshotOf } from '../../renderer/features/record/takeSnapshot.ts';

const { units } = defaultPreferences;
const taken = { at: '2026-05-03T09:00:00Z', offsetMinutes: 60 };
const birth = { id: '20000000-0000-4000-8000-000000000001', name: 'Spring', note: '', taken, programVersion: '9.0.0' };
const shown = frozenFigures(exampleBundle);

/** The rows of figures between a snapshot that showed these figures and the set-up as it stands. */
const rowsFrom = (figures: readonly ShownFigure[]) => {
  const from = Snapshot.parse(snapshotOf(exampleBundle, figures, birth));
  return diffOf({ from, to: null, then: exampleBundle, now: exampleBundle, elsewhere: null }, '0.1.0', units).figures;
};

describe('the figures that a snapshot was shown with', () => {
  it('have uses that this version knows when it froze them', () => {
    expect(shown.length).toBeGreaterThan(10);
    expect(shown.filter(({ use }) => !isUse(use))).toEqual([]);
    expect(isUse('torque')).toBe(false);
  });

  it('make no row where they read alike', () => {
    expect(rowsFrom(shown)).toEqual([]);
  });

  it('make a row with the signed difference where they read otherwise', () => {
    const heavier = shown.map((figure) =>
      figure.key === 'mass' ? { ...figure, value: (figure.value ?? 0) + 10 * 6.479891e-5 } : figure,
    );
    expect(rowsFrom(heavier)).toEqual([{ key: 'mass', name: 'Arrow mass', then: '336 gr', now: '326 gr', difference: '−10 gr' }]);
  });

  it('are kept and said to be not known here when a later version worked them out for a use that this one lacks', () => {
    const twist = { key: 'twist', name: 'Twist of the limbs', use: 'torque', value: 1.5 };
    const asTorque = shown.map((figure) => (figure.key === 'mass' ? { ...figure, use: 'torque' } : figure));
    const none = { then: 'not known here', difference: '' };
    expect(rowsFrom([...shown, twist])).toEqual([{ ...none, key: 'twist', name: 'Twist of the limbs', now: 'not known here' }]);
    expect(rowsFrom(asTorque)).toEqual([{ ...none, key: 'mass', name: 'Arrow mass', now: '326 gr' }]);
  });
});
