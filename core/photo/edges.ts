import type { FaceColour } from '../group/faces.ts';
import { looksLike } from './colours.ts';
import type { RingMark } from './markedRings.ts';
import { lightAt, type Pixels } from './pixels.ts';
import { leadingBack, through, type Homography } from './plane.ts';

/** A ring of the face where the colour changes. */
export interface ColourChange {
  /** [m] */
  readonly radius: number;
  /** Inside and outside of it. */
  readonly colours: readonly [inner: FaceColour, outer: FaceColour];
  /** How far on either side nothing else is printed [m]. */
  readonly room: number;
}

/** An edge found in the picture. */
export interface RingEdge extends RingMark {
  /** From a fifth to four fifths of the change, on the face [m]. */
  readonly rise: number;
}

/** Samples of a profile. */
const LEAST_SAMPLES = 25;
const MOST_SAMPLES = 81;

/**
 * Where the colour changes, along spokes of the face.
 *
 * @equation t = (c - a)·(b - a)/|b - a|² with a and b the means of the inner and outer quarter of a profile; the edge is where t crosses one half
 * @param pixels - the picture, with colours [record]
 * @param lies - how the face lies by now, from the picture [widths] to the face in units [list]
 * @param unit - of the face [m]
 * @param change - the ring and its two colours [record]
 * @param share - how much of the room on either side of the ring to look at [-]
 * @param spokes - how many, evenly spread [-]
 * @returns the edges found; spokes on which the two colours do not meet give none [list]
 * @validity the ring within the middle half of the window; amounts of light, so that a blur leaves the edge where it is
 * @source iec-61966-2-1, own derivation
 * @example edgesOn({ data: new Uint8Array(16), width: 2, height: 2 }, [1, 0, -0.5, 0, -1, 0.5, 0, 0, 1], 1, { radius: 0.2, colours: ['gold', 'red'], room: 0.1 }, 0.5, 8) // []
 */
export function edgesOn(
  pixels: Pixels,
  lies: Homography,
  unit: number,
  change: ColourChange,
  share: number,
  spokes: number,
): RingEdge[] {
  const { width } = pixels;
  const window = share * change.room;
  const toPixels = leadingBack(lies);
  const profile = new Float32Array(3 * MOST_SAMPLES);
  const edges: RingEdge[] = [];
  const placeAt = (radius: number, angle: number) =>
    through(toPixels, { x: (radius / unit) * Math.cos(angle), y: (radius / unit) * Math.sin(angle) });
  for (let spoke = 0; spoke < spokes; spoke++) {
    const angle = (2 * Math.PI * (spoke + 0.5)) / spokes;
    const [first, last] = [placeAt(change.radius - window, angle), placeAt(change.radius + window, angle)];
    const long = Math.hypot(last.x - first.x, last.y - first.y) * width;
    const samples = Math.min(MOST_SAMPLES, Math.max(LEAST_SAMPLES, 2 * Math.ceil(long) + 1));
    const step = (2 * window) / (samples - 1);
    let inside = true;
    for (let i = 0; i < samples && inside; i++) {
      const { x, y } = placeAt(change.radius - window + i * step, angle);
      inside = lightAt(pixels, x * width, y * width, profile, 3 * i);
    }
    const found = inside ? crossing(profile, samples, change.colours) : null;
    if (found === null) continue;
    const picture = placeAt(change.radius - window + found.at * step, angle);
    edges.push({ radius: change.radius, picture, rise: found.rise * step });
  }
  return edges;
}

type Light = [number, number, number];

function crossing(profile: Float32Array, samples: number, colours: ColourChange['colours']): { at: number; rise: number } | null {
  const quarter = Math.floor(samples / 4);
  const inner = meanOf(profile, 0, quarter);
  const outer = meanOf(profile, samples - quarter, samples);
  if (!looksLike(inner, outer, colours)) return null;
  const change: Light = [outer[0] - inner[0], outer[1] - inner[1], outer[2] - inner[2]];
  const square = change[0] ** 2 + change[1] ** 2 + change[2] ** 2;
  const along = (i: number): number =>
    change.reduce((sum, slope, k) => sum + slope * ((profile[3 * i + k] as number) - (inner[k] as number)), 0) / square;
  let best: { at: number; rise: number } | null = null;
  let steepest = 0;
  let before = along(0);
  for (let i = 1; i < samples; i++) {
    const here = along(i);
    if (before < 0.5 && here >= 0.5) {
      // A speck of noise crosses too, but comes back: the true change rises most from some way before to some way after.
      const climb = along(Math.min(samples - 1, i + 3)) - along(Math.max(0, i - 4));
      if (climb > steepest) {
        steepest = climb;
        best = { at: i - 1 + (0.5 - before) / (here - before), rise: 0 };
      }
    }
    before = here;
  }
  if (best === null || steepest < 0.15) return null;
  const middle = Math.round(best.at);
  let [low, high] = [middle, middle];
  while (low > 0 && along(low) > 0.2) low--;
  while (high < samples - 1 && along(high) < 0.8) high++;
  return { at: best.at, rise: high - low };
}

function meanOf(profile: Float32Array, from: number, to: number): Light {
  const sum: Light = [0, 0, 0];
  for (let i = from; i < to; i++) for (let k = 0; k < 3; k++) sum[k] = (sum[k] as number) + (profile[3 * i + k] as number);
  return [sum[0] / (to - from), sum[1] / (to - from), sum[2] / (to - from)];
}
