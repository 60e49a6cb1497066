import { ok, type Result } from '../model/index.ts';
import { drawWeight, type DrawWeight, type WeightArcher, type WeightBow, type WeightSettings } from './weight.ts';

/** A scale read in the wrong unit, short of full draw or off another bow is out by more than this beyond what the mark allows: from memory. */
const BEYOND_BAND = 0.15;

/**
 * What the marked weight, carried to this draw, lets expect where the scale's reading contradicts it.
 *
 * @equation contradicted when F_read < 0.85 F_low or F_read > 1.15 F_high of the estimate from the mark
 * @param bow - bowKind, markedWeight [N] and markedDraw [m] [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N] and weightDraw, the AMO draw it was read at [m] [record]
 * @returns the weight expected from the mark, value with low and high [N]; null when there is no contradiction, or nothing to contradict [record]
 * @validity recurves and longbows; a compound counts at its peak anyhow
 * @source from memory
 * @example weightAgainstMark(exampleBundle.bow, exampleBundle.archer, exampleBundle.setup.settings) // null
 */
export function weightAgainstMark(bow: WeightBow, archer: WeightArcher, settings: WeightSettings): DrawWeight | null {
  if (bow.bowKind === 'compound' || settings.weightOnFingers === null) return null;
  const read = drawWeight(bow, archer, settings);
  const expected = drawWeight(bow, archer, { weightOnFingers: null, weightDraw: null });
  if (!read.ok || !expected.ok) return null;
  const { low, high } = expected.value;
  const contradicted = read.value.value < low * (1 - BEYOND_BAND) || read.value.value > high * (1 + BEYOND_BAND);
  return contradicted ? expected.value : null;
}

/**
 * The draw weight that the arrow's mass is judged by: where scale and mark contradict each other, the heavier of the two.
 *
 * @equation as drawWeight; the weight expected from the mark where weightAgainstMark finds one that is heavier
 * @param bow - bowKind, markedWeight [N] and markedDraw [m] [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N] and weightDraw, the AMO draw it was read at [m] [record]
 * @returns F, value with low and high [N], and where it is from [record]
 * @validity as drawWeight
 * @source own derivation
 * @example heavierWeight(exampleBundle.bow, exampleBundle.archer, { weightOnFingers: 50, weightDraw: null }).value.from // "marked weight"
 */
export function heavierWeight(bow: WeightBow, archer: WeightArcher, settings: WeightSettings): Result<DrawWeight> {
  const read = drawWeight(bow, archer, settings);
  const expected = weightAgainstMark(bow, archer, settings);
  return read.ok && expected !== null && expected.value > read.value.value ? ok(expected) : read;
}
