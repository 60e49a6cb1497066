import type { FaceColour } from '../group/faces.ts';

/** What a patch of a picture may be, by its colour alone; whether a grey one is black or white, its neighbour tells. */
export type Look = 'gold' | 'red' | 'blue' | 'grey';

/** Hues in degrees from red over yellow, wide enough for warm lamps and for shade (from memory). */
const hues: readonly (readonly [from: number, to: number, look: Look, least: number])[] = [
  [33, 76, 'gold', 0.42],
  [-40, 27, 'red', 0.38],
  [158, 262, 'blue', 0.33],
];

/**
 * What a colour may be on a face.
 *
 * @equation hue and saturation (max - min)/max of the levels: neither changes with the amount of light
 * @param red - level of red, in any unit common to all three [-]
 * @param green - level of green [-]
 * @param blue - level of blue [-]
 * @returns gold, red or blue, grey when there is little colour, or null for a colour that no face has [choice]
 * @validity levels as pictures hold them, not amounts of light
 * @source common practice, from memory
 * @example lookOf(250, 220, 60) // "gold"
 */
export function lookOf(red: number, green: number, blue: number): Look | null {
  const most = Math.max(red, green, blue);
  const range = most - Math.min(red, green, blue);
  if (!(most > 0) || range < 0.2 * most) return 'grey';
  const sixth = most === red ? (green - blue) / range : most === green ? 2 + (blue - red) / range : 4 + (red - green) / range;
  const hue = 60 * sixth;
  for (const [from, to, look, least] of hues) {
    const near = hue > 300 ? hue - 360 : hue;
    if (near >= from && near <= to) return range >= least * most ? look : range < 0.35 * most ? 'grey' : null;
  }
  return range < 0.35 * most ? 'grey' : null;
}

type Light = readonly [red: number, green: number, blue: number];
/** Ink's own share of light against the brighter side, at most: black beside white or blue. */
const DARK = 0.55;

/**
 * Whether two patches side by side look like two zones of a face.
 *
 * @equation the coloured sides by their hue; black gives less than 0.55 of the light beside it, white more than its neighbour
 * @param inside - light of the inner patch, red, green and blue [list]
 * @param outside - light of the outer patch [list]
 * @param colours - the two colours that the face has there [list]
 * @returns whether they may be that [choice]
 * @validity any light that falls on both alike
 * @source common practice, from memory
 * @example looksLike([0.9, 0.7, 0.05], [0.7, 0.05, 0.06], ['gold', 'red']) // true
 */
export function looksLike(inside: Light, outside: Light, colours: readonly [inner: FaceColour, outer: FaceColour]): boolean {
  const sum = ([r, g, b]: Light) => r + g + b;
  const fits = (patch: Light, colour: FaceColour, other: Light): boolean => {
    const look = lookOf(...(patch.map((value) => Math.max(0, value) ** (1 / 2.2)) as unknown as Light));
    if (colour === 'black') return sum(patch) < DARK * sum(other);
    if (colour === 'white') return look !== 'blue' && look !== 'red' && sum(patch) > 1.15 * sum(other);
    return look === colour;
  };
  return fits(inside, colours[0], outside) && fits(outside, colours[1], inside);
}
