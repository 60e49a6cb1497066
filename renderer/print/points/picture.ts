import { goldAboveGround } from '../../../core/aim/index.ts';
import type { Face } from '../../../core/group/index.ts';
import type { XmlNode } from '../../export/xml.ts';
import { arrowhead, dot, filled, path, ring, stroke, weights } from '../ink.ts';

/** A butt is at least this wide and high, and its middle is the face's [m]: World Archery rule book. */
const BUTT = 1.24;
/** The tip of the arrow, as it is drawn [mm]. */
const TIP = 2.6;
/** White over the highest and under the lowest thing drawn [m]. */
const ROOM = 0.12;
/** Near distances are not drawn larger than this [mm per m]. */
const LARGEST = 7.2;
/** Circles nearer to each other would run together [mm]. */
const LEAST_RINGS = 0.32;
/** A hold nearer to the centre than this is not dimensioned [mm]. */
const LEAST_DIMENSION = 4.2;

interface PointPicture {
  /** Millimetres on paper for a metre at the target, both ways [mm/m]. */
  readonly scale: number;
  readonly centreY: number;
  readonly tipY: number;
  readonly groundY: number;
  readonly half: number;
  readonly rings: readonly number[];
}

/** Target and point of aim in their true proportions, in a row of a height. */
export function pointPicture(holdM: number, face: Face, height: number): PointPicture {
  const highest = Math.max(BUTT / 2, holdM) + ROOM;
  const ground = goldAboveGround + ROOM / 2;
  // Under the place that it points to there is the tip itself, as large at every scale.
  const scale = Math.min(LARGEST, height / (highest + ground), (height - TIP) / (highest - Math.min(holdM, 0)));
  const high = scale * highest + Math.max(scale * ground, TIP - scale * holdM);
  // What is small stands in the middle of its row.
  const above = (height - high) / 2;
  const y = (metres: number) => above + scale * (highest - metres);
  const rings: number[] = [];
  for (const { points, radius } of face.rings)
    if (points % 2 === 1 || radius === face.rings[0]?.radius) {
      const drawn = scale * radius;
      if (rings.length === 0 || (rings.at(-1) ?? 0) - drawn >= LEAST_RINGS) rings.push(drawn);
    }
  return { scale, centreY: y(0), tipY: y(holdM), groundY: y(-goldAboveGround), half: (scale * BUTT) / 2, rings };
}

/** Drawn about an upright middle. */
export function drawPicture(picture: PointPicture, middle: number): XmlNode[] {
  const { centreY, tipY, groundY, half, rings } = picture;
  const buttTop = centreY - half;
  const aside = middle - Math.max(half, 3.4) - 1.8;
  const reach = Math.abs(tipY - centreY);
  const [from, to] = [0.62 * half, 0.8 * half];
  return [
    stroke(path('M', middle - 9, groundY, 'H', middle + 9), weights.dimension),
    stroke(
      path(
        'M',
        middle - from,
        centreY + half,
        'L',
        middle - to,
        groundY,
        'M',
        middle + from,
        centreY + half,
        'L',
        middle + to,
        groundY,
      ),
      weights.inner,
    ),
    stroke(path('M', middle - half, buttTop, 'h', 2 * half, 'v', 2 * half, 'h', -2 * half, 'Z'), weights.inner, {
      fill: '#ffffff',
    }),
    ...rings.map((radius) => ring(middle, centreY, radius, weights.construction)),
    dot(middle, centreY, Math.min(0.35, (rings.at(-1) ?? 1) / 2)),
    ...(reach < LEAST_DIMENSION
      ? []
      : [
          stroke(
            path('M', middle, centreY, 'H', aside - 1, 'M', middle - 1.4, tipY, 'H', aside - 1, 'M', aside, centreY, 'V', tipY),
            weights.construction,
          ),
          arrowhead(aside, centreY, tipY > centreY ? 'up' : 'down'),
          arrowhead(aside, tipY, tipY > centreY ? 'down' : 'up'),
        ]),
    stroke(path('M', middle, tipY, 'l', -1, TIP, 'h', 2, 'Z'), 0.5, { stroke: '#ffffff', 'stroke-linejoin': 'round' }),
    filled(path('M', middle, tipY, 'l', -1, TIP, 'h', 2, 'Z'), { 'data-tip': 'yes' }),
  ];
}
