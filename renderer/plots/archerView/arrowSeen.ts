import type { SeenArrow } from './data.ts';

/** The shaft from its shoulder to below the picture, and the point before it. */
export interface ArrowSeen {
  readonly shaft: string;
  readonly point: string;
  /** Half the width of the point, and of the shaft where it leaves the picture [px]. */
  readonly half: number;
  readonly halfBelow: number;
}

/** A point is drawn at least so long, that its tip is told from the shaft behind it [px]. */
const LEAST_POINT = 15;
const STEPS = 12;
/** An eye nearer to the arrow's axis than this looks along it [m]. */
const ALONG = 5e-4;
/** The shaft is followed towards the eye as far as this part of its length: there the hands begin [-]. */
const NEAREST = 0.4;

/**
 * How wide a shaft is seen where the eye over its nock sees it at a slope: half its diameter over the distance ahead.
 * Along the axis, at the elevation θ, the place s is seen at the slope (s sin θ − e cos θ)/(s cos θ + e sin θ).
 */
export function halfWidthAt({ forward, eyeHeight, diameter }: SeenArrow, tipSlope: number, slope: number): number {
  if (eyeHeight < ALONG) return diameter / 2 / forward;
  const elevation = Math.atan(tipSlope) + Math.atan(eyeHeight / forward);
  const [sin, cos] = [Math.sin(elevation), Math.cos(elevation)];
  const along = Math.max(NEAREST * forward, (eyeHeight * (cos + slope * sin)) / (sin - slope * cos));
  return diameter / 2 / (along * cos + eyeHeight * sin);
}

/** The arrow as the eye over its nock sees it: its place and its width in perspective, wider as it comes nearer. */
export function arrowSeen(
  arrow: SeenArrow,
  scale: number,
  horizon: number,
  tip: { x: number; y: number },
  bottom: number,
): ArrowSeen {
  const slopeAt = (y: number) => (horizon - y) / scale;
  const halfAt = (y: number) => scale * halfWidthAt(arrow, slopeAt(tip.y), slopeAt(y));
  const shoulder = tip.y + Math.max(LEAST_POINT, 1.1 * halfAt(tip.y));
  const edge = Array.from({ length: STEPS + 1 }, (_, i) => shoulder + ((bottom - shoulder) * i) / STEPS);
  const side = (sign: 1 | -1) => edge.map((y) => `${fixed(tip.x + sign * halfAt(y))} ${fixed(y)}`);
  const half = halfAt(shoulder);
  const bulge = fixed(tip.y + 0.45 * (shoulder - tip.y));
  const [left, right] = [-1, 1].map((sign) => fixed(tip.x + sign * half));
  const [inLeft, inRight] = [-1, 1].map((sign) => fixed(tip.x + sign * 0.75 * half));
  const apex = `${fixed(tip.x)} ${fixed(tip.y)}`;
  return {
    shaft: `M${side(-1).join('L')}L${side(1).toReversed().join('L')}Z`,
    point: `M${apex}Q${inRight} ${bulge} ${right} ${fixed(shoulder)}H${left}Q${inLeft} ${bulge} ${apex}Z`,
    half,
    halfBelow: halfAt(bottom),
  };
}

const fixed = (pixels: number): number => Number(pixels.toFixed(2));
