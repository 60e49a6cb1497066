import type { Ellipse, Face, GroupMeasures, Point } from '../../../core/group/index.ts';
import { counted, type Shot } from '../../../core/model/group.ts';
import { boxAround, placeLabel, touches, type Box } from '../boxes.ts';
import { MOST_DRAWN } from '../dots.ts';
import { faceDots, isEarlier, type FaceDots } from './faceDots.ts';
import { scaleOf, toPixel, type FaceView } from './geometry.ts';

/** A group ready to be drawn. The first is drawn as discs, the second as open diamonds. */
export interface DrawnGroup {
  readonly name: string;
  readonly shots: readonly Shot[];
  readonly measures: GroupMeasures | null;
  /** The end in hand; shots of earlier ones are drawn lighter. Without it all are alike. */
  readonly endInHand?: number;
  /** The oval that holds half of many such shots; drawn where it is asked for. */
  readonly oval?: Ellipse | null;
  /** Further circles about the centre, each with its name. */
  readonly circles?: readonly { readonly name: string; readonly radius: number }[];
}

export interface FaceMarks {
  readonly rings: readonly {
    readonly radius: number;
    readonly colour: string;
    readonly onBlack: boolean;
    readonly points: number;
  }[];
  /** Ring numbers that there is room for, down the middle of the face. */
  readonly figures: readonly { readonly points: number; readonly at: Point; readonly colour: string }[];
  readonly innerTen: number;
  readonly centre: Point;
  readonly shotRadius: number;
  readonly groups: readonly GroupMarks[];
  readonly shift: { readonly from: Point; readonly to: Point; readonly angle: number } | null;
}

export interface GroupMarks {
  readonly name: string;
  /** Too many shots to name: drawn as paths of dots. */
  readonly dots: FaceDots | null;
  /** Those of them that somebody left out: a cross each. */
  readonly outDots: string | null;
  readonly shots: readonly {
    readonly id: number;
    readonly at: Point;
    /** Left out of the figures: drawn hollow and crossed. */
    readonly out: boolean;
    /** Of an end before the one in hand: drawn lighter. */
    readonly earlier: boolean;
    /** The arrow's number, whether or not there is room for it. */
    readonly number: string | null;
    /** What stands beside it; null where nothing is said or there is no room. */
    readonly label: { readonly at: Point; readonly text: string } | null;
  }[];
  readonly circle: { readonly at: Point; readonly radius: number } | null;
  /** Half axes [px], and the turn of the long one on screen [degrees]. */
  readonly oval: { readonly at: Point; readonly long: number; readonly short: number; readonly turn: number } | null;
  readonly rings: readonly {
    readonly at: Point;
    readonly radius: number;
    readonly name: string;
    readonly nameAt: Point | null;
  }[];
  readonly nameAt: Point | null;
}

/** A line is kept clear by boxes no farther apart than this [px]. */
const STEP = 8;

/** Beyond this many shots a number beside each could not be read [count]. */
const MOST_NAMED = 40;

/** A shot true to the shaft, but large enough to be seen: very many together are smaller [px]. */
export const shotRadius = (view: FaceView, counts: readonly number[], shaftRadius: number): number =>
  Math.max(counts.some((count) => count > MOST_DRAWN) ? 1.5 : 5, shaftRadius * scaleOf(view));

/**
 * What stands on the face, in pixels: rings, shots true to the shaft but never under 5 px, circles of the centres, the shift, and labels
 * that touch nothing.
 */
export function faceMarks(
  face: Face,
  view: FaceView,
  groups: readonly DrawnGroup[],
  shaftRadius: number,
  showShift: boolean,
): FaceMarks {
  const k = scaleOf(view);
  const radius = shotRadius(
    view,
    groups.map((group) => group.shots.length),
    shaftRadius,
  );
  const bounds: Box = { left: 2, top: 2, right: view.size - 2, bottom: view.size - 2 };
  const obstacles: Box[] = [];
  for (const group of groups) {
    if (group.shots.length <= MOST_DRAWN) {
      for (const shot of group.shots) obstacles.push(boxAround(toPixel(view, shot), radius + 2, radius + 2));
    }
    if (group.measures !== null) {
      const at = toPixel(view, group.measures.centre);
      const radius = group.measures.centreRadius * k;
      obstacles.push(boxAround(at, 6, 6));
      for (let turn = 0; turn < 2 * Math.PI; turn += 0.12) {
        obstacles.push(boxAround({ x: at.x + radius * Math.cos(turn), y: at.y + radius * Math.sin(turn) }, 1.5, 1.5));
      }
    }
  }
  const shift = showShift ? shiftMarks(view, groups) : null;
  if (shift !== null) {
    const steps = Math.ceil(Math.hypot(shift.to.x - shift.from.x, shift.to.y - shift.from.y) / STEP);
    for (let step = 0; step <= steps; step++) {
      const part = step / steps;
      const at = { x: shift.from.x + part * (shift.to.x - shift.from.x), y: shift.from.y + part * (shift.to.y - shift.from.y) };
      obstacles.push(boxAround(at, 5, 5));
    }
  }
  // The names of the groups matter most, so they choose first.
  const names = groups.map((group) => nameOf(group, view, obstacles, bounds));
  const drawn = groups.map((group, i) => groupMarks(group, view, radius, obstacles, bounds, names[i] ?? null));
  return {
    figures: figuresOf(face, view, obstacles, bounds),
    rings: face.rings.map((ring) => ({
      radius: ring.radius * k,
      colour: face.colourOf(ring.points) ?? 'white',
      onBlack: face.colourOf(ring.points) === 'black' && ring.points !== face.rings[0]?.points,
      points: ring.points,
    })),
    innerTen: face.innerTen * k,
    centre: toPixel(view, { x: 0, y: 0 }),
    shotRadius: radius,
    groups: drawn,
    shift,
  };
}

