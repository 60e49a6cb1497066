import type { Bundle } from '../model/bundle.ts';
import type { ShotGroup } from '../model/group.ts';
import { defaultPreferences, type UnitChoice } from '../model/preferences.ts';
import type { ShownFigure } from '../model/snapshot.ts';
import type { DoubtedFigure, Figure, Section } from './figure.ts';
import { flightFigures } from './flightFigures.ts';
import { comparableGroups, groupFigures, type ChosenGroups } from './groupFigures.ts';
import { pointAheadFigure } from './pointAheadFigure.ts';
import { setupFigures } from './setupFigures.ts';

/** A set-up with its groups where it has any. */
export type MaybeShot = Bundle & { readonly groups?: readonly ShotGroup[] };

const sections: readonly Section[] = ['Build', 'On the bow', 'On the face', 'Far off'];

/**
 * Every figure of a set-up with the doubts it is made of.
 *
 * @equation build, bow, face, far off, in this order
 * @param bundle - the set-up with its records [record]
 * @param chosen - which groups to take [record]
 * @param units - the person's choice of units, for the notes [record]
 * @returns the figures [list]
 * @validity any set-up that the records accept
 * @source own derivation
 * @example doubtedFigures(exampleBundle, { fletched: null, trial: null }, defaultPreferences.units)[0].key // "mass"
 */
export function doubtedFigures(bundle: Bundle, chosen: ChosenGroups, units: UnitChoice): readonly DoubtedFigure[] {
  return inSections([
    ...setupFigures(bundle),
    pointAheadFigure(bundle),
    ...flightFigures(bundle, units),
    ...groupFigures(chosen, units),
  ]);
}

/**
 * Figures in the order of their sections.
 *
 * @equation build, bow, face, far off; within a section as they come
 * @param figures - the figures [list]
 * @returns the same figures [list]
 * @validity any figures
 * @source own derivation
 * @example inSections([]) // []
 */
export function inSections(figures: readonly DoubtedFigure[]): readonly DoubtedFigure[] {
  return sections.flatMap((section) => figures.filter((figure) => figure.section === section));
}

/**
 * The figures that the bench shows of one set-up, with how sure each is.
 *
 * @equation as doubtedFigures, of the newest fletched group and the newest bare one
 * @param bundle - the set-up with its records and, where there are any, its groups oldest first [record]
 * @param units - the person's choice of units, for the notes; the default when left out [record]
 * @returns the figures by section [list]
 * @validity any set-up that the records accept; what is not known is null and says what it waits for
 * @source own derivation
 * @example benchFigures(exampleBundle, defaultPreferences.units)[0].name // "Arrow mass"
 */
export function benchFigures(bundle: MaybeShot, units: UnitChoice = defaultPreferences.units): readonly Figure[] {
  const { fletched, trials } = comparableGroups(bundle.groups ?? []);
  return doubtedFigures(bundle, { fletched: fletched[0] ?? null, trial: trials[0] ?? null }, units).map(
    ({ doubts: _doubts, ...figure }) => figure,
  );
}

/**
 * The same figures as a snapshot keeps them: as they were shown at that moment.
 *
 * @equation key, name, use and value of benchFigures
 * @param bundle - the set-up with its records and groups [record]
 * @returns the figures [list]
 * @validity as benchFigures
 * @source own derivation
 * @example frozenFigures(exampleBundle)[0].use // "mass"
 */
export function frozenFigures(bundle: MaybeShot): ShownFigure[] {
  return benchFigures(bundle).map(({ key, name, use, value }) => ({ key, name, use, value }));
}
