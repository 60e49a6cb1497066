import { launchBand, priorsOf, spreadPerMetre, type Corners, type Launch } from '../../../../core/aim/index.ts';
import { face, type Face } from '../../../../core/group/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { FaceId, ShotGroup } from '../../../../core/model/group.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { factorOf } from '../../../../core/units/index.ts';
import type { AimPicture } from '../derive.ts';
import { shootsWithoutSight } from '../holds/holds.ts';
import { targetDrop } from '../plan.ts';
import { remembered } from './remembered.ts';
import type { ConditionsChoice } from './store.ts';

/** How an archer's arrows scatter, one standard deviation as an angle [rad]. */
export interface ArcherScatter {
  readonly across: number;
  readonly up: number;
  /** Told by the archer's groups, or from memory until there are enough of them. */
  readonly from: 'groups' | 'settled' | 'learner';
}

/** What is asked of this page: the shot, what goes wrong with it, and who shoots it at which face. */
export interface Given {
  readonly launches: Corners<Launch>;
  /** Where the target stands [m]. */
  readonly distance: number;
  /** [rad] */
  readonly slope: number;
  /** [m/s] */
  readonly windSpeed: number;
  /** By the clock, the target at 12 [hours]. */
  readonly windHour: number;
  readonly marked: boolean;
  /** What the sight is set for [m]; the distance itself where it is guessed. */
  readonly believed: number;
  /** How far out a guess may be [m]. */
  readonly within: number;
  readonly face: Face;
  readonly shaftRadius: number;
  readonly scatter: ArcherScatter;
  /** Nobody sets a pin who holds the tip of the arrow. */
  readonly withSight: boolean;
  /** From the eye to the pin [m]; null where nobody measured it. */
  readonly sightRadius: number | null;
}

/** One group is of this distance as good as of another this near to it [-]. */
const ALIKE = 0.1;
/** How far out a distance is taken to be until somebody says, in the unit chosen. */
const usuallyWithin = 5;

const scatterOf = remembered((bundle: Bundle, groups: readonly ShotGroup[]): ArcherScatter => {
  const up = spreadPerMetre(groups);
  const turned = groups.map((group) => ({ ...group, shots: group.shots.map((shot) => ({ ...shot, x: shot.y, y: shot.x })) }));
  const across = spreadPerMetre(turned);
  if (up !== null && across !== null) return { up, across, from: 'groups' };
  const usual = priorsOf(bundle, { sightRadius: null, spreadPerMetre: null });
  const spread = usual.ok ? usual.value.spreadPerMetre : 0.006;
  return { up: spread, across: spread, from: bundle.archer.experience === 'settled' ? 'settled' : 'learner' };
});

/** The face of the latest group shot at about this distance, else the one that World Archery sets for it. */
export function usualFace(groups: readonly ShotGroup[], distance: number): FaceId {
  const there = groups.findLast(({ context }) => Math.abs(context.distance - distance) <= ALIKE * distance);
  if (there !== undefined) return there.context.face;
  return distance > 52 ? '122' : distance > 27 ? '80' : distance > 21 ? '60' : '40';
}

// What did not change stays the same object, and what rests on it is not reckoned again.
const launchesOf = remembered(({ speed, drag, eyeHeight }: AimPicture['basis']) =>
  launchBand(speed, drag, eyeHeight.value, targetDrop),
);
const faceOf = remembered(face);

export const givenOf = remembered(
  (bundle: Bundle, picture: AimPicture, choice: ConditionsChoice, groups: readonly ShotGroup[], units: UnitChoice): Given => {
    const { basis, setFor: distance } = picture;
    const withSight = !shootsWithoutSight(bundle);
    const marked = choice.marked ?? withSight;
    return {
      launches: launchesOf(basis),
      distance,
      slope: choice.slope,
      windSpeed: choice.windSpeed,
      windHour: choice.windHour,
      marked,
      believed: marked ? (choice.believed ?? distance) : distance,
      within: choice.within ?? usuallyWithin * factorOf('distance', units),
      face: faceOf(choice.face ?? usualFace(groups, distance)),
      shaftRadius: basis.diameter.value / 2,
      scatter: scatterOf(bundle, groups),
      withSight,
      sightRadius: bundle.setup.settings.sightRadius,
    };
  },
);
