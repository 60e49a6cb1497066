import type { Point } from '../group/points.ts';
import { lookOf } from './colours.ts';
import type { Pixels } from './pixels.ts';
import type { Steps } from './steps.ts';

/** Pixels that hang together and look gold. */
export interface GoldSpot {
  /** Mean of its pixels' places [pixels]. */
  readonly middle: Point;
  /** In pixels. */
  readonly area: number;
}

const STRIP = 64;
/** Fewer pixels than this are noise. */
const LEAST = 6;
/** More spots than these are straw and leaves. */
const MOST_SPOTS = 24;

/**
 * Where a picture is gold.
 *
 * @equation pixels that look gold, gathered with their four neighbours
 * @param pixels - a small picture with colours [record]
 * @returns steps to the spots, the largest first, at most 24 [list]
 * @validity straw and leaves may be among them: what lies round a spot tells
 * @source common practice
 * @example goldSpots({ data: Uint8Array.from({ length: 64 }, (_, i) => [250, 220, 60, 255][i % 4]), width: 4, height: 4 }).next().value[0].area // 16
 */
export function* goldSpots({ data, width, height }: Pixels): Steps<GoldSpot[]> {
  const gold = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) {
    if (j % STRIP === 0 && j > 0) yield { share: (0.7 * j) / height, doing: 'Looking for the gold' };
    for (let i = 0; i < width; i++) {
      const at = 4 * (j * width + i);
      if (lookOf(data[at] as number, data[at + 1] as number, data[at + 2] as number) === 'gold') gold[j * width + i] = 1;
    }
  }
  const spots: GoldSpot[] = [];
  const open: number[] = [];
  for (let seed = 0; seed < gold.length; seed++) {
    if (gold[seed] !== 1) continue;
    let [area, x, y] = [0, 0, 0];
    gold[seed] = 0;
    open.push(seed);
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      const i = at % width;
      area++;
      x += i + 0.5;
      y += (at - i) / width + 0.5;
      for (const next of [i > 0 ? at - 1 : -1, i < width - 1 ? at + 1 : -1, at - width, at + width]) {
        if (gold[next] !== 1) continue;
        gold[next] = 0;
        open.push(next);
      }
    }
    if (area >= LEAST) spots.push({ middle: { x: x / area, y: y / area }, area });
  }
  return spots.sort((a, b) => b.area - a.area).slice(0, MOST_SPOTS);
}
