import { bandOver, atCorners, flightBasis } from '../aim/index.ts';
import { kindFigures, virtualMassOf } from '../bow/index.ts';
import { launchElevation, trajectory } from '../flight/index.ts';
import type { Band } from '../model/band.ts';
import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import { given } from '../model/given.ts';
import { shootingArrows } from './shooting.ts';
import { spreadOf } from './spread.ts';

/** What the spread of a numbered set does to its group at one distance. */
export interface SpreadAtTarget {
  readonly distance: number;
  /** How far apart the lightest and the heaviest arrow strike, up and down [m]. */
  readonly fromMass: Band;
  /** Standard deviation of the height over the set's arrows, from their mass alone [m]. */
  readonly fromMassSd: Band;
  /** Numbers of the arrows that strike highest and lowest for their mass. */
  readonly lightest: number;
  readonly heaviest: number;
  readonly weighed: number;
  /** What can be said of the spread in spine, ready to read. */
  readonly fromSpine: string;
  /** What can be said of bent shafts, ready to read. */
  readonly fromStraightness: string;
}

const FROM_SPINE =
  'How far a spread in spine opens the group sideways cannot be told without a simulation of the release. It is said that half a dozen arrows mismatched in spine cost about 2 points in 12 arrows at 70 m (common practice).';
const FROM_STRAIGHTNESS =
  'Bent shafts opened groups when they were tried, much less so with angled fletching (Park and others, 2018). How much these would cannot be told.';

/**
 * What the spread of a numbered set does to its group at one distance.
 *
 * @equation v(m) = v₀ √((m₀ + K)/(m + K)), K of a credible virtualMassOf else the kind's, k(m) = k₀ m₀/m; height of the lightest over the heaviest on the line that the mean arrow's mark asks for; low and high over the ends of v₀, k₀ and K
 * @param bundle - the set-up with its records [record]
 * @param distance - R, from the eye [m]
 * @returns the height between lightest and heaviest and the standard deviation of the height, with their bands [m], and what can be said of spine and straightness [record]
 * @validity level ground, still air, arrows that differ in mass alone; the bow gives each arrow the same energy but for its virtual mass; refused for a compound without chronographed arrows of several masses, for fewer than two weighed arrows, out of reach, and where the flight lacks a figure
 * @source klopsteg-1943
 * @example spreadAtTarget(exampleBundle, 30).problem.code // "no arrows"
 */
export function spreadAtTarget(bundle: Bundle, distance: number): Result<SpreadAtTarget> {
  const there = given('the spread at the target', { shootingDistance: distance });
  if (!there.ok) return there;
  const shooting = shootingArrows(bundle.arrowSet);
  if (!shooting.ok) return shooting;
  const weighed = shooting.value.flatMap(({ number, mass }) => (mass === null ? [] : { number, mass }));
  const spread = spreadOf(weighed.map(({ mass }) => mass));
  const light = weighed.find(({ mass }) => mass === spread?.low);
  const heavy = weighed.find(({ mass }) => mass === spread?.high);
  if (spread?.sd == null || light === undefined || heavy === undefined)
    return refuse('too few', 'Weigh two arrows of the set or more.', 'arrows');
  const carried = virtualMass(bundle);
  if (carried === null)
    return refuse(
      'compound',
      'How the speed of this compound falls with the mass of the arrow is not known. Shoot arrows of two masses or more over the chronograph.',
      'chronograph',
    );
  const basis = flightBasis(bundle);
  if (!basis.ok) return basis;
  const { speed, drag, mass: known, eyeHeight } = basis.value;

  const apart = ({ v, k, virtual }: { v: number; k: number; virtual: number }): Result<number> => {
    const launch = (mass: number) => ({
      speed: v * Math.sqrt((known + virtual) / (mass + virtual)),
      k: (k * known) / mass,
    });
    const middle = launch(spread.mean);
    const aimed = launchElevation({ speed: middle.speed, k: middle.k, eyeHeight: eyeHeight.value, x: distance, y: 0 });
    if (!aimed.ok) return aimed;
    const elevation = aimed.value;
    // The arrow leaves below the eye, squarely to its own axis.
    const ahead = distance - eyeHeight.value * Math.sin(elevation);
    const heightOf = ({ speed: left, k: slows }: ReturnType<typeof launch>) =>
      trajectory({ speed: left, k: slows, elevation, until: { x: ahead } }).at(ahead)?.y;
    const high = heightOf(launch(light.mass));
    const low = heightOf(launch(heavy.mass));
    return high === undefined || low === undefined
      ? refuse('out of reach', 'Some arrow of the set does not reach this distance.', 'shootingDistance')
      : ok(high - low);
  };
  const ends = [speed.low, speed.high].flatMap((v) =>
    [drag.low, drag.high].flatMap((k) => [carried.low, carried.high].map((virtual) => ({ v, k, virtual }))),
  );
  const heights = atCorners({ value: { v: speed.value, k: drag.value, virtual: carried.value }, corners: ends }, apart);
  if (!heights.ok) return heights;
  const fromMass = bandOver(heights.value, (height) => height);
  // Over the small differences within a set the height goes with the mass.
  const share = spread.high > spread.low ? spread.sd / (spread.high - spread.low) : 0;
  return ok({
    distance,
    fromMass,
    fromMassSd: { value: fromMass.value * share, low: fromMass.low * share, high: fromMass.high * share },
    lightest: light.number,
    heaviest: heavy.number,
    weighed: spread.n,
    fromSpine: FROM_SPINE,
    fromStraightness: FROM_STRAIGHTNESS,
  });
}

/** What rides with the arrow, as the bow's own chronographed arrows have it, else as its kind does [kg]. */
function virtualMass(bundle: Bundle): Band | null {
  const fitted = virtualMassOf(bundle);
  const own = fitted.ok && fitted.value.credible ? fitted.value.virtualMass : null;
  const found = own ?? kindFigures[bundle.bow.bowKind]?.virtualMass ?? null;
  return found === null ? null : { ...found, low: Math.max(0, found.low) };
}
