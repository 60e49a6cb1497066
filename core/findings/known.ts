import { arrowMass, buildArrow, type ArrowBuild, type ArrowMass } from '../arrow/index.ts';
import { drawWeight, heavierWeight, stringFigures, type DrawWeight, type StringFigures } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Result } from '../model/problem.ts';

/** What several checks rest on, each worked out at most once for a list, and only when a check asks. */
export interface Known {
  readonly mass: () => Result<ArrowMass>;
  readonly weight: () => Result<DrawWeight>;
  readonly heavier: () => Result<DrawWeight>;
  readonly build: () => Result<ArrowBuild>;
  readonly string: () => Result<StringFigures>;
}

function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => (done ??= { value: work() }).value;
}

/**
 * What several checks of a set-up rest on, for one list of findings.
 *
 * @equation each figure by its own room, at most once
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the figures, worked out when they are asked for [record]
 * @validity for one list: whoever changes a record makes it anew
 * @source own derivation
 * @example knownOf(exampleBundle, defaultPreferences.units).weight().ok // true
 */
export function knownOf(bundle: Bundle, units: UnitChoice): Known {
  const { archer, bow, arrowSet, setup } = bundle;
  const heavier = once(() => heavierWeight(bow, archer, setup.settings));
  return {
    mass: once(() => arrowMass(arrowSet)),
    weight: once(() => drawWeight(bow, archer, setup.settings)),
    heavier,
    build: once(() => buildArrow(arrowSet, units)),
    string: once(() => stringFigures(bundle, heavier)),
  };
}
