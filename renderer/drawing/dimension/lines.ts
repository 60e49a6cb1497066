/** Arrowheads are slender: so long, and half so wide [px]. */
const HEAD = 7.5;
const HALF_HEAD = 1.9;
/** Extension lines start this far off the object and pass the dimension line by so much [px]. */
const OFF = 3;
const PASS = 4;
/** Between two arrowheads there must be room for both and a little line [px]. */
const LEAST_INSIDE = 2 * HEAD + 4;
/** How far the line stands out on either side when the arrows come from outside [px]. */
export const TAIL = 16;

/** What a dimension measures: two ends along one axis, and the place of its line on the other. */
export interface Span {
  readonly axis: 'across' | 'up';
  readonly from: number;
  readonly to: number;
  readonly line: number;
  /** Where the object is at either end, on the other axis: an extension line runs from there. Null: the end is on the object itself. */
  readonly objectFrom?: number | null;
  readonly objectTo?: number | null;
  /** The stretch of the line that the figure breaks. */
  readonly gap?: readonly [number, number] | null;
  /** A line drawn on beyond the second or the first end, to a figure that stands outside. */
  readonly leadTo?: number | null;
}

export interface DimensionMarks {
  /** Extension and dimension lines, one path. */
  readonly lines: string;
  /** Filled arrowheads, one path. */
  readonly heads: string;
  readonly outside: boolean;
}

const n = (value: number): string => value.toFixed(2).replace(/\.?0+$/, '');

/** The lines and heads of one dimension. When its ends stand too close for two heads, the arrows come from outside. */
export function dimensionMarks(span: Span): DimensionMarks {
  const { axis, line } = span;
  const [low, high] = span.from <= span.to ? [span.from, span.to] : [span.to, span.from];
  const outside = high - low < LEAST_INSIDE;
  const point = (along: number, aside: number) => (axis === 'across' ? `${n(along)} ${n(aside)}` : `${n(aside)} ${n(along)}`);
  const stroke = (a: number, b: number) => (Math.abs(a - b) < 0.5 ? '' : `M${point(a, line)}L${point(b, line)}`);
  const head = (tip: number, away: 1 | -1) =>
    `M${point(tip, line)}L${point(tip + away * HEAD, line - HALF_HEAD)}L${point(tip + away * HEAD, line + HALF_HEAD)}Z`;
  const extension = (end: number, object: number | null | undefined) => {
    if (object === null || object === undefined) return '';
    const toward = Math.sign(line - object);
    // The object is so near the line that there is nothing to extend.
    if (Math.abs(line - object) <= OFF) return '';
    return `M${point(end, object + toward * OFF)}L${point(end, line + toward * PASS)}`;
  };

  const broken: (readonly [number, number])[] = [];
  const reach: readonly [number, number] = outside ? [low - TAIL, high + TAIL] : [low, high];
  const lead = span.leadTo ?? null;
  const whole: readonly [number, number] = lead === null ? reach : [Math.min(reach[0], lead), Math.max(reach[1], lead)];
  const gap = span.gap ?? null;
  if (gap === null) broken.push(whole);
  else broken.push([whole[0], Math.max(whole[0], gap[0])], [Math.min(whole[1], gap[1]), whole[1]]);

  return {
    lines:
      extension(span.from, span.objectFrom) + extension(span.to, span.objectTo) + broken.map(([a, b]) => stroke(a, b)).join(''),
    heads: outside ? head(low, -1) + head(high, 1) : head(low, 1) + head(high, -1),
    outside,
  };
}
