import { channelsOf, type Pixels } from './pixels.ts';
import type { Homography } from './plane.ts';
import type { Steps } from './steps.ts';

/** Widest straightened picture [pixels]: 16 MB. */
const MOST = 2000;
const STRIP = 32;

/**
 * A picture of a face as seen straight on.
 *
 * @equation each pixel's place on the face through H into the picture; bilinear between its four pixels
 * @param pixels - the picture, with colours or in grey [record]
 * @param homography - of the picture, face to picture [list]
 * @param half - from the centre to each side [m]
 * @param perMetre - pixels to a metre of the face [1/m]
 * @returns steps to a square picture, up above, its middle the centre of the face; clear where the picture does not reach [record]
 * @validity at most 2000 pixels wide, else RangeError
 * @source hartley-zisserman-2004
 * @example straightened({ data: new Uint8Array(4).fill(7), width: 2, height: 2 }, [1, 0, 0.5, 0, -1, 0.5, 0, 0, 1], 0.1, 5).next().value.width // 1
 */
export function* straightened(pixels: Pixels, homography: Homography, half: number, perMetre: number): Steps<Pixels> {
  const channels = channelsOf(pixels);
  const { data: from, width, height } = pixels;
  const size = Math.round(2 * half * perMetre);
  if (!(size >= 1 && size <= MOST)) throw new RangeError(`A straightened picture of 1 to ${MOST} pixels was expected.`);
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0, k = 0] = homography;
  const data = new Uint8ClampedArray(4 * size * size);
  for (let j = 0; j < size; j++) {
    if (j % STRIP === 0 && j > 0) yield { share: j / size, doing: 'Straightening the face' };
    const y = half - ((j + 0.5) * 2 * half) / size;
    for (let i = 0; i < size; i++) {
      const x = ((i + 0.5) * 2 * half) / size - half;
      const w = g * x + h * y + k;
      const u = ((a * x + b * y + c) / w) * width - 0.5;
      const v = ((d * x + e * y + f) / w) * width - 0.5;
      if (!(w > 0 && u >= -0.5 && v >= -0.5 && u <= width - 0.5 && v <= height - 0.5)) continue;
      const left = Math.min(Math.max(0, width - 2), Math.max(0, Math.floor(u)));
      const top = Math.min(Math.max(0, height - 2), Math.max(0, Math.floor(v)));
      const p = Math.min(1, Math.max(0, u - left));
      const q = Math.min(1, Math.max(0, v - top));
      const at = channels * (top * width + left);
      const next = width > 1 ? channels : 0;
      const below = height > 1 ? channels * width : 0;
      const to = 4 * (j * size + i);
      for (let n = 0; n < 3; n++) {
        const m = channels === 4 ? at + n : at;
        const above = (from[m] as number) * (1 - p) + (from[m + next] as number) * p;
        data[to + n] = above * (1 - q) + ((from[m + below] as number) * (1 - p) + (from[m + below + next] as number) * p) * q;
      }
      data[to + 3] = 255;
    }
  }
  return { data, width: size, height: size };
}
