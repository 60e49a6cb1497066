import { tillerOf } from '../../../core/bow/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { wallTime, type Id } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { Settings } from '../../../core/model/setup.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import type { Trial, TrialKind } from '../../../core/model/trial.ts';
import type { Use } from '../../../core/units/index.ts';

/** A setting over time: each step stands where a new value was first met. */
export interface Lane {
  readonly key: string;
  readonly name: string;
  readonly use: Use;
  readonly steps: readonly { readonly at: number; readonly value: number }[];
  /** What a trial set only to try it, where each group was shot. */
  readonly tried: readonly { readonly at: number; readonly value: number }[];
  /** As it stands; null when nobody knows it now. */
  readonly now: number | null;
}

type Turned = keyof Settings & ('braceHeight' | 'nockingPoint' | 'buttonTurns' | 'tiller' | 'centreShot');
type Observed = { readonly at: number; readonly value: number | null };

const turned: readonly {
  key: Turned;
  name: string;
  use: Use;
  always: boolean;
}[] = [
  { key: 'braceHeight', name: 'brace height', use: 'length', always: true },
  { key: 'nockingPoint', name: 'nocking point', use: 'setting', always: true },
  { key: 'buttonTurns', name: 'button', use: 'turns', always: true },
  { key: 'tiller', name: 'tiller', use: 'setting', always: false },
  { key: 'centreShot', name: 'centre shot', use: 'setting', always: false },
];

/**
 * The settings over time, out of what each group and each snapshot of this set-up noted, and as they stand. A group does not note
 * its point, so the point's lane knows the snapshots only. Tiller and centre shot have a lane once they have moved. What a trial set
 * only to try it is no change of the bow: it is a mark of its own beside the line, and its groups tell the other settings.
 */
export function settingLanes(
  bundle: Bundle,
  groups: readonly ShotGroup[],
  snapshots: readonly Snapshot[],
  trials: readonly Trial[],
): readonly Lane[] {
  const tried = settingsTried(trials);
  const own = snapshots
    .filter((snapshot) => snapshot.setupId === bundle.setup.id)
    .sort((a, b) => wallTime(a.taken) - wallTime(b.taken));
  const noted = [
    ...groups.map((group) => ({
      at: wallTime(group.context.shotAt),
      settings: group.context.settings,
      tried: tried.get(group.id) ?? null,
    })),
    ...own.map((snapshot) => ({ at: wallTime(snapshot.taken), settings: snapshot.state.setup.settings, tried: null })),
  ].sort((a, b) => a.at - b.at);
  const lanes = turned.map(({ key, name, use, always }) => {
    const seen = noted
      .filter((one) => one.tried !== key)
      .map(({ at, settings }) => ({ at, value: key === 'tiller' ? tillerOf(settings) : settings[key] }));
    const now = key === 'tiller' ? tillerOf(bundle.setup.settings) : bundle.setup.settings[key];
    const marks = noted
      .filter((one) => one.tried === key)
      .map(({ at, settings }) => ({ at, value: key === 'tiller' ? tillerOf(settings) : settings[key] }));
    return { lane: laneOf(key, name, use, seen, now, marks), always };
  });
  const points = own.map((snapshot) => ({ at: wallTime(snapshot.taken), value: snapshot.state.arrowSet.pointMass }));
  const point = laneOf('pointMass', 'point', 'mass', points, bundle.arrowSet.pointMass);
  return [...lanes, { lane: point, always: true }]
    .filter(({ lane, always }) => (always ? lane.steps.length + lane.tried.length > 0 || lane.now !== null : moved(lane)))
    .map(({ lane }) => lane);
}

const trying: Readonly<Partial<Record<TrialKind, Turned>>> = { 'brace height': 'braceHeight', 'nocking point': 'nockingPoint' };

/** Which setting each group of a trial of several settings was shot to try. */
function settingsTried(trials: readonly Trial[]): ReadonlyMap<Id, Turned> {
  const tried = new Map<Id, Turned>();
  for (const { trial, groups } of trials) {
    const key = trying[trial];
    if (key === undefined) continue;
    for (const { step, first, second } of groups)
      for (const id of [first, second]) if (step !== null && id !== null) tried.set(id, key);
  }
  return tried;
}

function laneOf(
  key: string,
  name: string,
  use: Use,
  seen: readonly Observed[],
  now: number | null,
  marks: readonly Observed[] = [],
): Lane {
  const steps: { at: number; value: number }[] = [];
  for (const { at, value } of seen) {
    if (value !== null && value !== steps.at(-1)?.value) steps.push({ at, value });
  }
  const tried = marks.flatMap(({ at, value }) => (value === null ? [] : [{ at, value }]));
  return { key, name, use, steps, tried, now };
}

const moved = ({ steps, now }: Lane): boolean =>
  steps.length > 1 || (steps.length === 1 && now !== null && now !== steps[0]?.value);
