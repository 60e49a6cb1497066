import type { Steps } from './steps.ts';

/** A picture as rows of pixels from the left top corner, each of red, green, blue and cover, or of one grey. */
export interface Pixels {
  readonly data: Uint8Array | Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** Amount of light behind each of the 256 levels of a picture, 0 to 1. */
const light = Float32Array.from({ length: 256 }, (_, level) => {
  const value = level / 255;
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
});

/** Rows to a step. */
const STRIP = 64;

/**
 * How many numbers a pixel takes.
 *
 * @equation numbers divided by pixels
 * @param pixels - a picture [record]
 * @returns 4 with colours, 1 in grey [-]
 * @validity a picture whose numbers do not fill its width and height as either throws RangeError
 * @source own derivation
 * @example channelsOf({ data: new Uint8Array(12), width: 4, height: 3 }) // 1
 */
export function channelsOf({ data, width, height }: Pixels): 1 | 4 {
  const channels = data.length / (width * height);
  if (!(width > 0 && height > 0) || (channels !== 1 && channels !== 4))
    throw new RangeError('A picture of width times height pixels, of four numbers or one each, was expected.');
  return channels;
}

/**
 * A picture made smaller by a whole number of times, so that its longest side is no longer than wanted.
 *
 * @equation each pixel the mean of n × n levels, n = ⌈longest/most⌉; what is over at the right and below is cut off
 * @param pixels - the picture [record]
 * @param most - longest side wanted [-]
 * @returns steps to the smaller picture, with colours; the same when it is small enough and has colours [record]
 * @validity most ≥ 1
 * @source common practice
 * @example smaller({ data: new Uint8Array(4).fill(9), width: 2, height: 2 }, 1).next().value.data.length // 4
 */
export function* smaller(pixels: Pixels, most: number): Steps<Pixels> {
  const channels = channelsOf(pixels);
  const times = Math.ceil(Math.max(pixels.width, pixels.height) / most);
  if (times === 1 && channels === 4) return pixels;
  const width = Math.max(1, Math.floor(pixels.width / times));
  const height = Math.max(1, Math.floor(pixels.height / times));
  const data = new Uint8ClampedArray(4 * width * height).fill(255);
  const [across, down] = [Math.min(times, pixels.width), Math.min(times, pixels.height)];
  const count = across * down;
  const { data: from } = pixels;
  for (let j = 0; j < height; j++) {
    if (j % STRIP === 0 && j > 0) yield { share: j / height, doing: 'Making the picture smaller' };
    for (let i = 0; i < width; i++) {
      let [red, green, blue] = [0, 0, 0];
      for (let y = j * times; y < j * times + down; y++) {
        let at = channels * (y * pixels.width + i * times);
        for (let k = 0; k < across; k++, at += channels) {
          red += from[at] as number;
          green += from[channels === 4 ? at + 1 : at] as number;
          blue += from[channels === 4 ? at + 2 : at] as number;
        }
      }
      const to = 4 * (j * width + i);
      data[to] = red / count;
      data[to + 1] = green / count;
      data[to + 2] = blue / count;
    }
  }
  return { data, width, height };
}

/**
 * The light at a place between the pixels of a picture with colours.
 *
 * @equation bilinear between the centres of four pixels, which lie half a pixel in; levels turned into light first
 * @param pixels - the picture, with colours [record]
 * @param x - from the left edge, in pixels [-]
 * @param y - from the upper edge, in pixels [-]
 * @param into - takes red, green and blue, 0 to 1 each [list]
 * @param at - where in it [-]
 * @returns whether the place lies in the picture [choice]
 * @validity outside the picture nothing is written
 * @source iec-61966-2-1
 * @example lightAt({ data: new Uint8Array(16).fill(255), width: 2, height: 2 }, 1, 1, [], 0) // true
 */
export function lightAt(pixels: Pixels, x: number, y: number, into: number[] | Float32Array, at: number): boolean {
  const { data, width, height } = pixels;
  if (!(x >= 0.5 && y >= 0.5 && x <= width - 0.5 && y <= height - 0.5)) return false;
  const i = Math.min(width - 2, Math.floor(x - 0.5));
  const j = Math.min(height - 2, Math.floor(y - 0.5));
  const [p, q] = [x - 0.5 - i, y - 0.5 - j];
  const above = 4 * (Math.max(0, j) * width + Math.max(0, i));
  const below = above + (height > 1 ? 4 * width : 0);
  const next = width > 1 ? 4 : 0;
  for (let k = 0; k < 3; k++) {
    const top = (light[data[above + k] as number] as number) * (1 - p) + (light[data[above + next + k] as number] as number) * p;
    const foot = (light[data[below + k] as number] as number) * (1 - p) + (light[data[below + next + k] as number] as number) * p;
    into[at + k] = top * (1 - q) + foot * q;
  }
  return true;
}
