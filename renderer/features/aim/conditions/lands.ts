import {
  allowance,
  cosineGap,
  guessed,
  landing,
  landingCost,
  slopeShot,
  atCorners,
  bandOver,
  windDrift,
  windFrom,
  type Allowance,
  type CosineGap,
  type Guessed,
  type Landing,
  type LandingCost,
} from '../../../../core/aim/index.ts';
import { expectedScore } from '../../../../core/group/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import { ok, type Result } from '../../../../core/model/problem.ts';
import type { Given } from './given.ts';
import { remembered } from './remembered.ts';

const hour = Math.PI / 6;
const stillAir = { x: 0, y: 0, z: 0 };

export const windOf = ({ windSpeed, windHour }: Pick<Given, 'windSpeed' | 'windHour'>) => windFrom(windSpeed, windHour * hour);

/** Where the group lands with all that is chosen to go wrong, and what that costs. */
export interface Lands {
  readonly landing: Landing;
  readonly cost: LandingCost;
  /** One standard deviation across and up there, a guessed distance with it [m]. */
  readonly spread: readonly [number, number];
}

export const landsOf = remembered((given: Given): Result<Lands> => {
  const { launches, believed, distance, slope, scatter, face, shaftRadius, marked, within } = given;
  const landed = landing(launches, { setFor: believed, distance, slope, wind: windOf(given) });
  if (!landed.ok) return landed;
  const guess = marked ? null : guessed({ value: launches.value, corners: [] }, distance, within);
  if (guess !== null && !guess.ok) return guess;
  const own = [scatter.across * distance, scatter.up * distance] as const;
  const spread = [own[0], Math.hypot(own[1], guess === null ? 0 : guess.value.spread)] as const;
  const cost = landingCost(landed.value.place, spread, shaftRadius, face);
  // What it is held against is the archer who knows the distance.
  const atMiddle = guess === null ? cost.atMiddle : expectedScore({ spread: own, offset: { x: 0, y: 0 } }, shaftRadius, face);
  return ok({ landing: landed.value, cost: { ...cost, atMiddle }, spread });
});

/** A shot up or down: what to set the sight for, and where an arrow strikes that was not set so. */
export interface HillSide {
  readonly slope: number;
  readonly setFor: Band | null;
  readonly up: Band;
  /** How far the bow is raised over the horizontal for it [rad]. */
  readonly raised: number;
}

export interface Hill {
  readonly sides: readonly HillSide[];
  readonly cosineRule: number;
  readonly gap: CosineGap | null;
}

/** The slope chosen, and as steep the other way. */
export const hillOf = remembered((launches: Given['launches'], distance: number, slope: number): Result<Hill> => {
  const sides: HillSide[] = [];
  for (const steep of [Math.abs(slope), -Math.abs(slope)]) {
    const shots = atCorners(launches, (launch) => slopeShot(launch, distance, steep));
    if (!shots.ok) return shots;
    const landed = landing(launches, { setFor: distance, distance, slope: steep, wind: stillAir });
    if (!landed.ok) return landed;
    const every = [shots.value.value, ...shots.value.corners].every(({ setFor }) => setFor !== null);
    sides.push({
      slope: steep,
      setFor: every ? bandOver(shots.value, (shot) => shot.setFor ?? 0) : null,
      up: landed.value.up,
      raised: bandOver(shots.value, (shot) => shot.elevation).high,
    });
  }
  const gap = cosineGap(launches.value, distance, slope);
  return ok({ sides, cosineRule: distance * Math.cos(slope), gap: gap.ok ? gap.value : null });
});

export interface Blown {
  readonly drift: Band;
  readonly up: Band;
  readonly time: Band;
  readonly lagRule: number;
  readonly allow: Allowance;
}

export const blownOf = remembered(
  (launches: Given['launches'], distance: number, windSpeed: number, windHour: number): Result<Blown> => {
    const wind = windOf({ windSpeed, windHour });
    const drifts = atCorners(launches, (launch) => windDrift(launch, distance, wind));
    if (!drifts.ok) return drifts;
    const allow = allowance(launches, distance, 0, wind);
    if (!allow.ok) return allow;
    return ok({
      drift: bandOver(drifts.value, ({ across }) => across),
      up: bandOver(drifts.value, ({ up }) => up),
      time: bandOver(drifts.value, ({ time }) => time),
      lagRule: drifts.value.value.lagRule,
      allow: allow.value,
    });
  },
);

/** What strikes the middle under hill and wind together. */
export const allowOf = remembered((given: Given): Result<Allowance> =>
  allowance(given.launches, given.distance, given.slope, windOf(given)),
);

/** What a misjudged distance costs where a target stands. */
export interface WrongRow {
  readonly distance: number;
  /** How far it is misjudged [m]. */
  readonly off: number;
  /** Null where nobody misjudges it by so much, or the arrow does not get there. */
  readonly guess: Guessed | null;
  readonly known: number;
  /** One arrow's points: set for nearer by the whole of it, for farther, and on average over guesses. */
  readonly short: number;
  readonly long: number;
  readonly guessing: number;
}

/** How far out is asked about: what the sight is set wrong by, else what a guess may be out. */
export const offOf = ({ marked, believed, distance, within }: Given): number =>
  marked && believed !== distance ? Math.abs(believed - distance) : within;

type Shooter = Pick<Given, 'launches' | 'scatter' | 'shaftRadius' | 'face'>;

/** What a distance costs that is out by as much as is asked about. */
export const wrongHere = (given: Given): WrongRow => wrongRow(given, given.distance, offOf(given));

/** The same where targets are set; neither the hill nor the wind has a part in it. */
export function wrongRows(given: Given, distances: readonly number[]): readonly WrongRow[] {
  const { launches, scatter, shaftRadius, face } = given;
  return rowsOf(launches, scatter, shaftRadius, face, offOf(given), distances);
}

const rowsOf = remembered(
  (
    launches: Shooter['launches'],
    scatter: Shooter['scatter'],
    shaftRadius: number,
    face: Shooter['face'],
    off: number,
    distances: readonly number[],
  ): readonly WrongRow[] => distances.map((distance) => wrongRow({ launches, scatter, shaftRadius, face }, distance, off)),
);

function wrongRow({ launches, scatter, shaftRadius, face }: Shooter, distance: number, off: number): WrongRow {
  const [across, up] = [scatter.across * distance, scatter.up * distance];
  const points = (high: number, y: number) =>
    expectedScore({ spread: [across, high], offset: { x: 0, y } }, shaftRadius, face).points;
  const found = guessed(launches, distance, off);
  const known = points(up, 0);
  if (!found.ok) return { distance, off, guess: null, known, short: known, long: known, guessing: known };
  const { farther, nearer, spread } = found.value;
  return {
    distance,
    off,
    guess: found.value,
    known,
    short: points(up, farther.value),
    long: points(up, nearer.value),
    guessing: points(Math.hypot(up, spread), 0),
  };
}
