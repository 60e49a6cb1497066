import type { ShotGroup } from '../../model/group.ts';
import type { Trial, TrialGroups } from '../../model/trial.ts';
import { textQuantity } from '../../units/index.ts';
import { capital } from '../../findings/parts.ts';
import { plannedRows, type PlannedRow } from './rows.ts';
import type { TrialInput, TrialRow, TrialSheet } from './types.ts';

/**
 * Which data a trial still wants, in shooting order.
 *
 * @equation the rows of the plan; an end is done when a shot of its group names it, or when the group holds the arrows of so many ends; tears and powder marks by their count
 * @param input - the trial with its records [record]
 * @returns the rows with what is done, and the key of the next one [record]
 * @validity any trial; left-out shots were shot, so they count here
 * @source own derivation
 * @example sheet(exampleTrialInput).rows[1].text // "18 m, end 1 of 2: 2 bare"
 */
export function sheet(input: Pick<TrialInput, 'trial' | 'groups' | 'units'>): TrialSheet {
  const { trial } = input;
  const rows = plannedRows(trial.trial, trial.plan).map((row): TrialRow => {
    const at = placeOf(trial, row);
    const id = at === undefined ? null : row.which === 'second' ? at.second : row.which === 'first' ? at.first : null;
    const group = id === null ? undefined : input.groups.get(id);
    return { ...row, text: textOf(row, input), done: isDone(row, trial, at, group), group: group === undefined ? null : id };
  });
  return { rows, next: rows.find(({ done, optional }) => !done && !optional)?.key ?? null };
}

function placeOf(trial: Trial, { place }: PlannedRow): TrialGroups | undefined {
  return place === null
    ? undefined
    : trial.groups.find(({ distance, step }) => distance === place.distance && step === place.step);
}

function isDone(row: PlannedRow, trial: Trial, at: TrialGroups | undefined, group: ShotGroup | undefined): boolean {
  switch (row.which) {
    case 'tear':
      return (
        trial.tears.filter(({ distance, fletching }) => distance === row.place?.distance && fletching === row.fletching).length >=
        row.end
      );
    case 'clearance':
      return trial.clearance.length >= row.end;
    case 'speeds':
      return (at?.speeds.length ?? 0) > 0;
    default:
      return (
        group !== undefined && (group.shots.some(({ end }) => end === row.end) || group.shots.length >= row.arrows * row.end)
      );
  }
}

function textOf(row: PlannedRow, { trial, units }: Pick<TrialInput, 'trial' | 'units'>): string {
  const { place, which, end, of } = row;
  const step =
    place === null || place.step === null
      ? null
      : trial.trial === 'nocking point'
        ? `nocking point ${textQuantity(place.step, 'setting', units)}`
        : `brace height ${textQuantity(place.step, 'length', units)}`;
  const distance = place === null ? null : textQuantity(place.distance, 'distance', units);
  // What is the same throughout is not said with every row.
  const one = step !== null && new Set(trial.plan.distances).size === 1;
  const where = [step, one || which === 'speeds' ? null : distance].filter((part) => part !== null);
  switch (which) {
    case 'tear':
      return `${where.join(', ')}: ${row.fletching} tear ${end} of ${of}`;
    case 'clearance':
      return `Shot ${end} of ${of}: what has a mark on it`;
    case 'speeds':
      return `${capital(where.join(', '))}: arrow speeds`;
    default:
      return `${capital([...where, ...(of > 1 ? [`end ${end} of ${of}`] : [])].join(', '))}: ${row.arrows} ${whatOf(row, trial)}`;
  }
}

function whatOf(row: PlannedRow, { trial }: Trial): string {
  if (trial === 'a against b') return row.which === 'first' ? 'of A' : 'of B';
  if (trial === 'bare shaft' || row.which === 'second' || trial === 'nocking point') return row.fletching;
  return row.arrows === 1 ? 'arrow' : 'arrows';
}
