import { describe, expect, it } from 'vitest';
import { exampleBundle, exampleNow } from '../../core/model/example.ts';
import type { Bundle } from '../../core/model/index.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { grain, inch } from '../../core/units/exact.ts';
import { paperHead } from '../../renderer/features/aim/print/head.ts';

const { units } = defaultPreferences;
const named = (name: string): Bundle => ({
  ...exampleBundle,
  arrowSet: { ...exampleBundle.arrowSet, name, length: 28.5 * inch, pointMass: 110 * grain },
});
const arrows = (name: string) => paperHead(named(name), units, exampleNow, 'metres').arrows;

describe('The head of a paper', () => {
  it('names the arrows with their length and their point, and says neither twice', () => {
    expect(arrows('Green dozen')).toBe('Green dozen, 28 1/2 in, 110 gr point');
    expect(arrows('Green dozen, 110 gr point')).toBe('Green dozen, 110 gr point, 28 1/2 in');
    expect(arrows('Green dozen, 1110 gr point')).toContain(', 110 gr point');
  });
});
