import type { Bundle } from '../../../core/model/bundle.ts';
import { conditionsPart } from './conditions/index.tsx';
import { flightPart } from './flight/index.tsx';
import { holdsPart } from './holds/index.tsx';
import { shootsWithoutSight } from './holds/holds.ts';
import { marksPart } from './marks/index.tsx';
import type { Part } from './part.ts';
import type { AimPart } from './store.ts';

export const parts: Readonly<Record<AimPart, Part>> = {
  marks: marksPart,
  holds: holdsPart,
  conditions: conditionsPart,
  flight: flightPart,
};

const all: readonly AimPart[] = ['marks', 'holds', 'conditions', 'flight'];

/** The part that this archer comes for, and those that are offered: points of aim are for a bow loosed off the fingers. */
export function partsFor(bundle: Bundle): { readonly usual: AimPart; readonly offered: readonly AimPart[] } {
  if (bundle.bow.bowKind === 'compound') return { usual: 'marks', offered: all.filter((part) => part !== 'holds') };
  return { usual: shootsWithoutSight(bundle) ? 'holds' : 'marks', offered: all };
}
