import type { ShotGroup } from '../../model/group.ts';
import type { Trial, TrialGroups } from '../../model/trial.ts';
import { textQuantity } from '../../units/index.ts';
import { capital } from '../../findings/parts.ts';
import { plannedRows, type PlannedRow } from './rows.ts';
import type { TrialInput, TrialRow, TrialSheet } from './types.ts';

/**
 * Which data a trial still wants, in shooting order.
 *
 * @equation the rows of the plan; an end is done when a shot of its group names it, or when the group holds the arrows of so many ends; tears and powder marks by their count; the end shot last is not done while it wants arrows; next is the first that is not done
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
    const shot = shotIn(row, trial, at, group);
    const whole = (group?.shots.length ?? 0) >= row.arrows * row.end;
    const done = onFace(row) ? group !== undefined && (whole || group.shots.some(({ end }) => end === row.end)) : shot > 0;
    return { ...row, text: textOf(row, input), shot, done, group: group === undefined ? null : id };
  });
  const next = nextOf(rows);
  return { rows: rows.map((row) => (row === next ? { ...row, done: false } : row)), next: next?.key ?? null };
}

/** The first row that is not shot yet; an end that was broken off right before it is shot to its end first. */
function nextOf(rows: readonly TrialRow[]): TrialRow | undefined {
  const wanted = rows.filter(({ optional }) => !optional);
  const open = wanted.findIndex(({ done }) => !done);
  const last = wanted.at(open === -1 ? -1 : open - 1);
  const broken = open !== 0 && last !== undefined && last.shot > 0 && last.shot < last.arrows;
  return broken ? last : wanted[open];
}

const onFace = ({ which }: PlannedRow): boolean => which === 'first' || which === 'second';

function placeOf(trial: Trial, { place }: PlannedRow): TrialGroups | undefined {
  return place === null
    ? undefined
    : trial.groups.find(({ distance, step }) => distance === place.distance && step === place.step);
}

/** How many arrows of a row are there: shots of its end, or of a group whose ends nobody noted what is left for it. */
function shotIn(row: PlannedRow, trial: Trial, at: TrialGroups | undefined, group: ShotGroup | undefined): number {
  const { which, end, arrows, place, fletching } = row;
  switch (which) {
    case 'tear': {
      const tears = trial.tears.filter((tear) => tear.distance === place?.distance && tear.fletching === fletching);
      return tears.length >= end ? 1 : 0;
    }
    case 'clearance':
      return trial.clearance.length >= end ? 1 : 0;
    case 'speeds':
      return at?.speeds.length ?? 0;
    default: {
      const shots = group?.shots ?? [];
      const own = shots.filter((shot) => shot.end === end).length;
      const loose = shots.filter((shot) => shot.end === null).length;
      return own + Math.max(0, Math.min(arrows, loose - arrows * (end - 1)));
    }
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
