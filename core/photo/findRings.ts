import type { Face } from '../group/faces.ts';
import type { PicturePoint } from '../model/picture.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { edgesOn, type ColourChange, type RingEdge } from './edges.ts';
import { ellipseThrough, farHomography } from './ellipse.ts';
import { goldSpots } from './gold.ts';
import { fitFrom } from './markedRings.ts';
import type { FaceFit } from './faceFit.ts';
import { besideLines } from './printedLine.ts';
import { smaller, type Pixels } from './pixels.ts';
import { chained, leadingBack, type Homography } from './plane.ts';
import { rimOf, type Rim } from './rim.ts';
import type { Steps } from './steps.ts';

/** The rings of a face as a picture shows them. */
export interface FoundRings {
  readonly fit: FaceFit;
  /** Each ring where the colour changes, and the share of its round that was found [m, -]. */
  readonly rings: readonly { readonly radius: number; readonly share: number }[];
  /** The edges that were found, to be drawn over the picture. */
  readonly edges: readonly RingEdge[];
  /** What whoever looks at it should know, in sentences. */
  readonly notes: readonly string[];
}

/** Longest sides of the pictures worked on [pixels]: more shows no more of a face, less hides the gold. */
const WORKING = 1200;
const SCOUTING = 400;
/** Gold narrower than this cannot be measured [pixels of the picture worked on]. */
const LEAST_GOLD = 18;
const SPOKES = 120;
/** Of a ring's room: how far the first and the last look go on either side. */
const FIRST_LOOK = 0.8;
const LAST_LOOK = 0.65;
/** Share of a ring's round that must show. */
const LEAST_SHOWN = 0.25;
/** A change of colour wider than this share of a zone is a blur. */
const MOST_RISE = 0.6;
/** A line is believed when without it the rings fit this much better. */
const BETTER = 0.8;
/** Rings further off than this share of a zone are not this face's. */
const MOST_RESIDUAL = 0.2;

/**
 * The rings where a face changes colour, the innermost first.
 *
 * @equation outer edges of the zones whose next zone has another colour, and the outermost edge where it is not white
 * @param face - the face [record]
 * @returns radii and colours [list]
 * @validity any face of this bench
 * @source wa-rules
 * @example colourChanges({ rings: [{ points: 9, radius: 2 }, { points: 10, radius: 1 }], colourOf: () => 'gold' }).length // 1
 */
export function colourChanges(face: Pick<Face, 'rings' | 'colourOf'>): ColourChange[] {
  const inward = face.rings.toReversed();
  return inward.flatMap(({ points, radius }, i) => {
    const colour = face.colourOf(points);
    const next = inward[i + 1];
    const outer = next === undefined ? 'white' : face.colourOf(next.points);
    // Beyond the last printed ring there is paper, but nobody says how much of it.
    const room = (radius - (inward[i - 1]?.radius ?? 0)) * (next === undefined ? 0.5 : 1);
    return colour === null || outer === null || outer === colour ? [] : [{ radius, colours: [colour, outer] as const, room }];
  });
}

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

function* outward(pixels: Pixels, face: Face, startAt: (unit: number, radius: number) => Homography): Steps<Result<FoundRings>> {
  const changes = colourChanges(face);
  const unit = Math.max(...changes.map(({ radius }) => radius));
  const zone = face.diameter / 20;
  let lies = startAt(unit, changes[0]?.radius ?? unit);
  let edges: RingEdge[] = [];
  let fit: FaceFit | null = null;
  for (const [i, change] of changes.entries()) {
    yield { share: 0.6 + (0.2 * i) / changes.length, doing: 'Following the rings outward' };
    const here = edgesOn(pixels, lies, unit, change, FIRST_LOOK, SPOKES / 2);
    if (here.length < (LEAST_SHOWN * SPOKES) / 2) return notThere(change, i, edges, zone);
    edges = [...edges, ...here];
    if (i === 0) {
      const ellipse = ellipseThrough(here.map(({ picture }) => picture));
      if (ellipse !== null) lies = farHomography(ellipse, change.radius / unit);
      continue;
    }
    const fitted = fitFrom(lies, edges, unit, true);
    if (!fitted.ok) return fitted;
    fit = fitted.value;
    lies = towardsFace(fit);
  }
  for (let round = 0; round < 2; round++) {
    yield { share: 0.8 + 0.06 * round, doing: 'Fitting all rings at once' };
    edges = changes.flatMap((change) => edgesOn(pixels, lies, unit, change, LAST_LOOK, SPOKES));
    const fitted = fitFrom(lies, edges, unit, true);
    if (!fitted.ok) return fitted;
    fit = fitted.value;
    lies = towardsFace(fit);
  }
  if (fit !== null) {
    yield { share: 0.92, doing: 'Looking for printed lines' };
    const moved = besideLines(pixels, lies, unit, changes, edges, LAST_LOOK);
    const fitted = fitFrom(lies, moved, unit, true);
    // A line that is there bends the rings against one another, and taking it away sets them right; one that is not there does nothing of the kind.
    if (fitted.ok && fitted.value.residual < BETTER * fit.residual) [fit, edges] = [fitted.value, moved];
  }
  return fit === null
    ? refuse('no-rings', 'Fewer than two rings were found: mark them yourself.')
    : judged(fit, edges, changes, zone);
}

const towardsFace = (fit: FaceFit): Homography =>
  chained([1 / fit.unit, 0, 0, 0, 1 / fit.unit, 0, 0, 0, 1], leadingBack(fit.homography));

/** The middle one of the rises: how wide a change of colour is in the picture [m]. */
const riseOf = (edges: readonly RingEdge[]): number =>
  edges.map(({ rise }) => rise).sort((a, b) => a - b)[Math.floor(edges.length / 2)] ?? 0;

const BLURRED =
  'The picture is too blurred for its rings to be measured. Take it again with a steady hand, or mark the rings yourself.';

function notThere({ colours }: ColourChange, index: number, edges: readonly RingEdge[], zone: number): Result<FoundRings> {
  if (riseOf(edges) > MOST_RISE * zone || index === 0) return refuse('rings-blurred', BLURRED);
  const [inner, outer] = colours;
  const sentence = `After the ${inner} no ${outer} was found where this face has it. Check which face hangs there, or take the whole of it into the picture.`;
  return refuse('other-face', sentence);
}

function judged(fit: FaceFit, edges: readonly RingEdge[], changes: readonly ColourChange[], zone: number): Result<FoundRings> {
  if (riseOf(edges) > MOST_RISE * zone) return refuse('rings-blurred', BLURRED);
  if (fit.residual > MOST_RESIDUAL * zone) {
    const sentence = `The rings found lie ${(1000 * fit.residual).toFixed(0)} mm off those of this face. Check which face hangs there, or mark the rings yourself.`;
    return refuse('other-face', sentence);
  }
  const rings = changes.map(({ radius }) => ({
    radius,
    share: edges.filter((edge) => edge.radius === radius).length / SPOKES,
  }));
  const hidden = rings.some(({ share }) => share < 0.5)
    ? ['Less than half of one ring was found: see that the lines drawn over the picture lie on the rings.']
    : [];
  const up =
    'Up is where the picture has it; the face itself does not tell. Mark a point straight above the centre if the camera was not level.';
  return ok({ fit, rings, edges, notes: [...hidden, up] });
}
