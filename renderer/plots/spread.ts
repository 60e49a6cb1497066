/**
 * Moves places on a line apart so that neighbours keep a gap: bounds first, then order, then the least movement.
 * Places that must share a stretch settle around its middle (pool adjacent violators on x - i·gap).
 */
export function spread(places: readonly number[], gap: number, low: number, high: number): readonly number[] {
  const count = places.length;
  if (count === 0) return [];
  const room = count > 1 ? Math.min(gap, (high - low) / (count - 1)) : gap;
  const order = places.map((_, index) => index).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0) || a - b);
  const blocks: { sum: number; size: number }[] = [];
  order.forEach((index, rank) => {
    blocks.push({ sum: (places[index] ?? 0) - rank * room, size: 1 });
    for (;;) {
      const [before, last] = blocks.slice(-2);
      if (before === undefined || last === undefined || before.sum / before.size <= last.sum / last.size) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, size: before.size + last.size });
    }
  });
  const levels = blocks.flatMap(({ sum, size }) => Array.from({ length: size }, () => sum / size));
  const most = high - (count - 1) * room;
  const moved = Array.from({ length: count }, () => 0);
  order.forEach((index, rank) => {
    moved[index] = Math.min(Math.max(levels[rank] ?? low, low), most) + rank * room;
  });
  return moved;
}
