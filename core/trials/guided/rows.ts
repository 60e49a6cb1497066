import type { TrialKind, TrialPlan } from '../../model/trial.ts';
import type { TrialRow } from './types.ts';

/** A row of the sheet before anything is shot: where, which, and how many. */
export type PlannedRow = Pick<TrialRow, 'key' | 'place' | 'which' | 'end' | 'of' | 'arrows' | 'fletching' | 'optional'>;

type Place = NonNullable<TrialRow['place']>;

/**
 * The rows of a trial in shooting order.
 *
 * @equation two kinds: A B, B A by turns at each place; one kind: places upward in the first end, downward in the second; paper: fletched before bare at each distance; brace height: speeds after the first end of each height
 * @param kind - which trial [choice]
 * @param plan - its plan [record]
 * @returns the rows; their keys are all different [list]
 * @validity any plan that the records accept; a place named twice is shot once
 * @source common practice
 * @example plannedRows('clearance', { distances: [10], ends: 1, arrows: 3, others: 0, steps: [] }).length // 3
 */
export function plannedRows(kind: TrialKind, plan: TrialPlan): readonly PlannedRow[] {
  const places = placesOf(plan);
  const both = plan.others > 0;
  switch (kind) {
    case 'bare shaft':
    case 'a against b':
      return places.flatMap((place) => ends(plan).flatMap((end) => pair(kind, plan, place, end)));
    case 'nocking point':
      return thereAndBack(plan, places, (place, end) => (both ? pair(kind, plan, place, end) : [first(plan, place, end)]));
    case 'walk-back':
      return thereAndBack(plan, places, (place, end) => [first(plan, place, end)]);
    case 'brace height':
      return thereAndBack(plan, places, (place, end) => [first(plan, place, end), ...(end === 1 ? [speeds(place)] : [])]);
    case 'paper tear':
      return places.flatMap((place) => [
        ...shots(plan.ends * plan.arrows, 'tear', place, 'fletched'),
        ...shots(plan.ends * plan.others, 'tear', place, 'bare'),
      ]);
    case 'clearance':
      return shots(plan.ends * plan.arrows, 'clearance', null, 'fletched');
  }
}

function placesOf({ distances, steps }: TrialPlan): Place[] {
  const settings = steps.length === 0 ? [null] : [...new Set(steps)];
  return [...new Set(distances)].flatMap((distance) => settings.map((step) => ({ distance, step })));
}

const ends = ({ ends: count }: TrialPlan): number[] => Array.from({ length: count }, (_, i) => i + 1);
const keyOf = (place: Place | null, which: string, end: number): string =>
  `${place === null ? '' : `${place.distance}/${place.step ?? ''}/`}${which}/${end}`;

function thereAndBack(plan: TrialPlan, places: readonly Place[], at: (place: Place, end: number) => PlannedRow[]): PlannedRow[] {
  return ends(plan).flatMap((end) => (end % 2 === 1 ? places : places.toReversed()).flatMap((place) => at(place, end)));
}

const first = (plan: TrialPlan, place: Place, end: number): PlannedRow => ({
  key: keyOf(place, 'first', end),
  place,
  which: 'first',
  end,
  of: plan.ends,
  arrows: plan.arrows,
  fletching: 'fletched',
  optional: false,
});

/** Fletched or A first in one end, bare or B in the next, so that neither has the fresher arm. */
function pair(kind: TrialKind, plan: TrialPlan, place: Place, end: number): PlannedRow[] {
  const one = first(plan, place, end);
  if (plan.others === 0) return [one];
  const fletching = kind === 'a against b' ? 'fletched' : 'bare';
  const other: PlannedRow = { ...one, key: keyOf(place, 'second', end), which: 'second', arrows: plan.others, fletching };
  return end % 2 === 1 ? [one, other] : [other, one];
}

const speeds = (place: Place): PlannedRow => ({
  key: keyOf(place, 'speeds', 1),
  place,
  which: 'speeds',
  end: 1,
  of: 1,
  arrows: 3,
  fletching: 'fletched',
  optional: true,
});

function shots(count: number, which: 'tear' | 'clearance', place: Place | null, fletching: TrialRow['fletching']): PlannedRow[] {
  return Array.from({ length: count }, (_, i) => ({
    key: keyOf(place, which === 'tear' ? `${which} ${fletching}` : which, i + 1),
    place,
    which,
    end: i + 1,
    of: count,
    arrows: 1,
    fletching,
    optional: false,
  }));
}
