import type { Point } from '../group/points.ts';
import { lookOf } from './colours.ts';
import { ellipseThrough, farHomography, type PlaneEllipse } from './ellipse.ts';
import type { GoldSpot } from './gold.ts';
import type { Pixels } from './pixels.ts';
import { through } from './plane.ts';

/** The edge of a gold that is ringed by red. */
export interface Rim {
  readonly ellipse: PlaneEllipse;
  /** Share of the directions in which gold is followed by red on that ellipse. */
  readonly share: number;
}

const RAYS = 96;
/** Pixels of red in a row that make a zone, and how far behind it the gold may end: a printed line and a blur lie between. */
const RUN = 2;
const GAP = 4;
const TRIES = 120;
/** Of the ellipse's own size, or a pixel. */
const NEAR = 0.06;
/** A face seen flatter than this cannot be measured. */
const FLATTEST = 0.3;

/**
 * The ellipse where a gold ends and red begins.
 *
 * @equation along 96 rays the last gold before the first run of red; the ellipse through six of them on which most lie, of 120 draws, then through all that lie on it
 * @param pixels - a small picture with colours [record]
 * @param spot - the gold [record]
 * @returns the rim, or null when no red rings it [record]
 * @validity arrows and holes may hide up to half of it
 * @source fischler-bolles-1981, halir-flusser-1998
 * @example rimOf({ data: new Uint8Array(16), width: 2, height: 2 }, { middle: { x: 1, y: 1 }, area: 1 }) // null
 */
export function rimOf(pixels: Pixels, spot: GoldSpot): Rim | null {
  const reach = 4 * Math.sqrt(spot.area) + 12;
  const edges: Point[] = [];
  for (let ray = 0; ray < RAYS; ray++) {
    const edge = edgeAlong(pixels, spot.middle, (2 * Math.PI * ray) / RAYS, reach);
    if (edge !== null) edges.push(edge);
  }
  if (edges.length < RAYS / 4) return null;
  const draw = drawing(edges.length);
  let best: readonly Point[] = [];
  for (let attempt = 0; attempt < TRIES && best.length < 0.95 * edges.length; attempt++) {
    const ellipse = ellipseThrough(Array.from({ length: 6 }, () => edges[draw()] ?? spot.middle));
    const near = ellipse === null ? [] : edges.filter((edge) => isNear(ellipse, edge));
    if (near.length > best.length) best = near;
  }
  let ellipse = ellipseThrough(best);
  if (ellipse !== null) ellipse = ellipseThrough(edges.filter((edge) => ellipse !== null && isNear(ellipse, edge)));
  if (ellipse === null || ellipse.short < FLATTEST * ellipse.long) return null;
  const rim = ellipse;
  const share = edges.filter((edge) => isNear(rim, edge)).length / RAYS;
  return share >= 0.25 ? { ellipse: rim, share } : null;
}

function edgeAlong({ data, width, height }: Pixels, from: Point, angle: number, reach: number): Point | null {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  let [gold, reds] = [-1, 0];
  for (let far = 0; far < reach; far += 0.5) {
    const [i, j] = [Math.floor(from.x + far * dx), Math.floor(from.y + far * dy)];
    if (i < 0 || j < 0 || i >= width || j >= height) return null;
    const at = 4 * (j * width + i);
    const look = lookOf(data[at] as number, data[at + 1] as number, data[at + 2] as number);
    if (look === 'gold') [gold, reds] = [far, 0];
    else if (look !== 'red') reds = 0;
    else if (gold >= 0 && ++reds > 2 * RUN) {
      const red = far - RUN;
      const middle = (gold + red) / 2;
      return red - gold <= GAP ? { x: from.x + middle * dx, y: from.y + middle * dy } : null;
    }
  }
  return null;
}

function isNear(ellipse: PlaneEllipse, edge: Point): boolean {
  if (ellipse.short < FLATTEST * ellipse.long) return false;
  const { x, y } = through(farHomography(ellipse, 1), edge);
  return Math.abs(Math.hypot(x, y) - 1) < Math.max(NEAR, 1 / ellipse.short);
}

/** Places in a list, drawn by a fixed rule: the same picture gives the same answer each time. */
function drawing(count: number): () => number {
  let state = 0x2545f491;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * count);
  };
}
