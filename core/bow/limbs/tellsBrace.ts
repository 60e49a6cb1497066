import type { StrokeRun } from './runStroke.ts';

/**
 * Whether a stroke tells what brace height does.
 *
 * A string that is twisted by little changes the stored energy by 2 tan θ_B (T_D − T_B) for each metre of brace, so that it rests on the
 * tension at brace, and with it on the slope of the curve's first inches.
 *
 * @equation T_B > T_D, the string tighter at brace than at full draw: then a higher brace stores less, as archers find
 * @param run - the stroke as it is [record]
 * @returns false where the first inches are so flat that it would come out the other way round [choice]
 * @validity straight limbs of which nothing but the weight is known come out flat; readings near the brace height settle it
 * @source own derivation
 * @example tellsBrace({ braceTension: 100, samples: [{ tension: 150 }] }) // false
 */
export function tellsBrace({ braceTension, samples }: Pick<StrokeRun, 'braceTension' | 'samples'>): boolean {
  return braceTension > (samples[0]?.tension ?? Infinity);
}
