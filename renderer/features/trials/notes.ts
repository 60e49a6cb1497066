import type { Id } from '../../../core/model/common.ts';
import type { BenchRecord } from '../../../core/model/records.ts';
import type { Settings } from '../../../core/model/setup.ts';
import type { Trial, TrialChange } from '../../../core/model/trial.ts';
import type { NextStep } from '../../../core/trials/index.ts';
import { edited, type Bench } from '../../state/bench.ts';
import { now } from '../../state/clock.ts';

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

/** The setting that was on the bow while the trial was shot, where every group tells the same and the trial itself did not try it. */
function shotAt(
  records: ReadonlyMap<Id, BenchRecord>,
  trial: Trial,
  patch: NonNullable<TrialChange['patch']>,
): Partial<Settings> {
  const groups = trial.groups
    .flatMap(({ first, second }) => [first, second])
    .map((id) => records.get(id ?? ''))
    .filter((group) => group?.kind === 'group');
  const [one] = groups;
  if (one === undefined || trial.groups.some(({ step }) => step !== null)) return {};
  const keys = (Object.keys(patch) as (keyof Settings)[]).filter((key) =>
    groups.every(({ context }) => context.settings[key] === one.context.settings[key]),
  );
  return Object.fromEntries(keys.map((key) => [key, one.context.settings[key]]));
}

/** Takes the last noted change off the trial, and puts its setting back where the trial tells what it was. */
export function takeOff(bench: Bench, trialId: Id): Promise<boolean> {
  const trial = bench.getState().records.get(trialId);
  const last = trial?.kind === 'trial' ? trial.changes.at(-1) : undefined;
  return bench.getState().change(`Taken off: ${last?.title ?? 'a change'}`.slice(0, 200), (records) => {
    const now = records.get(trialId);
    const change = now?.kind === 'trial' ? now.changes.at(-1) : undefined;
    if (now?.kind !== 'trial' || change === undefined) return [];
    const off = edited(now, { changes: now.changes.slice(0, -1) });
    const setup = records.get(now.setupId);
    if (change.patch === null || setup?.kind !== 'setup') return [off];
    const before = shotAt(records, now, change.patch);
    const { settings } = setup;
    // What was set anew since is nobody's to put back.
    const own = Object.entries(change.patch).every(([key, value]) => settings[key as keyof Settings] === value);
    return own && Object.keys(before).length > 0 ? [off, edited(setup, { settings: { ...settings, ...before } })] : [off];
  });
}
