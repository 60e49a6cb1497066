import { crossing } from '../flight/index.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { Launch } from './launch.ts';
import { missWithTipOn } from './pointOn.ts';

/** A hook lower on the string, so that the tip of the arrow can be held on the middle. */
export interface Crawl {
  /** How far below the nock the hook goes down, from where it holds the arrow for the point-on distance [m]. */
  readonly down: number;
  /** The eye above the arrow's axis that is left [m]. */
  readonly eyeHeight: number;
}

/**
 * How far the hook goes down the string for a distance nearer than the point-on distance.
 *
 * @equation e' with miss(R; e') = 0 and the tip held on the middle; crawl e − e'
 * @param launch - speed, drag parameter, target drop, and the eye height e with the hook at the nock [record]
 * @param tipForward - L_p, from the nock to the tip of the arrow at full draw [m]
 * @param distance - R, nearer than the point-on distance [m]
 * @returns the crawl and the eye height that is left, or a refusal [record]
 * @validity the anchor stays where it is, so that the nock rises by as much as the hook goes down; what a crawl does to speed and to the balance of the limbs is not in it: shoot it in
 * @source common practice
 * @example crawlFor({ speed: 50, k: 0, eyeHeight: 0.12 }, 0.74, 30).value.down > 0.04 // true
 */
export function crawlFor(launch: Launch, tipForward: number, distance: number): Result<Crawl> {
  if (!(distance > 2 * tipForward))
    return refuse('distance', 'A distance well beyond the tip of the arrow was expected.', 'shootingDistance');
  const miss = (eyeHeight: number) => Math.max(-1000, missWithTipOn({ ...launch, eyeHeight }, tipForward, distance));
  if (!(miss(launch.eyeHeight) >= 0))
    return refuse(
      'beyond-point-on',
      'This lies beyond the point-on distance: there the tip is held over the middle, and no crawl helps.',
      'shootingDistance',
    );
  if (!(miss(0) <= 0))
    return refuse(
      'no-crawl',
      'So near, no crawl brings the arrow down to the middle: hold the tip below it.',
      'shootingDistance',
    );
  const eyeHeight = crossing(miss, 0, launch.eyeHeight, 1e-7);
  return ok({ down: launch.eyeHeight - eyeHeight, eyeHeight });
}
