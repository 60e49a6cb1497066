import type { Bundle } from '../../../core/model/bundle.ts';
import type { Id } from '../../../core/model/common.ts';
import type { FaceId, ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { BenchRecord } from '../../../core/model/records.ts';
import type { ClearanceShot, Tear, Trial, TrialGroups, TrialKind, TrialPlan } from '../../../core/model/trial.ts';
import { braceOutside, newTrialPlan, type TrialRow } from '../../../core/trials/index.ts';
import { born, edited, type Bench } from '../../state/bench.ts';
import { newGroup, newTrial } from '../../state/births.ts';
import { bundleOf } from '../../state/selectors.ts';
import { placeOf, tearsOf } from './derive.ts';
import { kindNames } from './kinds.ts';

/** Writes one trial anew from what it is when the write's turn comes; null changes nothing. */
function rewrite(bench: Bench, trialId: Id, label: string, patch: (trial: Trial) => Partial<Trial> | null): Promise<boolean> {
  return bench.getState().change(label, (records) => {
    const trial = records.get(trialId);
    const next = trial?.kind === 'trial' ? patch(trial) : null;
    return trial?.kind === 'trial' && next !== null ? [edited(trial, next)] : [];
  });
}

/** A new trial with the usual plan, or with that of the one it repeats; null when it could not be kept. */
export async function beginTrial(
  bench: Bench,
  bundle: Bundle,
  kind: TrialKind,
  units: UnitChoice,
  again: Pick<Trial, 'plan' | 'between'> | null = null,
): Promise<Id | null> {
  const trial = newTrial(bundle.setup.id, kind, kindNames[kind], again?.plan ?? newTrialPlan(kind, bundle, units));
  const done = await bench.getState().change(`${trial.name} planned`, () => [born({ ...trial, between: again?.between ?? '' })]);
  return done ? trial.id : null;
}

export const setPlan = (bench: Bench, trialId: Id, label: string, patch: Partial<TrialPlan>) =>
  rewrite(bench, trialId, label, ({ plan }) => ({ plan: { ...plan, ...patch } }));

export const setTrial = (bench: Bench, trialId: Id, label: string, patch: Partial<Trial>) =>
  rewrite(bench, trialId, label, () => patch);

const withPlace = (trial: Trial, { place }: TrialRow, patch: Partial<TrialGroups>): readonly TrialGroups[] => {
  const known = placeOf(trial, { place });
  if (known !== undefined) return trial.groups.map((at) => (at === known ? { ...at, ...patch } : at));
  const fresh = { distance: place?.distance ?? 18, step: place?.step ?? null, first: null, second: null, speeds: [] };
  return [...trial.groups, { ...fresh, ...patch }];
};

/** The setting on trial is what the group was shot with, whatever the set-up stands at. */
function shotWith(trial: Trial, step: number | null): Partial<ShotGroup['context']['settings']> {
  if (step === null) return {};
  return trial.trial === 'nocking point' ? { nockingPoint: step } : { braceHeight: step };
}

/** A brace height outside the bow's range is not shot at, whatever the plan says. */
export const isBarred = (
  trial: Pick<Trial, 'trial'>,
  { bow }: Pick<Bundle, 'bow'>,
  { place }: Pick<TrialRow, 'place'>,
): boolean => trial.trial === 'brace height' && place !== null && place.step !== null && braceOutside(place.step, bow) !== null;

/** Puts the group of a row on the face: one that was put away is taken out again, else it is begun. One Change, with the trial that points to it. */
export function takeUp(bench: Bench, trialId: Id, row: TrialRow, face: FaceId): Promise<boolean> {
  const { place, which } = row;
  if (place === null || (which !== 'first' && which !== 'second')) return Promise.resolve(true);
  return bench.getState().change(`${BEGUN}${row.text}`, (records) => {
    const trial = records.get(trialId);
    const bundle = trial?.kind === 'trial' ? bundleOf(records, trial.setupId) : null;
    if (trial?.kind !== 'trial' || bundle === null || isBarred(trial, bundle, row)) return [];
    const known = records.get(placeOf(trial, row)?.[which] ?? '');
    if (known?.kind === 'group') return known.archivedAt === null ? [] : [edited(known, { archivedAt: null })];
    const fresh = newGroup(bundle, row.fletching, { distance: place.distance, face });
    const settings = { ...fresh.context.settings, ...shotWith(trial, place.step) };
    const group: ShotGroup = { ...fresh, context: { ...fresh.context, settings } };
    // A row that was begun and left without a shot leaves no empty group behind: its sheet is taken for this one.
    const empty = emptyGroup(records, trial);
    if (empty === null) return [born(group), edited(trial, { groups: [...withPlace(trial, row, { [which]: group.id })] })];
    const left = { ...trial, groups: trial.groups.map((at) => without(at, empty.id)).filter(holds) };
    const { fletching, context, setupId } = group;
    return [
      edited(empty, { fletching, context, setupId }),
      edited(trial, { groups: [...withPlace(left, row, { [which]: empty.id })] }),
    ];
  });
}

/** A group of this trial on which no shot was ever set. */
function emptyGroup(records: ReadonlyMap<Id, BenchRecord>, trial: Trial): ShotGroup | null {
  for (const id of trial.groups.flatMap(({ first, second }) => [first, second])) {
    const group = id === null ? undefined : records.get(id);
    if (group?.kind === 'group' && group.archivedAt === null && group.shots.length === 0) return group;
  }
  return null;
}

const without = (at: TrialGroups, id: Id): TrialGroups => ({
  ...at,
  first: at.first === id ? null : at.first,
  second: at.second === id ? null : at.second,
});
const holds = ({ first, second, speeds }: TrialGroups): boolean => first !== null || second !== null || speeds.length > 0;

const BEGUN = 'Begun: ';

/** A row that was begun last and is left without a shot is taken off again, so that Groups holds nothing of it. */
export function leaveRow(bench: Bench, trialId: Id): void {
  const { records, pending, undoState } = bench.getState();
  const trial = records.get(trialId);
  if (pending > 0 || trial?.kind !== 'trial' || emptyGroup(records, trial) === null) return;
  if (undoState.undo?.label.startsWith(BEGUN) === true) void bench.getState().undo();
}

/** The tear of a row: in place of the one it has, else as the next of its kind. */
export const putTear = (bench: Bench, trialId: Id, row: TrialRow, tear: Tear) =>
  rewrite(bench, trialId, 'A tear noted', ({ tears }) => {
    const at = tearsOf(tears, row)[row.end - 1];
    return { tears: at === undefined ? [...tears, tear] : tears.map((one, i) => (i === at.index ? tear : one)) };
  });

export const dropTear = (bench: Bench, trialId: Id, index: number) =>
  rewrite(bench, trialId, 'A tear taken back', ({ tears }) => ({ tears: tears.filter((_, i) => i !== index) }));

/** The same for a powdered shot. */
export const putClearance = (bench: Bench, trialId: Id, row: TrialRow, shot: ClearanceShot) =>
  rewrite(bench, trialId, 'A powdered shot noted', ({ clearance }) => ({
    clearance: row.end <= clearance.length ? clearance.with(row.end - 1, shot) : [...clearance, shot],
  }));

export const dropClearance = (bench: Bench, trialId: Id, index: number) =>
  rewrite(bench, trialId, 'A powdered shot taken back', ({ clearance }) => ({
    clearance: clearance.filter((_, i) => i !== index),
  }));

export const setSpeeds = (bench: Bench, trialId: Id, row: TrialRow, label: string, speeds: readonly number[]) =>
  rewrite(bench, trialId, label, (trial) => ({ groups: [...withPlace(trial, row, { speeds: [...speeds] })] }));
