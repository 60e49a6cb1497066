import type { Bundle } from '../../../core/model/bundle.ts';
import type { Id, Stamp } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Tear, Trial } from '../../../core/model/trial.ts';
import { archerSpread, sheet, type TrialInput, type TrialRow, type TrialSheet } from '../../../core/trials/index.ts';
import { groupsOf, type Records } from '../../state/selectors.ts';

/** The ids of every group that a trial points to. */
const groupIds = (trial: Trial): readonly Id[] =>
  trial.groups.flatMap(({ first, second }) => [first, second]).filter((id) => id !== null);

/** The groups of a trial that are on record and not put away. */
function groupsOfTrial(records: Records, trial: Trial): ReadonlyMap<Id, ShotGroup> {
  const found = new Map<Id, ShotGroup>();
  for (const id of groupIds(trial)) {
    const group = records.get(id);
    if (group?.kind === 'group' && group.archivedAt === null) found.set(id, group);
  }
  return found;
}

/** A trial with all that it rests on; the archer's spread is told by the other groups on record, not by its own. */
export function trialInput(records: Records, bundle: Bundle, trial: Trial, units: UnitChoice, now: Stamp): TrialInput {
  const groups = groupsOfTrial(records, trial);
  const others = groupsOf(records, bundle.setup.id).filter(
    ({ id, context }) => !groups.has(id) && context.arrowSetId === bundle.arrowSet.id,
  );
  const spread = archerSpread(others, trial.plan.distances.at(-1) ?? 18, units);
  return { trial, bundle, groups, units, now, spread };
}

export const sheetOf = (records: Records, trial: Trial, units: UnitChoice): TrialSheet =>
  sheet({ trial, groups: groupsOfTrial(records, trial), units });

/** "2 of 8 ends shot": rows that may be left out are counted in neither, nor is an end that was broken off. */
export function shotText({ rows, next }: TrialSheet): string {
  const wanted = rows.filter(({ optional }) => !optional);
  const broken = wanted.find(({ key, shot, done }) => key === next && shot > 0 && !done);
  const done = wanted.filter((row) => row.done).length;
  const what = wanted.some(({ which }) => which === 'first') ? ' ends' : '';
  if (done === 0)
    return broken === undefined ? 'nothing shot yet' : `${broken.shot} ${broken.shot === 1 ? 'arrow' : 'arrows'} shot`;
  return done === wanted.length ? 'all shot' : `${done} of ${wanted.length}${what} shot`;
}

/** One word or two on how a trial stands, for the shelf. */
export function stateText(trial: Trial, rows: TrialSheet): string {
  if (trial.ended !== null) return 'ended';
  if (trial.cautionsRead === null) return 'planned';
  return trial.changes.length > 0 ? 'changed' : shotText(rows);
}

/** The row in hand: the one that was chosen, else the next that is wanted, else the last. */
export function rowInHand({ rows, next }: TrialSheet, key: string | null): TrialRow | null {
  return rows.find((row) => row.key === key) ?? rows.find((row) => row.key === next) ?? rows.at(-1) ?? null;
}

/** The row that comes after one in the order of shooting: the next that is wanted, from there on and then from the beginning. */
export function rowAfter(sheetOfTrial: TrialSheet, key: string): TrialRow | null {
  const { rows } = sheetOfTrial;
  // Who has noted speeds before has a chronograph standing there.
  const beside = rows.some(({ optional, done }) => optional && done) ? besideRow(sheetOfTrial, key) : null;
  if (beside !== null) return beside;
  const at = rows.findIndex((row) => row.key === key);
  // From speeds that were noted before the end they belong to, back to that end.
  const own = rows[at]?.optional === true ? rows[at - 1] : undefined;
  if (own !== undefined && !own.done) return own;
  const following = [...rows.slice(at + 1), ...rows.slice(0, at)];
  return following.find(({ done, optional }) => !done && !optional) ?? null;
}

/** A row right after this one that may be left out, and was so far: speeds belong to the height that stands on the bow now. */
export function besideRow({ rows }: TrialSheet, key: string): TrialRow | null {
  const row = rows[rows.findIndex((one) => one.key === key) + 1];
  return row !== undefined && row.optional && !row.done ? row : null;
}

export const placeOf = (trial: Trial, row: Pick<TrialRow, 'place'>) =>
  trial.groups.find(({ distance, step }) => distance === row.place?.distance && step === row.place?.step);

/** The tears of a row's distance and fletching, in order, each with its place in the trial's own list. */
export const tearsOf = (tears: readonly Tear[], row: Pick<TrialRow, 'place' | 'fletching'>) =>
  tears
    .map((tear, index) => ({ tear, index }))
    .filter(({ tear }) => tear.distance === row.place?.distance && tear.fletching === row.fletching);
