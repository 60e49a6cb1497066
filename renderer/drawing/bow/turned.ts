import type { Hand } from '../../../core/model/archer.ts';
import type { Box } from '../../plots/boxes.ts';
import type { Span } from '../dimension/lines.ts';
import type { BowLayout, Standing } from './standing.ts';

/** The drawing turned over for a left-hander: places change sides, texts stay as they are. */
export function turned(layout: BowLayout, hand: Hand): BowLayout {
  if (hand === 'right') return layout;
  const over = (x: number) => layout.width - x;
  const box = ({ left, right, top, bottom }: Box): Box => ({ left: over(right), right: over(left), top, bottom });
  const standing = ({ box: own, anchor }: Standing): Standing => ({
    box: box(own),
    anchor: anchor === 'start' ? 'end' : anchor === 'end' ? 'start' : 'middle',
  });
  const pair = (two: readonly [number, number] | null | undefined) => (two ? ([over(two[1]), over(two[0])] as const) : null);
  const some = (x: number | null | undefined) => (x === null || x === undefined ? null : over(x));
  const span = (one: Span): Span =>
    one.axis === 'across'
      ? { ...one, from: over(one.from), to: over(one.to), gap: pair(one.gap), leadTo: some(one.leadTo) }
      : { ...one, line: over(one.line), objectFrom: some(one.objectFrom), objectTo: some(one.objectTo) };
  const all = <K extends string, A, B>(record: Readonly<Record<K, A>>, change: (one: A) => B) =>
    Object.fromEntries(Object.entries<A>(record).map(([name, one]) => [name, change(one)])) as Record<K, B>;
  return {
    ...layout,
    x: (u) => over(layout.x(u)),
    xBehind: (z) => over(layout.xBehind(z)),
    figures: all(layout.figures, standing),
    dimensions: all(layout.dimensions, span),
    leaders: layout.leaders.map((line) => line.map(([x, y]) => [over(x), y] as const)),
    keys: all(layout.keys, ({ box: own, ring: [x, y, r] }) => ({ box: box(own), ring: [over(x), y, r] as const })),
    corner: layout.corner === null ? null : box(layout.corner),
    bandReach: layout.bandReach.map(([x, y]) => [over(x), y] as const),
    band: layout.band === null ? null : box(layout.band),
  };
}
