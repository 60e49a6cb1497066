import type { Face } from '../group/faces.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import { colourChanges } from './colourChanges.ts';
import { edgesOn, type ColourChange, type RingEdge } from './edges.ts';
import { ellipseThrough, farHomography } from './ellipse.ts';
import type { FaceFit } from './faceFit.ts';
import { fitFrom } from './markedRings.ts';
import { smaller, type Pixels } from './pixels.ts';
import { chained, leadingBack, type Homography } from './plane.ts';
import { besideLines } from './printedLine.ts';
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

/** Longest side of the picture worked on [pixels]: more shows no more of a face. */
export const WORKING = 1200;
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
 * The rings of a face followed outward from its gold, and then fitted all at once.
 *
 * @equation as rings found without help, from a first idea of the innermost ring
 * @param pixels - the picture, with colours [record]
 * @param face - the face that hangs there [record]
 * @param startAt - gives how the face lies, from the picture [widths] to the face in units, for the unit and the innermost radius that it is told [function]
 * @returns steps to the rings, or to a refusal [record]
 * @validity as rings found without help
 * @source kanatani-2016, wa-rules, own derivation
 * @example outward({ data: new Uint8Array(16), width: 2, height: 2 }, face('40'), () => [1, 0, 0, 0, 1, 0, 0, 0, 1]).next().value.doing // "Following the rings outward"
 */
export function* outward(
  pixels: Pixels,
  face: Face,
  startAt: (unit: number, radius: number) => Homography,
): Steps<Result<FoundRings>> {
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
  if (fit === null) return refuse('no-rings', 'Fewer than two rings were found: mark them yourself.');
  return yield* allAtOnce(pixels, changes, zone, fit);
}

/**
 * The rings of a face sought again where a fit has them, as after marking a few by hand.
 *
 * @equation edges along 120 spokes of every ring where the colour changes, all fitted at once
 * @param pixels - the picture, with colours [record]
 * @param face - the face that hangs there [record]
 * @param fit - how it lies by the marks [record]
 * @returns steps to the rings, upright as the picture stands, or to a refusal: `rings-not-fixed`, `rings-blurred`, `other-face` [record]
 * @validity marks within a third of a zone
 * @source kanatani-2016, wa-rules, own derivation
 * @example ringsAgain({ data: new Uint8Array(16), width: 2, height: 2 }, face('40'), { homography: [1, 0, 0.5, 0, -1, 0.5, 0, 0, 1] }).next().value.doing // "Fitting all rings at once"
 */
export function* ringsAgain(pixels: Pixels, face: Face, fit: FaceFit): Steps<Result<FoundRings>> {
  return yield* allAtOnce(yield* smaller(pixels, WORKING), colourChanges(face), face.diameter / 20, fit);
}

function* allAtOnce(pixels: Pixels, changes: readonly ColourChange[], zone: number, first: FaceFit): Steps<Result<FoundRings>> {
  const unit = Math.max(...changes.map(({ radius }) => radius));
  let lies = chained([1 / unit, 0, 0, 0, 1 / unit, 0, 0, 0, 1], leadingBack(first.homography));
  let fit = first;
  let edges: RingEdge[] = [];
  for (let round = 0; round < 2; round++) {
    yield { share: 0.8 + 0.06 * round, doing: 'Fitting all rings at once' };
    edges = changes.flatMap((change) => edgesOn(pixels, lies, unit, change, LAST_LOOK, SPOKES));
    const fitted = fitFrom(lies, edges, unit, true);
    if (!fitted.ok) return fitted;
    fit = fitted.value;
    lies = towardsFace(fit);
  }
  yield { share: 0.92, doing: 'Looking for printed lines' };
  const beside = besideLines(pixels, lies, unit, changes, edges, LAST_LOOK);
  const fitted = fitFrom(lies, beside, unit, true);
  // A line that is there bends the rings against one another, and taking it away sets them right; one that is not there does nothing of the kind.
  return fitted.ok && fitted.value.residual < BETTER * fit.residual
    ? judged(fitted.value, beside, changes, zone)
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
