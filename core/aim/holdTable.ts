import type { Band } from '../model/band.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { atCorners, bandOver, type Corners } from './bands.ts';
import { crawlFor } from './crawl.ts';
import type { Launch } from './launch.ts';
import { groundMark, pointOfAim } from './pointOfAim.ts';
import { missWithTipOn } from './pointOn.ts';

/** Where the tip of the arrow is held for one distance, and what happens when it is held on the middle all the same. */
export interface HoldRow {
  readonly distance: number;
  /** Above the middle when positive, below when negative, in the target's plane [m]. */
  readonly hold: Band;
  /** Where the arrow goes with the tip on the middle: above it when positive [m]; null where a flight of the band falls short of the target. */
  readonly over: Band | null;
  /** From the archer to a marker on the ground under the tip [m], at the farthest the foot of the target; null when the tip clears the ground at the target. */
  readonly ground: Band | null;
  /** How far below the nock the hook goes down so that the tip is held on the middle [m]; null where no crawl does it. */
  readonly crawl: Band | null;
}

/**
 * Points of aim over several distances, each with its band.
 *
 * @equation pointOfAim, missWithTipOn, groundMark and crawlFor of each distance over the launches; a marker past the target counts as at its foot, a crawl past the point-on distance as none
 * @param launches - the launch to go by and those that bound it, from `launchBand` [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @param distances - of the targets [m]
 * @param eyeAboveGround - H, how high the eye stands above level ground [m]
 * @returns a row for every distance that all flights of the band reach, in the order given; or a refusal of a distance short of the tip [list]
 * @validity level ground, still air; as pointOfAim
 * @source own derivation
 * @example holdTable({ value: { speed: 50, k: 0, eyeHeight: 0.12 }, corners: [] }, 0.74, [30, 60], 1.6).value.map(({ hold }) => hold.value.toFixed(2)) // ["-2.94","-2.40"]
 */
export function holdTable(
  launches: Corners<Launch>,
  tipForward: number,
  distances: readonly number[],
  eyeAboveGround: number,
): Result<HoldRow[]> {
  const rows: HoldRow[] = [];
  for (const distance of distances) {
    if (!(tipForward > 0 && distance > tipForward))
      return refuse('too-near', 'A distance beyond the tip of the arrow was expected.', 'shootingDistance');
    const row = rowAt(launches, tipForward, distance, eyeAboveGround);
    if (row !== null) rows.push(row);
  }
  return ok(rows);
}

function rowAt(launches: Corners<Launch>, tipForward: number, distance: number, eyeAboveGround: number): HoldRow | null {
  const held = atCorners(launches, (launch) => pointOfAim(launch, tipForward, distance));
  if (!held.ok) return null;
  const over = bandOver(launches, (launch) => missWithTipOn(launch, tipForward, distance));
  return {
    distance,
    hold: bandOver(held.value, (hold) => hold),
    over: Number.isFinite(over.low + over.value + over.high) ? over : null,
    ground: markerUnder(held.value, distance, launches.value.targetDrop ?? 0, eyeAboveGround),
    crawl: crawlAt(launches, tipForward, distance),
  };
}

function markerUnder(held: Corners<number>, distance: number, targetDrop: number, eyeAboveGround: number): Band | null {
  const mark = (hold: number) => groundMark(hold, distance, targetDrop, eyeAboveGround);
  return mark(held.value) === null ? null : bandOver(held, (hold) => mark(hold) ?? distance);
}

function crawlAt(launches: Corners<Launch>, tipForward: number, distance: number): Band | null {
  const value = crawlFor(launches.value, tipForward, distance);
  if (!value.ok) return null;
  const found = atCorners(launches, (launch) => {
    const crawl = crawlFor(launch, tipForward, distance);
    if (crawl.ok) return ok(crawl.value.down);
    return crawl.problem.code === 'beyond-point-on' ? ok(0) : crawl;
  });
  return found.ok ? bandOver(found.value, (down) => down) : null;
}
