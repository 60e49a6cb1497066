/**
 * The draw at which the force stands now that stood at another draw before the brace height was altered.
 *
 * @equation u solves u − Δ (1 − x)³ = w, x = (u − b)/(D − b): the whole of Δ at the brace height, nothing of it at full draw
 * @param draw - w, AMO draw of the reading [m]
 * @param shift - Δ, brace height now less then [m]
 * @param brace - b, AMO draw at the brace height now [m]
 * @param full - D, AMO draw of the archer [m]
 * @returns u, AMO draw [m]
 * @validity a shift of less than a quarter of the stroke, which the caller sees to; a draw beyond full draw stays where it is
 * @source own derivation
 * @example movedDraw(0.25, 0.01, 0.26, 0.7) // 0.26
 */
export function movedDraw(draw: number, shift: number, brace: number, full: number): number {
  if (shift === 0 || draw >= full) return draw;
  const stroke = full - brace;
  let u = Math.max(draw, brace);
  for (let i = 0; i < 8; i++) {
    const left = 1 - (u - brace) / stroke;
    const step = (u - shift * left * left * left - draw) / (1 + (3 * shift * left * left) / stroke);
    u -= step;
    if (Math.abs(step) < 1e-15) break;
  }
  return u;
}
