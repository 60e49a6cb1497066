/**
 * Whether a stroke tells what brace height does.
 *
 * A string that is twisted by little changes the stored energy by 2 tan θ_B (T_D − T_B) for each metre of brace, so that it rests on the
 * tension at brace, and with it on the slope of the curve's first inches.
 *
 * @equation T_B > T_D, the string tighter at brace than at full draw: then a higher brace stores less, as archers find
 * @param atBrace - T_B, tension of the string at the brace height [N]
 * @param atDraw - T_D, tension at full draw [N]
 * @returns false where the first inches are so flat that it would come out the other way round [choice]
 * @validity straight limbs of which nothing but the weight is known come out flat; readings near the brace height settle it
 * @source own derivation
 * @example tellsBrace(100, 150) // false
 */
export function tellsBrace(atBrace: number, atDraw: number): boolean {
  return atBrace > atDraw;
}
