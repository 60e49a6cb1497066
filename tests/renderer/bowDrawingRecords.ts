import fc from 'fast-check';
import type { Bow } from '../../core/model/bow.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import type { Settings } from '../../core/model/setup.ts';
import { inch } from '../../core/units/exact.ts';

export const inches = defaultPreferences.units;
export const unitsTried: readonly UnitChoice[] = [
  inches,
  { ...inches, length: 'cm', setting: 'cm' },
  { ...inches, length: 'mm', setting: 'in' },
];

export interface Figures {
  readonly kind: Bow['bowKind'];
  readonly hand: 'right' | 'left';
  readonly lengthIn: number;
  readonly braceIn: number;
  readonly arrowIn: number;
  readonly settings?: Partial<Settings>;
  readonly bow?: Partial<Bow>;
}

/** The example's records with another bow. */
export const bundleOf = ({ kind, hand, lengthIn, braceIn, arrowIn, settings = {}, bow = {} }: Figures): Bundle => ({
  ...exampleBundle,
  bow: {
    ...exampleBundle.bow,
    bowKind: kind,
    hand,
    length: lengthIn * inch,
    arrowPass: kind === 'longbow' || kind === 'self bow' ? 'hand' : kind === 'take-down recurve' ? 'rest and button' : 'shelf',
    ...bow,
  },
  arrowSet: { ...exampleBundle.arrowSet, length: arrowIn * inch },
  setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, braceHeight: braceIn * inch, ...settings } },
});

/** Bows that are, and bows that hardly can be. */
export const anyFigures = fc.record({
  kind: fc.constantFrom<Bow['bowKind']>('take-down recurve', 'one-piece recurve', 'longbow', 'flatbow', 'self bow', 'compound'),
  hand: fc.constantFrom('right' as const, 'left' as const),
  lengthIn: fc.integer({ min: 48, max: 78 }),
  braceIn: fc.double({ min: 5, max: 10, noNaN: true }),
  arrowIn: fc.double({ min: 20, max: 34, noNaN: true }),
  settings: fc.record(
    {
      nockingPoint: fc.double({ min: -0.02, max: 0.03, noNaN: true }),
      centreShot: fc.double({ min: -0.01, max: 0.02, noNaN: true }),
      tillerUpper: fc.double({ min: 0.12, max: 0.26, noNaN: true }),
      tiller: fc.double({ min: -0.03, max: 0.03, noNaN: true }),
    },
    { requiredKeys: [] },
  ),
});
