import { ok, type Result } from '../model/index.ts';
import { drawWeight, type DrawWeight, type WeightArcher, type WeightBow, type WeightSettings } from './weight.ts';
import { weightAgainstReadings } from './weightAgainstReadings.ts';

/** A scale read in the wrong unit, short of full draw or off another bow is out by more than this beyond what the mark allows: from memory. */
const BEYOND_BAND = 0.15;

/**
 * What the marked weight, carried to this draw, lets expect where the scale's reading contradicts it.
 *
 * @equation contradicted when F_read < 0.85 F_low or F_read > 1.15 F_high of the estimate from the mark
 * @param bow - bowKind, markedWeight [N] and markedDraw [m], and the force-draw readings [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N], weightDraw, the AMO draw it was read at [m], and braceHeight [m] [record]
 * @returns the weight expected from the mark, value with low and high [N]; null when there is no contradiction, or nothing to contradict [record]
 * @validity recurves and longbows; a compound counts at its peak anyhow
 * @source from memory
 * @example weightAgainstMark(exampleBundle.bow, exampleBundle.archer, exampleBundle.setup.settings) // null
 */
export function weightAgainstMark(bow: WeightBow, archer: WeightArcher, settings: WeightSettings): DrawWeight | null {
  return againstMark(bow, archer, settings, drawWeight(bow, archer, settings));
}

function againstMark(
  bow: WeightBow,
  archer: WeightArcher,
  settings: WeightSettings,
  read: Result<DrawWeight>,
): DrawWeight | null {
  if (bow.bowKind === 'compound' || !read.ok || read.value.from === 'marked weight') return null;
  const unread = { ...settings, weightOnFingers: null, weightDraw: null };
  const expected = drawWeight({ ...bow, forceDraw: [] }, archer, unread);
  if (!expected.ok) return null;
  const { low, high } = expected.value;
  const contradicted = read.value.value < low * (1 - BEYOND_BAND) || read.value.value > high * (1 + BEYOND_BAND);
  return contradicted ? expected.value : null;
}

/**
 * The draw weight that the arrow's mass is judged by: where scale, readings and mark contradict each other, the heaviest of them.
 *
 * @equation as drawWeight; the weight that weightAgainstMark expects, or the one that weightAgainstReadings finds in the table at this draw, where it is heavier
 * @param bow - bowKind, markedWeight [N] and markedDraw [m], and the force-draw readings [record]
 * @param archer - drawLength, AMO [m] [record]
 * @param settings - weightOnFingers [N], weightDraw, the AMO draw it was read at [m], and braceHeight [m] [record]
 * @returns F, value with low and high [N], and where it is from [record]
 * @validity as drawWeight
 * @source own derivation
 * @example heavierWeight(exampleBundle.bow, exampleBundle.archer, { weightOnFingers: 50, weightDraw: null, braceHeight: null }).value.from // "marked weight"
 */
export function heavierWeight(bow: WeightBow, archer: WeightArcher, settings: WeightSettings): Result<DrawWeight> {
  const read = drawWeight(bow, archer, settings);
  if (!read.ok) return read;
  const marked = againstMark(bow, archer, settings, read);
  const contradicted = weightAgainstReadings(bow, archer, settings) !== null;
  const table = contradicted ? drawWeight(bow, archer, { ...settings, weightOnFingers: null, weightDraw: null }) : read;
  const others = [marked, table.ok ? table.value : null].filter((weight) => weight !== null);
  return ok(others.reduce((most, weight) => (weight.value > most.value ? weight : most), read.value));
}
