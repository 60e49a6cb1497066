import type { Bundle } from '../../../core/model/bundle.ts';
import type { Id } from '../../../core/model/common.ts';
import type { FaceId, ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { ClearanceShot, Tear, Trial, TrialGroups, TrialKind, TrialPlan } from '../../../core/model/trial.ts';
import { newTrialPlan, type NextStep, type TrialRow } from '../../../core/trials/index.ts';
import { born, edited, type Bench } from '../../state/bench.ts';
import { newGroup, newTrial } from '../../state/births.ts';
import { now } from '../../state/clock.ts';
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
  again: Trial | null = null,
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

/** Puts the group of a row on the face: one that was put away is taken out again, else it is begun. One Change, with the trial that points to it. */
export function takeUp(bench: Bench, trialId: Id, row: TrialRow, face: FaceId): Promise<boolean> {
  const { place, which } = row;
  if (place === null || (which !== 'first' && which !== 'second')) return Promise.resolve(true);
  return bench.getState().change(`Begun: ${row.text}`, (records) => {
    const trial = records.get(trialId);
    const bundle = trial?.kind === 'trial' ? bundleOf(records, trial.setupId) : null;
    if (trial?.kind !== 'trial' || bundle === null) return [];
    const known = records.get(placeOf(trial, row)?.[which] ?? '');
    if (known?.kind === 'group') return known.archivedAt === null ? [] : [edited(known, { archivedAt: null })];
    const fresh = newGroup(bundle, row.fletching, { distance: place.distance, face });
    const settings = { ...fresh.context.settings, ...shotWith(trial, place.step) };
    const group: ShotGroup = { ...fresh, context: { ...fresh.context, settings } };
    return [born(group), edited(trial, { groups: [...withPlace(trial, row, { [which]: group.id })] })];
  });
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

/** The next change as done: what it sets on the set-up, and the line on the trial that says so, in one Change. */
export function noteDone(bench: Bench, trialId: Id, step: NextStep): Promise<boolean> {
  return bench.getState().change(step.title, (records) => {
    const trial = records.get(trialId);
    const setup = trial?.kind === 'trial' ? records.get(trial.setupId) : undefined;
    if (trial?.kind !== 'trial' || setup?.kind !== 'setup') return [];
    const change = { at: now(), title: step.title.slice(0, 200), patch: step.patch };
    const edits = [edited(trial, { changes: [...trial.changes, change] })];
    return step.patch === null ? edits : [...edits, edited(setup, { settings: { ...setup.settings, ...step.patch } })];
  });
}
