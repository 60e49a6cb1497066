import type { Face, Point } from '../../../core/group/index.ts';
import { together } from '../../../core/model/sentence.ts';
import { boxAround, placeLabel, type Box } from '../boxes.ts';
import { toPixel, type FaceView } from '../face/geometry.ts';
import { faceMarks, type FaceMarks } from '../face/marks.ts';
import { textWidth } from '../textWidth.ts';

export interface LandingData {
  readonly face: Face;
  /** Where the middle of the group lies, from that of the face [m], and where it may lie. */
  readonly centre: Point;
  readonly low: Point;
  readonly high: Point;
  /** One standard deviation across and up [m]. */
  readonly spread: readonly [number, number];
  /** "48 cm low", "12 cm left"; none where it lies on the middle. */
  readonly names: readonly string[];
}

export interface LandingMarks {
  readonly view: FaceView;
  readonly face: FaceMarks;
  /** Too small for lines between its rings. */
  readonly small: boolean;
  /** Half axes of the oval that holds 95 % of the arrows [px]. */
  readonly oval: { readonly at: Point; readonly rx: number; readonly ry: number };
  /** From the middle of the face to that of the group, or to the edge of the window; null where they all but meet. */
  readonly shift: readonly [from: Point, to: Point] | null;
  /** The band of the centre as bars with ends, across and up [px]; null where it is finer than can be drawn. */
  readonly bars: { readonly across: readonly [Point, Point] | null; readonly up: readonly [Point, Point] | null };
  readonly labels: readonly { readonly text: string; readonly at: Point; readonly box: Box }[];
}

/** Of a circular or oval normal law, 95 in 100 lie within this many standard deviations. */
const HOLDS_95 = 2.4477;
/** The window shows at most so many radii of the face each way: farther off, a face would be a dot [-]. */
const MOST = 3.2;
const ROOM = 1.07;
/** A face with a smaller radius is drawn without the lines between its rings [px]. */
const SMALL = 42;
/** Shorter arrows and bars would hide under the centre's dot [px]. */
const [LEAST_SHIFT, LEAST_BAR] = [14, 7];
const NAME = 14;
const NEAR = [16, 24, 34, 48, 66, 90];
const OVAL_NAME = '95 % of arrows';

/** A square window with the face in it and, where there is room, all of where the arrows land. */
function landingView({ face, centre, spread }: LandingData, size: number): FaceView {
  const radius = face.rings[0]?.radius ?? 0.4;
  const [rx, ry] = [HOLDS_95 * spread[0], HOLDS_95 * spread[1]];
  const [left, right] = [Math.min(-radius, centre.x - rx), Math.max(radius, centre.x + rx)];
  const [low, high] = [Math.min(-radius, centre.y - ry), Math.max(radius, centre.y + ry)];
  const half = ROOM * Math.max((right - left) / 2, (high - low) / 2);
  if (half <= MOST * radius) return { middle: { x: (left + right) / 2, y: (low + high) / 2 }, half, size };
  // Off the picture: the window goes after the arrows as far as the face allows.
  const far = Math.max(Math.abs(centre.x), Math.abs(centre.y));
  const share = Math.min(1, ((MOST - ROOM) * radius) / Math.max(far, radius));
  return { middle: { x: share * centre.x, y: share * centre.y }, half: MOST * radius, size };
}

/** The face with where the group will land, in pixels; no label touches another. */
export function landingMarks(data: LandingData, size: number): LandingMarks {
  const view = landingView(data, size);
  const { face, centre, low, high, spread, names } = data;
  const k = size / (2 * view.half);
  const [from, to] = [toPixel(view, { x: 0, y: 0 }), toPixel(view, centre)];
  const oval = { at: to, rx: HOLDS_95 * spread[0] * k, ry: HOLDS_95 * spread[1] * k };
  const away = Math.hypot(to.x - from.x, to.y - from.y);
  const end = inWindow(from, to, size);
  const shift = away < LEAST_SHIFT ? null : ([from, end] as const);
  const bar = (a: Point, b: Point): readonly [Point, Point] | null => {
    const [p, q] = [toPixel(view, a), toPixel(view, b)];
    return Math.hypot(p.x - q.x, p.y - q.y) < LEAST_BAR ? null : [p, q];
  };
  const bars = {
    across: bar({ x: low.x, y: centre.y }, { x: high.x, y: centre.y }),
    up: bar({ x: centre.x, y: low.y }, { x: centre.x, y: high.y }),
  };

  const bounds: Box = { left: 3, top: 3, right: size - 3, bottom: size - 3 };
  const obstacles: Box[] = [boxAround(to, 8, 8), ...(shift === null ? [] : alongLine(...shift)), ...alongOval(oval)];
  for (const one of [bars.across, bars.up]) if (one !== null) obstacles.push(...alongLine(one[0], one[1]));
  const labels: { text: string; at: Point; box: Box }[] = [];
  const put = (text: string, anchor: Point, awayFrom: Point, distances: readonly number[]): boolean => {
    const placed = placeLabel(anchor, awayFrom, textWidth(text, NAME, 'name') + 6, 18, distances, obstacles, bounds);
    if (placed === null) return false;
    obstacles.push(placed.box);
    labels.push({ text, ...placed });
    return true;
  };
  // Where the whole of it has no room, its parts may.
  if (names.length > 0 && !put(together(names), end, from, NEAR)) for (const name of names) put(name, end, from, NEAR);
  put(OVAL_NAME, to, from, [oval.rx + 12, oval.ry + 12, oval.rx + 22, oval.ry + 22, oval.ry - 14, oval.rx - 14]);
  const marks = faceMarks(face, view, [], 0, false);
  const free = marks.figures.filter(({ at }) => !obstacles.some((box) => touchesAt(box, at)));
  return {
    view,
    face: { ...marks, figures: free },
    small: (face.rings[0]?.radius ?? 0.4) * k < SMALL,
    oval,
    shift,
    bars,
    labels,
  };
}

const touchesAt = (box: Box, at: Point): boolean =>
  box.left < at.x + 7 && at.x - 7 < box.right && box.top < at.y + 7 && at.y - 7 < box.bottom;

/** The end of an arrow that would leave the window, drawn back to its edge. */
function inWindow(from: Point, to: Point, size: number): Point {
  const [least, most] = [12, size - 12];
  const share = (start: number, end: number) =>
    end < least ? (start - least) / (start - end) : end > most ? (most - start) / (end - start) : 1;
  const part = Math.min(share(from.x, to.x), share(from.y, to.y));
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}

function alongLine(from: Point, to: Point): Box[] {
  const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 8);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const part = steps === 0 ? 0 : i / steps;
    return boxAround({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }, 5, 5);
  });
}

function alongOval({ at, rx, ry }: LandingMarks['oval']): Box[] {
  const steps = Math.max(24, Math.ceil((Math.PI * (rx + ry)) / 8));
  return Array.from({ length: steps }, (_, i) => {
    const turn = (2 * Math.PI * i) / steps;
    return boxAround({ x: at.x + rx * Math.cos(turn), y: at.y + ry * Math.sin(turn) }, 2, 2);
  });
}
