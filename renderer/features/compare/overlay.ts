import { comparableGroups } from '../../../core/compare/groupFigures.ts';
import { shortNames } from '../../../core/compare/index.ts';
import { face, groupMeasures, sameDistance, shiftOfGroups, type Point } from '../../../core/group/index.ts';
import type { ShotBundle } from '../../../core/model/bundle.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../core/model/problem.ts';
import { together } from '../../../core/model/sentence.ts';
import { contextDifferences } from '../../../core/trials/index.ts';
import { factorOf, textQuantity, unitOf } from '../../../core/units/index.ts';
import type { OverlayData } from '../../plots/groupsOverlay/marks.ts';

/** The groups of two set-ups that can be laid over each other, newest first choice. */
export interface Overlay {
  readonly kind: 'bare' | 'fletched';
  readonly distance: number;
  readonly data: OverlayData;
  readonly title: string;
  readonly sentence: string;
  /** Differences of form, day, weather and the like: then the difference is not the equipment's alone. */
  readonly told: readonly string[];
}

interface Lying {
  readonly group: ShotGroup;
  /** What its place is counted from: the fletched group of a bare one. */
  readonly from: ShotGroup | null;
  readonly centre: Point;
  readonly radius: number;
}

/** Bare shafts off their fletched centre when both set-ups have them at one distance; else the fletched groups on the face. */
export function overlayOf(reference: ShotBundle, other: ShotBundle, units: UnitChoice): Result<Overlay> {
  const [one, another] = [comparableGroups(reference.groups), comparableGroups(other.groups)];
  const bare = latestPair(
    one.trials.flatMap((trial) => lyingOff(trial.bare, trial.fletched)),
    another.trials.flatMap((trial) => lyingOff(trial.bare, trial.fletched)),
  );
  const pair = bare ?? latestPair(one.fletched.flatMap(lying), another.fletched.flatMap(lying));
  if (pair === null)
    return refuse(
      'no-pair',
      'Shoot a group with each at one distance, three arrows or more, and they are laid over each other here.',
    );
  return ok(drawn(bare === null ? 'fletched' : 'bare', pair, reference, other, units));
}

function lying(group: ShotGroup): readonly Lying[] {
  const measured = groupMeasures(group.shots);
  return measured.ok ? [{ group, from: null, centre: measured.value.centre, radius: measured.value.centreRadius }] : [];
}

function lyingOff(group: ShotGroup, from: ShotGroup): readonly Lying[] {
  const shift = shiftOfGroups(from.shots, group.shots);
  return shift.ok ? [{ group, from, centre: { x: shift.value.dx, y: shift.value.dy }, radius: shift.value.radius }] : [];
}

function latestPair(first: readonly Lying[], second: readonly Lying[]): readonly [Lying, Lying] | null {
  for (const one of first) {
    const match = second.find((another) => sameDistance(one.group, another.group));
    if (match !== undefined) return [one, match];
  }
  return null;
}

function drawn(
  kind: Overlay['kind'],
  pair: readonly [Lying, Lying],
  reference: ShotBundle,
  other: ShotBundle,
  units: UnitChoice,
): Overlay {
  const factor = factorOf('setting', units);
  const names = shortNames(reference.setup.name, other.setup.name);
  const distance = textQuantity(pair[0].group.context.distance, 'distance', units);
  const shown = (point: Point): Point => ({ x: point.x / factor, y: point.y / factor });
  const entries = pair.map((lying, index) => ({
    setup: index as 0 | 1,
    name: names[index] ?? '',
    centre: shown(lying.centre),
    radius: lying.radius / factor,
    shots: kind === 'fletched' ? lying.group.shots.map(shown) : [],
  }));
  const place = ({ centre, radius }: Lying) =>
    `${textQuantity(Math.hypot(centre.x, centre.y), 'setting', units)} ${direction(centre)}, give or take ${textQuantity(radius, 'setting', units)}`;
  const from = kind === 'bare' ? 'the fletched centre' : 'the centre of the face';
  return {
    kind,
    distance: pair[0].group.context.distance,
    data: {
      origin: kind === 'bare' ? 'fletched centre' : 'centre of the face',
      rings: kind === 'bare' ? [] : face(pair[0].group.context.face).rings.map((ring) => ring.radius / factor),
      entries,
      unit: unitOf('setting', units),
    },
    title: kind === 'bare' ? `Bare shafts off the fletched centre, ${distance}` : `Fletched groups on the face, ${distance}`,
    sentence: `Off ${from} at ${distance}: ${names[0]} ${place(pair[0])}; ${names[1]} ${place(pair[1])}. Circles hold each centre with 95 %.`,
    told: told(pair, units),
  };
}

function told([a, b]: readonly [Lying, Lying], units: UnitChoice): readonly string[] {
  const found = [...contextDifferences(a.group, b.group, units), ...ownPair(a, units), ...ownPair(b, units)];
  return [...new Set(found.filter((one) => !one.equipment).map((one) => one.sentence))];
}

const ownPair = ({ group, from }: Lying, units: UnitChoice) => (from === null ? [] : contextDifferences(from, group, units));

/** "right", "up and left": a part under a fifth of the other is not named. */
function direction({ x, y }: Point): string {
  const parts = [
    ...(Math.abs(y) > 0.2 * Math.abs(x) ? [y > 0 ? 'high' : 'low'] : []),
    ...(Math.abs(x) > 0.2 * Math.abs(y) ? [x > 0 ? 'right' : 'left'] : []),
  ];
  return parts.length === 0 ? 'away' : together(parts);
}
