import type { Band } from '../model/band.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { atCorners, bandOver, type Corners } from './bands.ts';
import type { Launch } from './launch.ts';
import { pointOfAim } from './pointOfAim.ts';
import { missWithTipOn, pointOnDistance } from './pointOn.ts';

/** What another anchor does: the eye stands at another height over the arrow, and nothing else has changed. */
export interface AnchorMoved {
  /** The point-on distance as it was, and with the eye at the other height [m]; or why there is none. */
  readonly before: Result<Band>;
  readonly after: Result<Band>;
  readonly rows: readonly {
    readonly distance: number;
    /** Where the arrow goes with the tip held where it was held before: above the middle when positive, below when negative [m]. */
    readonly moved: Band;
  }[];
}

/**
 * What a change of anchor does to the point-on distance, and to arrows shot with the same hold.
 *
 * @equation moved = y(R; θ') + d with θ' = atan(e' / L_p) − atan((d − h) / R) and h the point of aim at the eye height e
 * @param launches - the launch to go by and those that bound it, with the eye height e there was [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @param otherEyeHeight - e', from the arrow's axis up to the eye with the other anchor [m]
 * @param distances - of the targets [m]
 * @returns the point-on distance before and after, and a row for every distance that all flights reach both ways; or a refusal [record]
 * @validity the draw, and so the speed and the tip, stay as they are: what another anchor changes of them is not in it; eye heights of 0 to 0.25 m
 * @source own derivation
 * @example anchorMoved({ value: { speed: 50, k: 0, eyeHeight: 0.12 }, corners: [] }, 0.74, 0.11, [30]).value.rows[0].moved.value.toFixed(2) // "-0.38"
 */
export function anchorMoved(
  launches: Corners<Launch>,
  tipForward: number,
  otherEyeHeight: number,
  distances: readonly number[],
): Result<AnchorMoved> {
  if (!(otherEyeHeight >= 0 && otherEyeHeight <= 0.25))
    return refuse('eye-height', 'An eye height above the arrow of 0 to 25 cm was expected.', 'eyeHeight');
  if (!distances.every((distance) => tipForward > 0 && distance > tipForward))
    return refuse('too-near', 'A distance beyond the tip of the arrow was expected.', 'shootingDistance');
  const other = (launch: Launch): Launch => ({ ...launch, eyeHeight: otherEyeHeight });
  const rows = distances.flatMap((distance) => {
    const moved = atCorners(launches, (launch) => {
      const held = pointOfAim(launch, tipForward, distance);
      if (!held.ok) return held;
      // The tip held h over the middle is the tip held on the middle of a target that hangs h higher.
      const drop = (launch.targetDrop ?? 0) - held.value;
      return ok(missWithTipOn({ ...other(launch), targetDrop: drop }, tipForward, distance) + held.value);
    });
    if (!moved.ok) return [];
    const band = bandOver(moved.value, (height) => height);
    return Number.isFinite(band.low + band.value + band.high) ? [{ distance, moved: band }] : [];
  });
  const pointOnOver = (of: (launch: Launch) => Launch): Result<Band> => {
    const found = atCorners(launches, (launch) => pointOnDistance(of(launch), tipForward));
    return found.ok ? ok(bandOver(found.value, (distance) => distance)) : found;
  };
  return ok({ before: pointOnOver((launch) => launch), after: pointOnOver(other), rows });
}
