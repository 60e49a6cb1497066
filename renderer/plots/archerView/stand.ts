import type { ViewScale } from './frame.ts';
import { BUTT } from './frame.ts';

/** The stand and the shooting lane, as paths: the mirror's x, the butt's place. */
export interface Stand {
  readonly legs: string;
  readonly back: string;
  readonly lane: string;
}

/** Of the stand [m]: where its legs meet the butt and the ground aside, how thick they are, how far behind the third stands. */
const LEG = { at: 0.36, foot: 0.5, thick: 0.05, behind: 0.9 } as const;

/** The stand under the butt and the edges of its lane, which run from the archer's feet to its own. Slopes: up over ahead. */
export function standSeen(
  { scale, ahead, horizon }: ViewScale,
  distance: number,
  eyeAboveGround: number,
  centreAboveGround: number,
  bottom: number,
): Stand {
  const per = scale / distance;
  const y = (aboveGround: number, far = distance) => horizon + ((eyeAboveGround - aboveGround) * scale) / far;
  const underButt = y(centreAboveGround - BUTT / 2);
  const foot = y(0);
  const leg = (sign: 1 | -1) => {
    const [top, low, half] = [ahead + sign * LEG.at * per, ahead + sign * LEG.foot * per, (LEG.thick * per) / 2];
    return `M${fixed(top - half)} ${fixed(underButt)}L${fixed(low - half)} ${fixed(foot)}h${fixed(2 * half)}L${fixed(top + half)} ${fixed(underButt)}Z`;
  };
  const farther = distance + LEG.behind;
  // Half the butt aside on the ground, straight ahead for ever: both edges run to the point on the horizon.
  const laneAt = (far: number) => ((BUTT / 2) * scale) / far;
  const edge = (sign: 1 | -1) => {
    const near = (eyeAboveGround * scale) / Math.max(1, bottom - horizon);
    return `M${fixed(ahead + sign * laneAt(distance))} ${fixed(foot)}L${fixed(ahead + sign * laneAt(near))} ${fixed(bottom)}`;
  };
  return {
    legs: leg(-1) + leg(1),
    back: `M${fixed(ahead)} ${fixed(underButt)}V${fixed(y(0, farther))}`,
    lane: edge(-1) + edge(1),
  };
}

const fixed = (pixels: number): number => Number(pixels.toFixed(2));
