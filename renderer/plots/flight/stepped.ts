/** Where a slider goes for a key: arrows one step, with Shift five, Page keys ten, Home and End the ends; null for any other key. */
export function stepped(key: string, shift: boolean, from: number, step: number, low: number, high: number): number | null {
  const small = shift ? 5 * step : step;
  const moves: Readonly<Record<string, number>> = {
    ArrowRight: small,
    ArrowUp: small,
    ArrowLeft: -small,
    ArrowDown: -small,
    PageUp: 10 * step,
    PageDown: -10 * step,
    Home: low - from,
    End: high - from,
  };
  const move = moves[key];
  if (move === undefined) return null;
  const rounded = Math.round((from + move) / step) * step;
  return Math.max(low, Math.min(high, rounded));
}
