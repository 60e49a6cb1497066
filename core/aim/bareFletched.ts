import { buildArrow, partPlaces, type ArrowBuild } from '../arrow/index.ts';
import {
  noseAt,
  settledPath,
  vaneCentre,
  vaneLift,
  yawRates,
  type Lifting,
  type NoseAt,
  type YawRates,
} from '../flight/index.ts';
import type { ArrowSet } from '../model/arrowSet.ts';
import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/bundle.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { FlightBasis } from './flightBasis.ts';

/** The nose against the path [rad], and how far beside the line of the loose the arrow is [m], on the side that the nose points to. */
export interface NoseBand {
  readonly angle: Band;
  readonly aside: Band;
}

/** A bare and a fletched arrow, loosed alike, so far down their flight. */
export interface BareFletchedAt {
  readonly distance: number;
  readonly bare: NoseBand;
  readonly fletched: NoseBand;
  /** How much farther aside the bare one is [m]. */
  readonly apart: Band;
}

export interface BareFletched {
  readonly at: readonly BareFletchedAt[];
  /** Over what distance the fletched nose swings there and back once [m]; null where it may come back without a swing. */
  readonly swing: Band | null;
  /** Where the fletched arrow's path points once the nose has settled [rad]. */
  readonly settled: Band;
  /** C_Nα of the vanes [-]: the published estimate is its upper end. */
  readonly vanes: Band;
  /** What was not on record: ordinary figures stand for it. */
  readonly assumed: readonly ('number of vanes' | 'length of the fletching' | 'height of the vanes')[];
}

/** How far vanes and feathers stand out by material [m]: nobody measures it here. From memory. */
const usualHeight: Readonly<Record<ArrowSet['material'], Band>> = {
  carbon: { value: 0.008, low: 0.006, high: 0.011 },
  aluminium: { value: 0.009, low: 0.007, high: 0.012 },
  wood: { value: 0.012, low: 0.009, high: 0.016 },
  other: { value: 0.01, low: 0.006, high: 0.016 },
};
/** Outer chord and sweep of an ordinary vane, as shares of its root. From memory. */
const usualShape = { tip: 0.3, sweep: 0.5 } as const;
/** The estimate is of flat, stiff fins in clean air: real vanes have from a half of it to the whole. From memory. */
const vaneShare = { low: 0.5, value: 0.75, high: 1 } as const;
/** C_Nα of a slender nose, whatever its shape. */
const NOSE = 2;
/** Drag coefficient of a round rod across the flow, at such cross-flows. */
const ACROSS = 1.2;
/** The shaft has from none to twice of the cross-flow's lift at the angle it is loosed with: nobody has fitted it. */
const crossFlow = [0, 1, 2] as const;
const places = [0, 0.5, 1] as const;

/**
 * How far apart a bare and a fletched arrow come that are loosed alike, the nose a little off the path.
 *
 * @equation noseAt for both, with yawRates of the same shaft: C_Nα from 2 to 2 + 2 · 1.2 · 4 L α/(π D), acting from its balance point, where nothing turns it back, to its middle; the fletched one with 50 to 100 % of vaneLift besides
 * @param bundle - the set-up with its records [record]
 * @param basis - diameter [m] and density of the air [kg/m³] of flightBasis [record]
 * @param angle - α at the loose, the nose against the path [rad]
 * @param distances - s [m]
 * @returns both arrows and how far they are apart at each distance, with their bands [record]
 * @validity angles to about 3°, distances to about 30 m, one plane, rigid arrows that do not spin; what a bare shaft's lift is must be fitted to an archer's own groups: its band here is wide and claimed of no arrow; refused as buildArrow, and for an angle beyond 6°
 * @source barrowman-1967, allen-perkins-1951, from memory
 * @example bareAndFletched(exampleBundle, flightBasis(exampleBundle).value, 0, [18]).value.at[0].apart.high // 0
 */
