import { describe, expect, it } from 'vitest';
import { fitMarks, priorsOf } from '../../../../core/aim/index.ts';
import { exampleBundle } from '../../../../core/model/example.ts';
import { refusalOf, valueOf } from '../../group/shots.ts';
import { millimetreScale } from './anyMarks.ts';

const unknown = { sightRadius: null, spreadPerMetre: null };

describe('What bow and arrow let be held of the marks', () => {
  it('is wider where nobody measured', () => {
    const width = ({ low, high }: { low: number; high: number }) => high - low;
    const [told, untold] = [{ sightRadius: 0.8, spreadPerMetre: 0.002 }, unknown].map((sight) =>
      valueOf(priorsOf(exampleBundle, sight)),
    );
    expect(width(untold?.sightRadius ?? { low: NaN, high: NaN })).toBeGreaterThan(
      5 * width(told?.sightRadius ?? { low: NaN, high: NaN }),
    );
    expect(untold?.spreadPerMetre).toBeGreaterThan(0.002);
    const { setup } = exampleBundle;
    const anchored = valueOf(
      priorsOf({ ...exampleBundle, setup: { ...setup, form: { ...setup.form, eyeHeight: null } } }, unknown),
    );
    expect(width(anchored.eyeHeight)).toBeGreaterThan(2 * width(untold?.eyeHeight ?? { low: NaN, high: NaN }));
  });

  it('takes a learner’s arrows to scatter more than a settled archer’s (common practice)', () => {
    const spreadOf = (experience: 'learner' | 'settled' | null) =>
      valueOf(priorsOf({ ...exampleBundle, archer: { ...exampleBundle.archer, experience } }, unknown)).spreadPerMetre;
    expect(spreadOf('learner')).toBeGreaterThan(spreadOf('settled'));
    expect(spreadOf(null)).toBe(spreadOf('learner'));
  });

  it('is enough to fit two marks with, and asks for the arrow’s mass where it is missing', () => {
    const marks = [
      { distance: 18, reading: 30 },
      { distance: 30, reading: 45 },
    ];
    expect(refusalOf(fitMarks(marks, millimetreScale, valueOf(priorsOf(exampleBundle, unknown))))).toBe('none');
    const { arrowSet } = exampleBundle;
    const weightless = { ...exampleBundle, arrowSet: { ...arrowSet, weighed: null, linearDensity: null } };
    const found = priorsOf(weightless, unknown);
    expect(!found.ok && found.problem.sentence).toContain('mass');
  });
});