/** A ring's number stands in the middle of its band below the centre, where nothing else is in the way. */
function figuresOf(face: Face, view: FaceView, obstacles: readonly Box[], bounds: Box): FaceMarks['figures'] {
  const k = scaleOf(view);
  const middle = toPixel(view, { x: 0, y: 0 });
  return face.rings.flatMap((ring, i) => {
    const inner = face.rings[i + 1]?.radius ?? 0;
    const at = { x: middle.x, y: middle.y + ((ring.radius + inner) / 2) * k };
    const box = boxAround(at, 7, 7);
    const room = (ring.radius - inner) * k > 17 && box.bottom < bounds.bottom;
    return room && !obstacles.some((obstacle) => touches(box, obstacle))
      ? [{ points: ring.points, at, colour: face.colourOf(ring.points) ?? 'white' }]
      : [];
  });
}

function shiftMarks(view: FaceView, groups: readonly DrawnGroup[]): FaceMarks['shift'] {
  const [first, second] = groups;
  if (first?.measures == null || second?.measures == null) return null;
  const from = toPixel(view, first.measures.centre);
  const to = toPixel(view, second.measures.centre);
  if (Math.hypot(to.x - from.x, to.y - from.y) < 14) return null;
  return { from, to, angle: Math.atan2(to.y - from.y, to.x - from.x) };
}

function nameOf(group: DrawnGroup, view: FaceView, obstacles: Box[], bounds: Box): Point | null {
  if (group.measures === null) return null;
  const at = toPixel(view, group.measures.centre);
  const radius = Math.max(group.measures.centreRadius * scaleOf(view), 14);
  // Below and outward first: the upper corners belong to the whole-face key and the loupe.
  const side = { x: at.x + (at.x < view.size / 2 ? 1 : -1), y: at.y - 1 };
  const width = group.name.length * 6.6 + 6;
  const placed = placeLabel(at, side, width, 16, [radius + 10, radius + 22, radius + 40, radius + 60], obstacles, bounds);
  if (placed === null) return null;
  obstacles.push(placed.box);
  return placed.at;
}

function groupMarks(
  group: DrawnGroup,
  view: FaceView,
  radius: number,
  obstacles: Box[],
  bounds: Box,
  nameAt: Point | null,
): GroupMarks {
  const circle =
    group.measures === null
      ? null
      : { at: toPixel(view, group.measures.centre), radius: group.measures.centreRadius * scaleOf(view) };
  const about = { circle, oval: ovalOf(group, view), rings: ringsOf(group, view, obstacles, bounds), nameAt };
  if (group.shots.length > MOST_DRAWN) {
    const kept = counted(group);
    const out = kept.length === group.shots.length ? [] : group.shots.filter(({ leftOut }) => leftOut !== null);
    const outDots = out.length === 0 ? null : out.map((shot) => crossPath(toPixel(view, shot))).join('');
    return { name: group.name, dots: faceDots(view, kept, group.endInHand), outDots, shots: [], ...about };
  }
  const middle = toPixel(view, group.measures?.centre ?? { x: 0, y: 0 });
  const shots = group.shots.map((shot) => {
    const at = toPixel(view, shot);
    const out = shot.leftOut !== null;
    const earlier = isEarlier(shot, group.endInHand);
    const written = shot.arrow === null ? null : String(shot.arrow);
    const number = group.shots.length > MOST_NAMED ? null : written;
    // The word goes before the number: that it is out matters more than which it was.
    const texts = out ? [number === null ? OUT : `${number} ${OUT}`, OUT, 'out'] : number === null ? [] : [number];
    for (const text of texts) {
      const placed = placeLabel(at, middle, labelWidth(text), 14, [radius + 9, radius + 13, radius + 19], obstacles, bounds);
      if (placed === null) continue;
      obstacles.push(placed.box);
      return { id: shot.id, at, out, earlier, number: written, label: { at: placed.at, text } };
    }
    return { id: shot.id, at, out, earlier, number: written, label: null };
  });
  return { name: group.name, dots: null, outDots: null, shots, ...about };
}

const OUT = 'left out';

/** Room for a label beside a shot [px]. */
const labelWidth = (text: string): number => text.length * (/[a-z]/.test(text) ? 7 : 8) + 2;

const crossPath = ({ x, y }: Point): string => `M${(x - 3).toFixed(1)} ${(y - 3).toFixed(1)}l6 6m0 -6l-6 6`;

function ovalOf(group: DrawnGroup, view: FaceView): GroupMarks['oval'] {
  if (group.measures === null || group.oval === null || group.oval === undefined) return null;
  const k = scaleOf(view);
  const { long, short, direction } = group.oval;
  return { at: toPixel(view, group.measures.centre), long: long * k, short: short * k, turn: (-direction * 180) / Math.PI };
}

/** A circle's name stands on its edge, where nothing else is in the way. */
function ringsOf(group: DrawnGroup, view: FaceView, obstacles: Box[], bounds: Box): GroupMarks['rings'] {
  if (group.measures === null) return [];
  const at = toPixel(view, group.measures.centre);
  return (group.circles ?? []).map(({ name, radius }) => {
    const reach = radius * scaleOf(view);
    const placed = placeLabel(at, { x: at.x, y: at.y - 1 }, labelWidth(name), 16, [reach + 10, reach - 10], obstacles, bounds);
    if (placed !== null) obstacles.push(placed.box);
    return { at, radius: reach, name, nameAt: placed?.at ?? null };
  });
}
