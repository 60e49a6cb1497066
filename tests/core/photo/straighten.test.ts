import { describe, expect, it } from 'vitest';
import { face } from '../../../core/group/index.ts';
import { finished, lightAt, smaller, straightened, type Pixels } from '../../../core/photo/index.ts';
import { drawPhoto } from '../../../fixtures/photo/index.ts';

const view = { distance: 2, aside: 0.5, above: 0.2, roll: 0.1, centre: { x: 0.5, y: 0.375 }, focal: 0.9, height: 0.75 };
const still = {
  blur: 0.5,
  noise: 0,
  vignette: 0,
  slope: 0,
  warmth: 0,
  contrast: 0,
  arrows: [],
  line: 0.001,
  lineBetween: false,
  seed: 1,
};
const levelAt = ({ data, width }: Pixels, x: number, y: number) => [0, 1, 2, 3].map((k) => data[4 * (y * width + x) + k] ?? -1);
const grey = (levels: readonly number[], width: number): Pixels => ({
  data: Uint8Array.from(levels),
  width,
  height: levels.length / width,
});

describe('A straightened picture', () => {
  const photo = drawPhoto({ face: face('80'), holes: [], view, width: 700, ...still });
  const straight = finished(straightened(photo, photo.homography, 0.5, 400));

  it('has the colours of the face where the face has them, whatever side the picture was taken from', () => {
    // Half way through a zone at eight hours of the clock; the rule book's colours, told by their strongest and weakest part.
    const zones: [radius: number, isSo: (r: number, g: number, b: number) => boolean][] = [
      [0.06, (r, g, b) => r > 200 && g > 180 && b < 100],
      [0.14, (r, g, b) => r > 180 && g < 100 && b < 100],
      [0.22, (r, _, b) => b > r + 40],
      [0.3, (r, g, b) => Math.max(r, g, b) < 90],
      [0.38, (r, g, b) => Math.min(r, g, b) > 180],
    ];
    expect(straight.width).toBe(400);
    for (const [radius, isSo] of zones) {
      for (let hour = 0; hour < 8; hour++) {
        const [x, y] = [radius * Math.cos((hour * Math.PI) / 4), radius * Math.sin((hour * Math.PI) / 4)];
        const [r = 0, g = 0, b = 0] = levelAt(straight, Math.floor(200 + 400 * x), Math.floor(200 - 400 * y));
        expect(isSo(r, g, b), `zone at ${radius} m, hour ${hour}: ${r} ${g} ${b}`).toBe(true);
      }
    }
  });

  it('is the picture itself under the homography that changes nothing, and clear where the picture does not reach', () => {
    const picture = grey([10, 20, 30, 40], 2);
    const same = finished(straightened(picture, [0.5, 0, 0.5, 0, -0.5, 0.5, 0, 0, 1], 1, 1));
    expect(levelAt(same, 0, 0)).toEqual([10, 10, 10, 255]);
    expect(levelAt(same, 1, 1)).toEqual([40, 40, 40, 255]);
    const away = finished(straightened(picture, [0.5, 0, 2.5, 0, -0.5, 0.5, 0, 0, 1], 1, 1));
    expect(levelAt(away, 0, 0)).toEqual([0, 0, 0, 0]);
  });

  it('is no larger than memory allows', () => {
    expect(() => finished(straightened(photo, photo.homography, 0.5, 20_000))).toThrow(RangeError);
  });
});

describe('A picture made smaller', () => {
  it('holds the mean of the pixels that each of its own stands for', () => {
    const small = finished(smaller(grey([0, 20, 100, 100, 40, 60, 100, 100], 4), 2));
    expect([small.width, small.height]).toEqual([2, 1]);
    expect(levelAt(small, 0, 0)).toEqual([30, 30, 30, 255]);
    expect(levelAt(small, 1, 0)).toEqual([100, 100, 100, 255]);
  });

  it('is the same when it is small enough, and never larger than wanted', () => {
    const colours: Pixels = { data: new Uint8Array(48), width: 4, height: 3 };
    expect(finished(smaller(colours, 4))).toBe(colours);
    for (const most of [1, 2, 3]) expect(finished(smaller(colours, most)).width).toBeLessThanOrEqual(most);
  });
});

describe('The light behind a level', () => {
  it('is that of the sRGB curve: level 188 is half the light, 118 the 18 % of a grey card (iec-61966-2-1; from memory)', () => {
    const lightOf = (level: number) => {
      const into = [0, 0, 0];
      lightAt({ data: new Uint8Array(16).fill(level), width: 2, height: 2 }, 1, 1, into, 0);
      return into[0] ?? 0;
    };
    expect(lightOf(188)).toBeCloseTo(0.503, 3);
    expect(lightOf(118)).toBeCloseTo(0.181, 3);
    expect(lightOf(255)).toBe(1);
  });

  it('is half way between two pixels when the place is', () => {
    const data = new Uint8Array(8).fill(0).fill(255, 4);
    const into = [0, 0, 0];
    expect(lightAt({ data, width: 2, height: 1 }, 1, 0.5, into, 0)).toBe(true);
    expect(into).toEqual([0.5, 0.5, 0.5]);
    expect(lightAt({ data, width: 2, height: 1 }, 2, 0.5, into, 0)).toBe(false);
  });
});
