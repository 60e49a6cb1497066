import {
  anchorMoved,
  atCorners,
  bandOver,
  farthestOffered,
  goldAboveGround,
  holdTable,
  launchBand,
  pointOnDistance,
  widestGap,
  type Corners,
  type FlightBasis,
  type HoldRow,
  type Launch,
} from '../../../../core/aim/index.ts';
import { pointBeyondShaft } from '../../../../core/arrow/index.ts';
import type { Band } from '../../../../core/model/band.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../../core/model/problem.ts';
import { factorOf, textQuantity } from '../../../../core/units/index.ts';
import { tableDistances } from '../distances.ts';
import { neededForPointsOfAim } from './holds.ts';

/** What the points of aim rest on. */
export interface Aimed {
  readonly launches: Corners<Launch>;
  /** From the nock to the tip of the arrow [m]. */
  readonly tipForward: number;
  /** How high the eye stands over the ground [m]. */
  readonly eyeUp: number;
  /** Nobody is led to raise the bow for more than this [m]. */
  readonly farthest: number;
}

/** What the points of aim of a set-up rest on, or the figure that is missing. */
export function aimedBy(bundle: Bundle, basis: FlightBasis, eyeUp: number): Result<Aimed> {
  const missing = neededForPointsOfAim(bundle);
  if (missing !== null) return { ok: false, problem: missing };
  const { speed, drag, eyeHeight } = basis;
  return ok({
    launches: launchBand(speed, drag, eyeHeight.value, eyeUp - goldAboveGround),
    tipForward: (bundle.arrowSet.length ?? 0) + pointBeyondShaft,
    eyeUp,
    farthest: farthestOffered(speed, drag),
  });
}

/** One line of the table; without a row where the bow would have to be raised too far. */
export interface HoldLine {
  readonly distance: number;
  readonly pointOn: boolean;
  readonly row: HoldRow | null;
}

export interface Holds {
  readonly pointOn: Result<Band>;
  readonly widest: Result<{ readonly distance: Band; readonly hold: Band }>;
}

/** Where tip and arrow agree, and where the tip is held lowest. */
export function holdsOf({ launches, tipForward }: Aimed): Holds {
  const pointOn = atCorners(launches, (launch) => pointOnDistance(launch, tipForward));
  const gaps = atCorners(launches, (launch) => widestGap(launch, tipForward));
  return {
    pointOn: pointOn.ok ? ok(bandOver(pointOn.value, (distance) => distance)) : pointOn,
    widest: gaps.ok
      ? ok({ distance: bandOver(gaps.value, (gap) => gap.distance), hold: bandOver(gaps.value, (gap) => gap.hold) })
      : gaps,
  };
}

/** The usual distances, and where tip and arrow agree: a line of its own unless a usual distance reads the same. */
export function usualLines(aimed: Aimed, pointOn: Result<Band>, units: UnitChoice): HoldLine[] {
  const usual = usualDistances(units);
  const on = pointOn.ok ? pointOn.value.value : null;
  const reads = (distance: number) => on !== null && Math.abs(distance - on) < 0.5 * factorOf('distance', units);
  const all = on === null || usual.some(reads) ? usual : [...usual, on].sort((a, b) => a - b);
  return all.map((distance) => lineAt(aimed, distance, reads(distance)));
}

/** The distances that the trade shoots. */
export const usualDistances = (units: UnitChoice): readonly number[] => tableDistances(units, 10 * factorOf('distance', units));

/** Distances that read alike: a yard typed and a yard reckoned may differ in their last digit [m]. */
export const same = (one: number, other: number): boolean => Math.abs(one - other) < 0.01;

/** The table with one line more in its place, unless that distance is there already. */
export const withLine = (lines: readonly HoldLine[], line: HoldLine): readonly HoldLine[] =>
  lines.some(({ distance }) => same(distance, line.distance)) ? lines : [...lines, line].sort((a, b) => a.distance - b.distance);

function lineAt(aimed: Aimed, distance: number, pointOn: boolean): HoldLine {
  const row = holdAt(aimed, distance);
  return { distance, pointOn, row: row.ok ? row.value : null };
}

/** The point of aim for one distance; or why nobody is told one. */
export function holdAt({ launches, tipForward, eyeUp, farthest }: Aimed, distance: number): Result<HoldRow> {
  if (distance > farthest)
    return refuse(
      'too-far',
      'So far this bow would have to be raised by 20 degrees and more: a nearer distance was expected.',
      'shootingDistance',
    );
  const table = holdTable(launches, tipForward, [distance], eyeUp);
  if (!table.ok) return table;
  const [row] = table.value;
  return row === undefined ? refuse('out-of-reach', 'This arrow does not carry so far.', 'shootingDistance') : ok(row);
}

/** How much higher the arrow strikes for a little more from the arrow up to the eye [m]; null where it cannot be said. */
export function strikesHigher({ launches, tipForward }: Aimed, distance: number, more: number): number | null {
  const { value } = launches;
  const moved = anchorMoved({ value, corners: [] }, tipForward, value.eyeHeight + more, [distance]);
  return moved.ok ? (moved.value.rows[0]?.moved.value ?? null) : null;
}

/** What a distance is called: whole ones without decimals, the point-on distance to the nearest. */
export const distanceText = ({ distance, pointOn }: { distance: number; pointOn: boolean }, units: UnitChoice): string =>
  textQuantity(distance, 'distance', units, pointOn ? { digits: 0 } : {});
