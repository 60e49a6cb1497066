import type { Face } from '../group/faces.ts';
import type { PicturePoint } from '../model/picture.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { farHomography } from './ellipse.ts';
import { goldSpots } from './gold.ts';
import { outward, WORKING, type FoundRings } from './outward.ts';
import { smaller, type Pixels } from './pixels.ts';
import { chained } from './plane.ts';
import { rimOf, type Rim } from './rim.ts';
import type { Steps } from './steps.ts';

/** Longest side of the picture in which gold is looked for [pixels]: less would hide it. */
const SCOUTING = 400;
/** Gold narrower than this cannot be measured [pixels of the picture worked on]. */
const LEAST_GOLD = 18;
/**
 * The rings of a face, found in a picture without help, upright as the picture stands.
 *
 * @equation the gold that red rings; from its ellipse the next ring outward and so on, each refining how the face lies; then all rings at once
 * @param pixels - the picture, with colours or in grey [record]
 * @param face - the face that hangs there [record]
 * @param near - where its gold is, in widths of the picture; without it the one nearest the middle among the large ones [record]
 * @returns steps to the rings, or to a refusal: `no-gold`, `no-rings`, `rings-small`, `rings-blurred`, `other-face` [record]
 * @validity worked on at 1200 pixels at most; arrows, holes and shadows may hide up to three quarters of a ring
 * @source fischler-bolles-1981, kanatani-2016, wa-rules, own derivation
 * @example findRings({ data: new Uint8Array(16), width: 2, height: 2 }, { id: '40' }).next().value.problem.code // "no-gold"
 */
export function* findRings(pixels: Pixels, face: Face, near?: PicturePoint): Steps<Result<FoundRings>> {
  const working = yield* smaller(pixels, WORKING);
  const scouting = yield* smaller(working, SCOUTING);
  const spots = yield* goldSpots(scouting);
  if (spots.length === 0) {
    const sentence = 'No gold was found in the picture. Take it in better light and in colour, or mark the rings yourself.';
    return refuse('no-gold', sentence);
  }
  const rims: Rim[] = [];
  for (const [i, spot] of spots.entries()) {
    yield { share: 0.3 + (0.3 * i) / spots.length, doing: 'Looking for red round the gold' };
    const rim = rimOf(scouting, spot);
    if (rim !== null && !rims.some((other) => isSame(other, rim))) rims.push(rim);
  }
  const { width, height } = scouting;
  const chosen = choose(
    rims,
    near ? { x: near.x * width, y: near.y * width } : { x: width / 2, y: height / 2 },
    near !== undefined,
  );
  if (chosen === undefined) {
    const sentence =
      'No gold with red round it was found in the picture. Take it nearer and more from the front, or mark the rings yourself.';
    return refuse('no-rings', sentence);
  }
  const wide = (2 * chosen.ellipse.short * working.width) / width;
  if (wide < LEAST_GOLD) {
    const sentence = `The gold is only ${Math.round(wide)} pixels wide; at least ${LEAST_GOLD} are needed. Take the picture from nearer.`;
    return refuse('rings-small', sentence);
  }
  const toWidths = [width, 0, 0, 0, width, 0, 0, 0, 1];
  const found = yield* outward(working, face, (unit, radius) => chained(farHomography(chosen.ellipse, radius / unit), toWidths));
  if (!found.ok) return found;
  const others = rims.filter((rim) => rim !== chosen && rim.ellipse.long > 0.5 * chosen.ellipse.long).length;
  const golds =
    others > 0 ? [`${others + 1} golds are in the picture; the one read is drawn over it. Click another to read that.`] : [];
  return ok({ ...found.value, notes: [...golds, ...found.value.notes] });
}

const isSame = (a: Rim, b: Rim): boolean =>
  Math.hypot(a.ellipse.centre.x - b.ellipse.centre.x, a.ellipse.centre.y - b.ellipse.centre.y) < a.ellipse.short;

function choose(rims: readonly Rim[], at: { x: number; y: number }, pointed: boolean): Rim | undefined {
  const largest = Math.max(...rims.map(({ ellipse }) => ellipse.long));
  const away = ({ ellipse: { centre } }: Rim) => Math.hypot(centre.x - at.x, centre.y - at.y);
  return rims.filter(({ ellipse }) => pointed || ellipse.long > 0.5 * largest).sort((a, b) => away(a) - away(b))[0];
}
