import type { Band } from '../model/band.ts';
import { drawWeight, type WeightArcher, type WeightBow, type WeightSettings } from './weight.ts';

/** Two readings of one bow off a scale that lie farther apart than this, beyond their bands, are not both right: from memory. */
const BEYOND_BAND = 0.05;

/** A weight on the fingers and what the table of readings says at the same draw. */
export interface WeightContradiction {
  /** AMO draw that the two are compared at [m]. */
  readonly draw: number;
  readonly onFingers: Band;
  readonly onScale: Band;
}

/**
 * Whether the table of force-draw readings contradicts the weight on the fingers, at the draw that the weight was read at.
 *
 * @equation contradicted when one band lies more than 5 % beyond the other
 * @param bow - the force-draw readings with what their brace height follows from [record]
 * @param archer - drawLength, AMO, for a weight read at a draw that nobody noted [m] [record]
 * @param settings - weightOnFingers [N], weightDraw [m] and braceHeight [m] [record]
 * @returns the draw [m] and both weights [N]; null when they agree, or when one of them does not reach that draw [record]
 * @validity finger bows; a compound may be weighed at its peak or at what it holds
 * @source from memory
 * @example weightAgainstReadings(exampleBundle.bow, exampleBundle.archer, exampleBundle.setup.settings) // null
 */
export function weightAgainstReadings(
  bow: WeightBow,
  archer: WeightArcher,
  settings: WeightSettings,
): WeightContradiction | null {
  const { weightOnFingers, weightDraw } = settings;
  const draw = weightDraw ?? archer.drawLength;
  if (bow.bowKind === 'compound' || weightOnFingers === null || draw === null || bow.forceDraw.length === 0) return null;
  const there = { drawLength: draw };
  const onFingers = drawWeight({ ...bow, forceDraw: [] }, there, settings);
  const onScale = drawWeight(bow, there, { ...settings, weightOnFingers: null, weightDraw: null });
  if (!onFingers.ok || !onScale.ok || onScale.value.from !== 'read on the scale') return null;
  const [fingers, scale] = [onFingers.value, onScale.value];
  const apart = fingers.low > scale.high * (1 + BEYOND_BAND) || fingers.high < scale.low * (1 - BEYOND_BAND);
  return apart ? { draw, onFingers: fingers, onScale: scale } : null;
}
