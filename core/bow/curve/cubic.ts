/** A curve of pieces, each a polynomial in the distance from its left end. */
export interface Pieces {
  readonly first: number;
  readonly last: number;
  readonly at: (x: number) => number;
  readonly slope: (x: number) => number;
  /** Area under the curve between two places inside it. */
  readonly area: (from: number, to: number) => number;
}

export interface Knot {
  readonly x: number;
  readonly y: number;
}

interface Piece extends Knot {
  readonly c1: number;
  readonly c2: number;
  readonly c3: number;
}

const nothing: Piece = { x: 0, y: 0, c1: 0, c2: 0, c3: 0 };

/** Names and plain loops, not tuples taken apart: every curve on the screens comes through here many times over. */
function piecesOf(pieces: readonly Piece[], last: number): Pieces {
  const first = pieces[0]?.x ?? 0;
  const within = ({ x: x0, y, c1, c2, c3 }: Piece, x: number): number => {
    const h = x - x0;
    return h * (y + h * (c1 / 2 + h * (c2 / 3 + (h * c3) / 4)));
  };
  const before = [0];
  for (let i = 0; i < pieces.length; i++) before.push((before[i] ?? 0) + within(pieces[i] ?? nothing, pieces[i + 1]?.x ?? last));
  const indexAt = (x: number): number => {
    let low = 0;
    let high = pieces.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((pieces[middle] ?? nothing).x <= x) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  const pieceAt = (x: number): Piece => pieces[indexAt(x)] ?? nothing;
  const areaTo = (x: number): number => {
    const index = indexAt(x);
    return (before[index] ?? 0) + within(pieces[index] ?? nothing, x);
  };
  return {
    first,
    last,
    at: (x) => {
      const { x: x0, y, c1, c2, c3 } = pieceAt(x);
      const h = x - x0;
      return y + h * (c1 + h * (c2 + h * c3));
    },
    slope: (x) => {
      const { x: x0, c1, c2, c3 } = pieceAt(x);
      const h = x - x0;
      return c1 + h * (2 * c2 + h * 3 * c3);
    },
    area: (from, to) => areaTo(to) - areaTo(from),
  };
}

/**
 * Straight lines from knot to knot.
 *
 * @equation y = y_i + (x − x_i)(y_{i+1} − y_i)/(x_{i+1} − x_i)
 * @param knots - places and values, places rising [list]
 * @returns the curve [record]
 * @validity at least two knots, which the callers see to
 * @source own derivation
 * @example chordsThrough([{ x: 0, y: 0 }, { x: 2, y: 4 }]).at(1) // 2
 */
export function chordsThrough(knots: readonly Knot[]): Pieces {
  const pieces = knots.slice(0, -1).map((knot, i): Piece => {
    const next = knots[i + 1] ?? knot;
    return { x: knot.x, y: knot.y, c1: (next.y - knot.y) / (next.x - knot.x), c2: 0, c3: 0 };
  });
  return piecesOf(pieces, knots.at(-1)?.x ?? 0);
}

/**
 * Cubic pieces through knots that rise where the knots rise, and turn at a knot only.
 *
 * @equation slope at an inner knot: weighted harmonic mean of the two chords, 0 where they point opposite ways; at an end: the parabola through three knots, kept within three chords and never against the first
 * @param knots - places and values, places rising [list]
 * @returns the curve; it goes through every knot [record]
 * @validity at least two knots, which the callers see to; two give a straight line
 * @source fritsch-butland-1984
 * @example shapePreserving([{ x: 0, y: 0 }, { x: 1, y: 1 }, { x: 2, y: 4 }]).at(1) // 1
 */
export function shapePreserving(knots: readonly Knot[]): Pieces {
  const gaps = knots.slice(0, -1).map((knot, i) => {
    const next = knots[i + 1] ?? knot;
    return { h: next.x - knot.x, chord: (next.y - knot.y) / (next.x - knot.x) };
  });
  const slopes = knots.map((_, i): number => {
    const left = gaps[i - 1];
    const right = gaps[i];
    if (left === undefined) return endSlope(right, gaps[1]);
    if (right === undefined) return endSlope(left, gaps[i - 2]);
    if (left.chord * right.chord <= 0) return 0;
    const w1 = 2 * right.h + left.h;
    const w2 = right.h + 2 * left.h;
    return (w1 + w2) / (w1 / left.chord + w2 / right.chord);
  });
  const pieces = gaps.map(({ h, chord }, i): Piece => {
    const { x, y } = knots[i] ?? nothing;
    const from = slopes[i] ?? 0;
    const to = slopes[i + 1] ?? 0;
    return { x, y, c1: from, c2: (3 * chord - 2 * from - to) / h, c3: (from + to - 2 * chord) / (h * h) };
  });
  return piecesOf(pieces, knots.at(-1)?.x ?? 0);
}

interface Gap {
  readonly h: number;
  readonly chord: number;
}

function endSlope(nearest: Gap | undefined, next: Gap | undefined): number {
  if (nearest === undefined) return 0;
  if (next === undefined) return nearest.chord;
  const slope = ((2 * nearest.h + next.h) * nearest.chord - nearest.h * next.chord) / (nearest.h + next.h);
  if (slope * nearest.chord <= 0) return 0;
  const turns = nearest.chord * next.chord <= 0;
  return turns && Math.abs(slope) > 3 * Math.abs(nearest.chord) ? 3 * nearest.chord : slope;
}
