import type { ColourChange, RingEdge } from './edges.ts';
import { lightAt, type Pixels } from './pixels.ts';
import { leadingBack, through, type Homography } from './plane.ts';

const SAMPLES = 41;
/** No face has a broader line between two zones [m]. */
const BROADEST = 0.003;

/**
 * Edges set right for a dark line that is printed between two colours, within the inner one, and shifts where they seem to meet.
 *
 * @equation per ring and channel ∫(y - a) dρ = (b - a)(W - e) - a w over the window, whatever the blur: the width w common to all rings and each ring's edge e by least squares, y the median profile over the spokes
 * @param pixels - the picture, with colours [record]
 * @param lies - how the face lies, from the picture [widths] to the face in units [list]
 * @param unit - of the face [m]
 * @param changes - the rings and their colours [list]
 * @param edges - as they were found [list]
 * @param share - how much of the room on either side of a ring to look at [-]
 * @returns the edges where the colours truly end; as they were when no line is seen [list]
 * @validity lines of up to 3 mm, no lighter than black; light that falls alike on both sides of a line
 * @source wa-rules, own derivation
 * @example besideLines({ data: new Uint8Array(16), width: 2, height: 2 }, [1, 0, 0, 0, 1, 0, 0, 0, 1], 1, [], [], 0.01) // []
 */
export function besideLines(
  pixels: Pixels,
  lies: Homography,
  unit: number,
  changes: readonly ColourChange[],
  edges: readonly RingEdge[],
  share: number,
): RingEdge[] {
  const rings = changes.flatMap(({ radius, room }) => {
    const here = edges.filter((edge) => edge.radius === radius);
    const measured = measure(pixels, lies, unit, radius, here, share * room);
    return measured === null ? [] : [{ radius, ...measured }];
  });
  let [above, below] = [0, 0];
  for (const { inner, change, area } of rings) {
    const [across, seen] = [off(inner, change), off(area, change)];
    above += dot(across, seen);
    below += dot(across, across);
  }
  const width = Math.min(BROADEST, below > 0 ? above / below : 0);
  if (!(width > 0)) return [...edges];
  const shifts = new Map(
    rings.map(({ radius, inner, change, area, offset }) => {
      const edge =
        dot(
          change,
          [0, 1, 2].map((k) => (area[k] ?? 0) - width * (inner[k] ?? 0)),
        ) / dot(change, change);
      return [radius, edge - offset];
    }),
  );
  const back = leadingBack(lies);
  return edges.map((edge) => {
    const { x, y } = through(lies, edge.picture);
    const times = 1 + (shifts.get(edge.radius) ?? 0) / (unit * Math.hypot(x, y));
    return { ...edge, picture: through(back, { x: x * times, y: y * times }) };
  });
}

type Light = readonly number[];
const dot = (a: Light, b: Light): number => a.reduce((sum, value, k) => sum + value * (b[k] ?? 0), 0);
/** What of a is not along b. */
const off = (a: Light, b: Light): Light => a.map((value, k) => value - ((b[k] ?? 0) * dot(a, b)) / dot(b, b));
const medianOf = (values: Float32Array): number => values.sort()[Math.floor(values.length / 2)] ?? 0;

interface Measured {
  /** Light of the inner side, and what the outer one has more of it. */
  readonly inner: Light;
  readonly change: Light;
  /** (b - a) W - ∫(y - a) dρ, which is (b - a) e + a w [m]. */
  readonly area: Light;
  /** Where the edges were found, beyond the ring [m]. */
  readonly offset: number;
}

function measure(
  pixels: Pixels,
  lies: Homography,
  unit: number,
  radius: number,
  edges: readonly RingEdge[],
  window: number,
): Measured | null {
  if (edges.length === 0) return null;
  const back = leadingBack(lies);
  const step = (2 * window) / (SAMPLES - 1);
  const offsets: number[] = [];
  const profiles: Float32Array[] = [];
  for (const { picture } of edges) {
    const { x, y } = through(lies, picture);
    const away = Math.hypot(x, y);
    const profile = new Float32Array(3 * SAMPLES);
    let inside = true;
    for (let i = 0; i < SAMPLES && inside; i++) {
      const times = (radius - window + i * step) / (unit * away);
      const place = through(back, { x: x * times, y: y * times });
      inside = lightAt(pixels, place.x * pixels.width, place.y * pixels.width, profile, 3 * i);
    }
    if (!inside) continue;
    // More light on one side of the face than on the other must not count for more.
    const sum = profile.reduce((total, value) => total + value, 0);
    profiles.push(profile.map((value) => value / sum));
    offsets.push(unit * away - radius);
  }
  if (profiles.length === 0) return null;
  const middle = Array.from({ length: 3 * SAMPLES }, (_, at) =>
    medianOf(Float32Array.from(profiles, (profile) => profile[at] as number)),
  );
  const quarter = Math.floor(SAMPLES / 4);
  const mean = (from: number, k: number) =>
    Array.from({ length: quarter }, (_, i) => middle[3 * (from + i) + k] ?? 0).reduce((sum, value) => sum + value, 0) / quarter;
  const inner = [0, 1, 2].map((k) => mean(0, k));
  const change = inner.map((a, k) => mean(SAMPLES - quarter, k) - a);
  const area = inner.map((a, k) => {
    let sum = 0;
    for (let i = 0; i < SAMPLES; i++) sum += (i === 0 || i === SAMPLES - 1 ? 0.5 : 1) * ((middle[3 * i + k] ?? 0) - a);
    return (change[k] ?? 0) * window - sum * step;
  });
  return { inner, change, area, offset: medianOf(Float32Array.from(offsets)) };
}
