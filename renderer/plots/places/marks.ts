import { scaleLinear } from 'd3';
import type { Point } from '../../../core/group/index.ts';
import { boxAround, placeLabel, type Box } from '../boxes.ts';
import { textWidth } from '../textWidth.ts';
import { ticksAcross, type Tick } from '../ticks.ts';

export interface Place {
  readonly name: string;
  readonly at: Point;
  /** Of the circle that its true place lies in with 95 %. */
  readonly radius: number;
  readonly strong: boolean;
}

export interface PlacesMarks {
  readonly height: number;
  readonly axisY: number;
  readonly origin: Point;
  /** Where the word for the origin stands; null where there is no room. */
  readonly originAt: Point | null;
  readonly places: readonly (Place & { readonly r: number; readonly dot: Point; readonly label: Point | null })[];
  readonly ticks: readonly Tick[];
}

const frame = { most: 320, axis: 26, inset: 10 } as const;
const NAME = 13;

/** Places about an origin with their circles: one scale in both directions, so that circles stay circles. */
export function placesMarks(
  places: readonly Place[],
  origin: string,
  width: number,
  unit: { readonly factor: number; readonly symbol: string },
): PlacesMarks {
  const axisY = Math.min(frame.most, width);
  const reach = places.reduce((most, { at, radius }) => Math.max(most, Math.abs(at.x) + radius, Math.abs(at.y) + radius), 1e-4);
  const half = axisY / 2 - frame.inset;
  const across = width / 2 / half;
  const x = scaleLinear([-reach * across, reach * across], [0, width]);
  const k = half / reach;
  const middle = { x: width / 2, y: axisY / 2 };
  const spots = places.map((place) => ({ ...place, dot: { x: middle.x + place.at.x * k, y: middle.y - place.at.y * k } }));
  const obstacles: Box[] = spots.map(({ dot }) => boxAround(dot, 5, 5));
  const bounds: Box = { left: 2, right: width - 2, top: 2, bottom: axisY - 2 };
  // Those that are asked about choose their place first.
  const order = spots.map((_, i) => i).sort((a, b) => Number(spots[b]?.strong) - Number(spots[a]?.strong));
  const labels = new Map<number, Point>();
  for (const i of order) {
    const spot = spots[i];
    if (spot === undefined) continue;
    const wide = textWidth(spot.name, NAME, 'name') + 4;
    const placed = placeLabel(spot.dot, middle, wide, 15, [11, 16, 24], obstacles, bounds);
    if (placed === null) continue;
    obstacles.push(placed.box);
    labels.set(i, placed.at);
  }
  const word = placeLabel(
    middle,
    { x: middle.x - 1, y: middle.y - 1 },
    textWidth(origin, NAME, 'name') + 4,
    15,
    [12, 20, 30],
    obstacles,
    bounds,
  );
  return {
    height: axisY + frame.axis,
    axisY,
    origin: middle,
    originAt: word?.at ?? null,
    places: spots.map((spot, i) => ({ ...spot, r: spot.radius * k, label: labels.get(i) ?? null })),
    // The first may have no room left of it.
    ticks: ticksAcross(x, unit, axisY, width).map((tick) =>
      tick.label !== null && tick.label.box.left < 0 ? { ...tick, label: null } : tick,
    ),
  };
}
