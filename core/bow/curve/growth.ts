import { inch } from '../../units/exact.ts';

/** How draw weight grows over the later half of the stroke. */
export interface Growth {
  /** Least and greatest growth over any 2 in there [N/m]. */
  readonly least: number;
  readonly most: number;
  /** AMO draw from which the bow stacks; null where it does not, or where nobody can tell [m]. */
  readonly stacksFrom: number | null;
  /** Least over greatest: 1 where every inch adds the same [-]. */
  readonly smoothness: number;
}

const WINDOW = 2 * inch;
const STEP = 0.25 * inch;

/** A bow is said to stack here when 2 in of draw add this many times as much as where it grows least. Our own line, from memory. */
const STACKS = 1.5;

/**
 * How evenly draw weight grows over the later half of the stroke, and from where it stacks.
 *
 * @equation k(u) = (F(u + 1 in) − F(u − 1 in))/2 in every ¼ in; smoothness = least k over greatest k, 0 where the weight falls; it stacks from the first draw past the least k after which k stays above 1.5 times that
 * @param force - F at an AMO draw [N] [function]
 * @param brace - the AMO draw at the brace height [m]
 * @param end - the farthest AMO draw to look at [m]
 * @returns least and most growth [N/m], the draw it stacks from [m] and the smoothness [-] [record]
 * @validity at least 4 in from brace to end, which the callers see to
 * @source own derivation
 * @example growthOver((draw) => 100 * draw, 0.25, 0.75).stacksFrom // null
 */
export function growthOver(force: (draw: number) => number, brace: number, end: number): Growth {
  const from = Math.min((brace + end) / 2, end - WINDOW) + WINDOW / 2;
  const steps = Math.max(0, Math.floor((end - WINDOW / 2 - from) / STEP + 1e-9));
  const places = Array.from({ length: steps + 1 }, (_, i) => end - WINDOW / 2 - (steps - i) * STEP);
  const growths = places.map((draw) => (force(draw + WINDOW / 2) - force(draw - WINDOW / 2)) / WINDOW);
  const [least, most] = [Math.min(...growths), Math.max(...growths)];
  const tame = growths.findLastIndex((growth) => growth <= STACKS * least);
  const stacksFrom = least > 0 && tame < growths.length - 1 ? (places[tame + 1] ?? null) : null;
  return { least, most, stacksFrom, smoothness: most > 0 ? Math.max(0, least / most) : 0 };
}
