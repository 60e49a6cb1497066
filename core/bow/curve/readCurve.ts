import type { Band } from '../../model/band.ts';
import { inch } from '../../units/exact.ts';
import { chordsThrough, shapePreserving, type Knot } from './cubic.ts';
import { movedDraw } from './moved.ts';
import { longestRun } from './notRising.ts';
import type { ReadPoint } from './rows.ts';

/** A force-draw curve between brace height and beyond full draw, however it was come by. */
export interface Curve {
  /** Force at an AMO draw [N]. */
  readonly force: (draw: number) => Band;
  /** The same without its band, for whoever asks at many draws. */
  readonly value: (draw: number) => number;
  /** At an AMO draw [N/m]. */
  readonly slope: (draw: number) => number;
  /** Area under it from the brace height to full draw [J]. */
  readonly energy: Band;
}

export interface ReadCurve extends Curve {
  /** The farthest draw that was read [m]. */
  readonly last: number;
  /** Area between two draws that were read [J]. */
  readonly area: (from: number, to: number) => number;
}

/** Where the readings belong. All are AMO draws but the shift [m]. */
export interface Place {
  readonly brace: number;
  readonly full: number;
  /** Brace height now less the one that the readings were taken at. */
  readonly shift: number;
}

/** How much a moved brace height may alter the force everywhere, as a share for each metre: .9 % for 10 mm on a stiff arm on a hinge. */
const MOVED_DOUBT = 1;

/** Beyond the last reading the weight may grow by less or by more than it did over the last inches that were read: from memory. */
const beyond = { over: 2 * inch, low: 0.75, high: 1.5 } as const;

const exactly = (value: number): Band => ({ value, low: value, high: value });

/**
 * The force-draw curve through readings, with a band where nothing was read.
 *
 * @equation shape-preserving cubics through nothing at the brace height and every reading; between readings as far to both sides as the chord lies off; where forces fall, as far as the curves that would be right if the readings before, those after, or only the fewest that stand in the way were wrong; past the last reading straight on at its last 2 in, 0.75 to 1.5 times that
 * @param points - at least two points beyond the brace height, in order of their draws [list]
 * @param place - brace and full, AMO draws, and the shift of the brace height since [m] [record]
 * @param falls - whether the weight may fall by design, as a compound's does [choice]
 * @returns force [N] and slope [N/m] at an AMO draw, and energy to full draw [J] [record]
 * @validity a moved brace height shifts the readings as movedDraw does; the band then holds the curve as if nothing but the brace height had moved, and 0.1 % of the force for each millimetre
 * @source own derivation
 * @example readCurve([{ draw: 0.5, force: 100, least: 100, most: 100, rows: [0] }, { draw: 0.75, force: 200, least: 200, most: 200, rows: [1] }], { brace: 0.25, full: 0.75, shift: 0 }, false).energy.value // 50
 */
export function readCurve(points: readonly ReadPoint[], { brace, full, shift }: Place, falls: boolean): ReadCurve {
  const start: Knot = { x: brace, y: 0 };
  const draws = points.map(({ draw }) => movedDraw(draw, shift, brace, full));
  const through = (forces: readonly number[]) => [start, ...draws.map((x, i): Knot => ({ x, y: forces[i] ?? 0 }))];
  const knots = through(points.map(({ force }) => force));
  const curve = shapePreserving(knots);
  const chords = chordsThrough(knots);
  const still = shift === 0 ? null : shapePreserving([start, ...standing(points, brace)]);
  const plain = points.every(({ force, least, most }, i) => least === most && (falls || force >= (points[i - 1]?.force ?? 0)));
  const others = plain ? [] : contradictions(points, falls).map((forces) => shapePreserving(through(forces)));
  // Cubics that end on nought may miss it by the last digit.
  const read = (draw: number): number => Math.max(0, curve.at(draw));
  const within = (draw: number): Band => {
    const value = read(draw);
    const moved =
      still === null ? 0 : Math.abs(value - still.at(Math.min(draw, still.last))) + MOVED_DOUBT * Math.abs(shift) * value;
    const off = Math.abs(value - chords.at(draw)) + moved;
    let [least, most] = [value, value];
    for (const other of others) {
      const at = other.at(draw);
      if (at < least) least = at;
      if (at > most) most = at;
    }
    return { value, low: Math.max(0, least - off), high: most + off };
  };

  const { last } = curve;
  const from = Math.max(brace, last - beyond.over);
  const growth = Math.max(0, (curve.at(last) - curve.at(from)) / (last - from));
  const end = within(last);
  const force = (draw: number): Band => {
    if (draw <= brace) return exactly(0);
    if (draw <= last) return within(draw);
    const more = growth * (draw - last);
    return { value: end.value + more, low: end.low + beyond.low * more, high: end.high + beyond.high * more };
  };

  const top = Math.min(full, last);
  const area = curve.area(brace, top);
  const off = knots.slice(1).reduce((sum, knot, i) => {
    const a = knots[i]?.x ?? brace;
    const b = Math.min(knot.x, top);
    return b > a ? sum + Math.abs(curve.area(a, b) - chords.area(a, b)) : sum;
  }, 0);
  const moved =
    still === null ? 0 : Math.abs(area - still.area(brace, Math.min(top, still.last))) + MOVED_DOUBT * Math.abs(shift) * area;
  const past = (side: keyof Band, factor: number) => (full - top) * (end[side] + (factor * growth * (full - top)) / 2);
  const areas = [area, ...others.map((other) => other.area(brace, top))];
  return {
    force,
    value: (draw) => (draw <= brace ? 0 : draw <= last ? read(draw) : end.value + growth * (draw - last)),
    slope: (draw) => (draw < brace ? 0 : draw <= last ? curve.slope(draw) : growth),
    energy: {
      value: area + past('value', 1),
      low: Math.max(0, Math.min(...areas) - off - moved) + past('low', beyond.low),
      high: Math.max(...areas) + off + moved + past('high', beyond.high),
    },
    last,
    area: curve.area,
  };
}

/** The readings where they were taken, those that still lie beyond the brace height. */
const standing = (points: readonly ReadPoint[], brace: number): Knot[] => {
  const knots = points.filter(({ draw }) => draw > brace).map(({ draw, force }): Knot => ({ x: draw, y: force }));
  return knots;
};

/**
 * What the forces may have been where they contradict each other: the least and the most that were read of one draw, and, unless they may
 * fall, the least of what follows, the most of what went before, and what those leave that do not stand in the way.
 */
function contradictions(points: readonly ReadPoint[], falls: boolean): readonly (readonly number[])[] {
  const least = points.map((point) => point.least);
  const most = points.map((point) => point.most);
  if (falls) return [least, most];
  for (let i = 1; i < most.length; i++) most[i] = Math.max(most[i] ?? 0, most[i - 1] ?? 0);
  for (let i = least.length - 2; i >= 0; i--) least[i] = Math.min(least[i] ?? 0, least[i + 1] ?? 0);
  const kept = longestRun(points.map(({ force }) => force));
  const rest = points.filter((_, i) => kept.has(i)).map(({ draw, force }): Knot => ({ x: draw, y: force }));
  const line = rest.length < 2 ? null : chordsThrough(rest);
  const level = ({ draw }: ReadPoint) => line?.at(Math.min(Math.max(draw, line.first), line.last)) ?? rest[0]?.y ?? 0;
  return [least, most, points.map((point, i) => (kept.has(i) ? point.force : level(point)))];
}
