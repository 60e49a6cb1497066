import { launchSlope, markContext, marksPicture } from '../../core/aim/index.ts';
import { exampleBundle, exampleNow } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import type { Bundle, Settings, SightMark } from '../../core/model/index.ts';
import { marksView } from '../../renderer/features/aim/marks/derive.ts';

export const { units } = defaultPreferences;
export const yards: UnitChoice = { ...units, distance: 'yd' };
export const set = (settings: Partial<Settings>): Bundle => ({
  ...exampleBundle,
  setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, ...settings } },
});
export const bundle = set({ arrowSpeed: 55, sightUnit: 0.001, sightGrows: 'down', sightRadius: 0.85 });
export const read = (distance: number) => 10 + 850 * launchSlope(55, 0.0022, 0.11, distance);
let last = 0;
export const mark = (distance: number, reading = read(distance), of = bundle): SightMark => ({
  ...{ id: `30000000-0000-4000-8000-${String(++last).padStart(12, '0')}`, revision: 0, born: exampleNow, archivedAt: null },
  ...{ kind: 'sightMark', setupId: of.setup.id, distance, reading, shots: null, leftOut: null, note: '' },
  context: markContext(of, exampleNow),
});
export const viewOf = (marks: readonly SightMark[], of = bundle, inUnits = units) =>
  marksView(of, marksPicture(of, marks, null), null, inUnits, null);