export function bareAndFletched(
  bundle: Bundle,
  basis: Pick<FlightBasis, 'diameter' | 'air'>,
  angle: number,
  distances: readonly number[],
): Result<BareFletched> {
  if (!(Math.abs(angle) <= 0.105)) return refuse('nose angle', 'A nose within 6° of the path was expected.');
  if (!distances.every((distance) => distance >= 0 && distance <= 120))
    return refuse('distances', 'Distances from 0 to 120 m were expected.', 'shootingDistance');
  const { arrowSet } = bundle;
  // The balance point that somebody measured is of the whole arrow, and says nothing of the bare one.
  const built = buildArrow({ ...arrowSet, balance: null });
  if (!built.ok) return built;
  const diameter = basis.diameter.value;
  const { vanes, at: vanesAt } = vanesOf(arrowSet, built.value.length, diameter);
  const bare = bodies(built.value, diameter, Math.abs(angle)).map((body) => ({
    body,
    rates: yawRates({ ...withoutFletching(built.value), diameter }, basis.air, [body]),
  }));
  const pairs = bare.flatMap(({ body, rates }): Pair[] =>
    steps(vanes).map((slope) => ({
      bare: rates,
      fletched: yawRates({ ...built.value, diameter }, basis.air, [body, { slope, at: vanesAt }]),
    })),
  );
  const start = { angle };
  const swings = pairs.map(({ fletched }) => swingOf(fletched));
  const nose = (all: readonly NoseAt[]): NoseBand => ({
    angle: spanned(all.map((one) => one.angle)),
    aside: spanned(all.map((one) => one.aside)),
  });
  return ok({
    at: distances.map((distance) => {
      const without = new Map(bare.map(({ rates }) => [rates, noseAt(rates, start, distance)]));
      const flown = pairs.map((pair) => ({
        bare: without.get(pair.bare) as NoseAt,
        fletched: noseAt(pair.fletched, start, distance),
      }));
      return {
        distance,
        bare: nose(flown.map((one) => one.bare)),
        fletched: nose(flown.map((one) => one.fletched)),
        apart: spanned(flown.map((one) => one.bare.aside - one.fletched.aside)),
      };
    }),
    swing: swings.some((swing) => swing === null) ? null : spanned(swings.map((swing) => swing ?? 0)),
    settled: spanned(pairs.map(({ fletched }) => settledPath(fletched, start) ?? 0)),
    vanes,
    assumed: [
      ...(arrowSet.vaneCount === null ? (['number of vanes'] as const) : []),
      ...(arrowSet.vaneLength === null ? (['length of the fletching'] as const) : []),
      'height of the vanes',
    ],
  });
}

interface Pair {
  readonly bare: YawRates;
  readonly fletched: YawRates;
}

/** The middle one of all that may be, and the ends. */
const spanned = (all: readonly number[]): Band => ({
  value: all[Math.floor(all.length / 2)] ?? 0,
  low: Math.min(...all),
  high: Math.max(...all),
});

/** Swings that differ a little are apart at one distance and together at the next: the ends alone would leave out what lies between. */
const steps = ({ low, value, high }: Band): number[] => [
  low,
  (2 * low + value) / 3,
  (low + 2 * value) / 3,
  value,
  (2 * value + high) / 3,
  (value + 2 * high) / 3,
  high,
];

function vanesOf(arrowSet: ArrowSet, length: number, diameter: number): { readonly vanes: Band; readonly at: number } {
  const { from, to } = partPlaces(arrowSet, length).fletching;
  const rootChord = to - from;
  const vane = (height: number) => ({
    count: arrowSet.vaneCount ?? 3,
    height,
    rootChord,
    tipChord: usualShape.tip * rootChord,
    sweep: usualShape.sweep * rootChord,
    diameter,
  });
  const height = usualHeight[arrowSet.material];
  const slope = (end: keyof Band) => vaneShare[end] * vaneLift(vane(height[end]));
  return {
    vanes: { value: slope('value'), low: slope('low'), high: slope('high') },
    at: to - vaneCentre(vane(height.value)),
  };
}

/**
 * What the shaft itself may lift, and where: between its own balance point and its middle. A slender nose by itself lifts at the front and
 * would turn a bare shaft over within a range's length; since bare shafts are shot at 18 m and land point first, the whole is taken to act no
 * farther forward than the balance point.
 */
function bodies(built: ArrowBuild, diameter: number, angle: number): Lifting[] {
  const rod = (ACROSS * 4 * built.length * angle) / (Math.PI * diameter);
  const balance = withoutFletching(built).balance;
  const middle = built.wholeLength / 2;
  return crossFlow.flatMap((share) =>
    places.map((place) => ({ slope: NOSE + share * rod, at: balance + place * (middle - balance), over: built.wholeLength })),
  );
}

/** The same arrow with its fletching taken off. */
function withoutFletching({ parts, mass, balance, inertia }: ArrowBuild): Pick<ArrowBuild, 'mass' | 'balance' | 'inertia'> {
  const off = parts.find(({ name }) => name === 'fletching');
  if (off === undefined || off.mass === 0) return { mass, balance, inertia };
  const left = mass - off.mass;
  const moved = (mass * balance - off.mass * off.at) / left;
  const own = off.mass * ((off.at - balance) ** 2 + (off.to - off.from) ** 2 / 12);
  return { mass: left, balance: moved, inertia: inertia - own - left * (moved - balance) ** 2 };
}

/** One swing there and back of the nose against the path [m]. */
function swingOf({ turning, damping, lift }: YawRates): number | null {
  const square = turning - ((lift - damping) / 2) ** 2;
  return square > 0 ? (2 * Math.PI) / Math.sqrt(square) : null;
}
