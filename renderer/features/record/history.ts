import { groupMeasures } from '../../../core/group/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Id, Stamp } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { Settings } from '../../../core/model/setup.ts';
import type { Snapshot } from '../../../core/model/snapshot.ts';
import type { Use } from '../../../core/units/index.ts';

/** Two marks on one lane, paced or taped, still count as one distance. */
const SAME_DISTANCE = 0.01;

/** The clock on the wall of the place, as milliseconds: what a calendar axis is drawn in. */
export const wallTime = (stamp: Stamp): number => Date.parse(stamp.at) + stamp.offsetMinutes * 60_000;

/** The distance at which most groups were shot; of two that are equally common, the one that was shot last. */
export function commonestDistance(groups: readonly ShotGroup[]): number | null {
  const counted: { distance: number; count: number; last: number }[] = [];
  for (const { context } of groups) {
    const at = wallTime(context.shotAt);
    const known = counted.find(({ distance }) => isSameDistance(distance, context.distance));
    if (known === undefined) counted.push({ distance: context.distance, count: 1, last: at });
    else {
      known.count += 1;
      known.last = Math.max(known.last, at);
    }
  }
  return counted.sort((a, b) => b.count - a.count || b.last - a.last)[0]?.distance ?? null;
}

export const isSameDistance = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_DISTANCE * Math.max(a, b);

/** One group's mean radius with its 95 % interval. */
export interface RadiusPoint {
  readonly id: Id;
  readonly at: number;
  readonly shots: number;
  readonly radius: number;
  readonly low: number;
  readonly high: number;
}

export interface RadiusSeries {
  readonly distance: number | null;
  readonly points: readonly RadiusPoint[];
  /** Groups at this distance whose size cannot be told: one shot, or all in one hole. */
  readonly untold: number;
}

/** How the size of the fletched groups moved, at the one distance where most of them were shot. Groups must come oldest first. */
export function radiusSeries(groups: readonly ShotGroup[]): RadiusSeries {
  const fletched = groups.filter((group) => group.fletching === 'fletched');
  const distance = commonestDistance(fletched);
  if (distance === null) return { distance, points: [], untold: 0 };
  const there = fletched.filter((group) => isSameDistance(group.context.distance, distance));
  const points = there.flatMap((group): RadiusPoint[] => {
    const measured = groupMeasures(group.shots);
    if (!measured.ok) return [];
    const { meanRadius, meanRadiusInterval, n } = measured.value;
    return [
      {
        id: group.id,
        at: wallTime(group.context.shotAt),
        shots: n,
        radius: meanRadius,
        low: meanRadiusInterval[0],
        high: meanRadiusInterval[1],
      },
    ];
  });
  return { distance, points, untold: there.length - points.length };
}

/** A setting over time: each step stands where a new value was first met. */
export interface Lane {
  readonly key: string;
  readonly name: string;
  readonly use: Use;
  readonly steps: readonly { readonly at: number; readonly value: number }[];
  /** As it stands; null when nobody knows it now. */
  readonly now: number | null;
}

type Observed = { readonly at: number; readonly value: number | null };

const turned: readonly {
  key: keyof Settings & ('braceHeight' | 'nockingPoint' | 'buttonTurns' | 'tiller' | 'centreShot');
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
 * its point, so the point's lane knows the snapshots only. Tiller and centre shot have a lane once they have moved.
 */
export function settingLanes(bundle: Bundle, groups: readonly ShotGroup[], snapshots: readonly Snapshot[]): readonly Lane[] {
  const own = snapshots
    .filter((snapshot) => snapshot.setupId === bundle.setup.id)
    .sort((a, b) => wallTime(a.taken) - wallTime(b.taken));
  const noted = [
    ...groups.map((group) => ({ at: wallTime(group.context.shotAt), settings: group.context.settings })),
    ...own.map((snapshot) => ({ at: wallTime(snapshot.taken), settings: snapshot.state.setup.settings })),
  ].sort((a, b) => a.at - b.at);
  const lanes = turned.map(({ key, name, use, always }) => {
    const seen = noted.map(({ at, settings }) => ({ at, value: settings[key] }));
    return { lane: laneOf(key, name, use, seen, bundle.setup.settings[key]), always };
  });
  const points = own.map((snapshot) => ({ at: wallTime(snapshot.taken), value: snapshot.state.arrowSet.pointMass }));
  const point = laneOf('pointMass', 'point', 'mass', points, bundle.arrowSet.pointMass);
  return [...lanes, { lane: point, always: true }]
    .filter(({ lane, always }) => (always ? lane.steps.length > 0 || lane.now !== null : moved(lane)))
    .map(({ lane }) => lane);
}

function laneOf(key: string, name: string, use: Use, seen: readonly Observed[], now: number | null): Lane {
  const steps: { at: number; value: number }[] = [];
  for (const { at, value } of seen) {
    if (value !== null && value !== steps.at(-1)?.value) steps.push({ at, value });
  }
  return { key, name, use, steps, now };
}

const moved = ({ steps, now }: Lane): boolean =>
  steps.length > 1 || (steps.length === 1 && now !== null && now !== steps[0]?.value);
