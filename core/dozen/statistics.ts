import { ok, type ArrowSet, type Result, type UnitChoice } from '../model/index.ts';
import { outliersOf, type Outlier } from './outliers.ts';
import { shootingArrows } from './shooting.ts';
import { spreadOf, type Spread } from './spread.ts';
import { tolerancesOf, type Matching, type Tolerances } from './tolerances.ts';

/** What a numbered set is like as a whole. */
export interface SetStatistics {
  /** Arrows that are shot: those set aside are left out of every figure. */
  readonly shooting: number;
  readonly setAside: number;
  /** [kg] */
  readonly mass: Spread | null;
  /** Deflection as the set's tester reads it at the index mark [m]. */
  readonly spine: Spread | null;
  /** Most less least of four readings round each shaft, on the standard tester [m]. */
  readonly around: Spread | null;
  /** Total indicator reading [m]. */
  readonly straightness: Spread | null;
  readonly tolerances: Tolerances;
  readonly outliers: readonly Outlier[];
}

const known = <T>(figures: readonly (T | null)[]): T[] => figures.filter((one): one is T => one !== null);

/**
 * Mass, spine, spine round the shaft and straightness of a numbered set, and the arrows that do not belong with the others.
 *
 * @equation mean, s and ends over the arrows that are shot; outlying: farther from the median than the tolerance, less straight than it, or with a flaw
 * @param arrowSet - the set with its numbered arrows [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @param matching - for the club unless it says for a match [choice]
 * @returns spreads [SI], tolerances and outlying arrows with a sentence each [record]
 * @validity arrows set aside are left out; of fewer than three arrows none is called outlying by mass or spine; refused as shootingArrows is
 * @source from memory
 * @example setStatistics({ ...exampleBundle.arrowSet, arrows: [{ number: 1, mass: 0.021, spines: [], straightness: null, lookOver: null, lookedOver: null, setAside: false, note: '' }] }, defaultPreferences.units).value.mass.mean // 0.021
 */
export function setStatistics(arrowSet: ArrowSet, units: UnitChoice, matching: Matching = 'club'): Result<SetStatistics> {
  const shooting = shootingArrows(arrowSet);
  if (!shooting.ok) return shooting;
  const arrows = shooting.value;
  const tolerances = tolerancesOf(arrowSet.material, matching);
  return ok({
    shooting: arrows.length,
    setAside: arrowSet.arrows.length - arrows.length,
    mass: spreadOf(known(arrows.map(({ mass }) => mass))),
    spine: spreadOf(known(arrows.map(({ read }) => read))),
    around: spreadOf(known(arrows.map(({ around }) => around))),
    straightness: spreadOf(known(arrows.map(({ straightness }) => straightness))),
    tolerances,
    outliers: outliersOf(arrows, tolerances, arrowSet.material, units),
  });
}
