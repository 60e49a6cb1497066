import { arrowMass, type ArrowParts } from '../arrow/index.ts';
import { ok, type Archer, type Result, type Settings } from '../model/index.ts';
import { given } from '../model/given.ts';
import type { Band } from '../model/band.ts';
import { estimatedSpeed } from './speed.ts';
import { strokeOf } from './stroke.ts';
import { drawWeight, type WeightBow } from './weight.ts';

export interface ArrowSpeed extends Band {
  /** Chronograph, or estimated from the bow's kind. */
  readonly from: 'measured' | 'estimated';
}

/** A club's chronograph and the archer's own scatter, as a share of the speed: from memory. */
const CHRONOGRAPH_DOUBT = 0.01;

/** The records that a launch speed rests on. */
export interface SpeedInput {
  readonly bow: WeightBow;
  readonly archer: Pick<Archer, 'drawLength'>;
  readonly arrowSet: ArrowParts;
  readonly settings: Pick<Settings, 'arrowSpeed' | 'weightOnFingers' | 'weightDraw' | 'braceHeight'>;
}

/**
 * Launch speed of this arrow from this bow: the chronograph's reading when there is one, else an estimate from the bow's kind.
 *
 * @equation v = v_measured (1 ± 1 %), or estimatedSpeed
 * @param input - bow, archer, arrowSet and settings of a set-up [record]
 * @returns v, value with low and high [m/s], and whether it was measured or estimated [record]
 * @validity the refusal names what is missing; a compound needs the chronograph
 * @source from memory
 * @example setupSpeed({ ...exampleBundle, settings: { ...exampleBundle.setup.settings, arrowSpeed: 55 } }).value.value // 55
 */
export function setupSpeed(input: SpeedInput): Result<ArrowSpeed> {
  const { bow, archer, arrowSet, settings } = input;
  if (settings.arrowSpeed !== null) {
    const read = given('the speed', { arrowSpeed: settings.arrowSpeed });
    if (!read.ok) return read;
    const value = read.value.arrowSpeed;
    return ok({ value, low: value * (1 - CHRONOGRAPH_DOUBT), high: value * (1 + CHRONOGRAPH_DOUBT), from: 'measured' });
  }
  const weight = drawWeight(bow, archer, settings);
  if (!weight.ok) return weight;
  const arrow = arrowMass(arrowSet);
  if (!arrow.ok) return arrow;
  const stroke = strokeOf(bow, archer, settings);
  if (!stroke.ok) return stroke;
  const speed = estimatedSpeed(bow.bowKind, weight.value, stroke.value.stroke, arrow.value.mass);
  return speed.ok ? ok({ ...speed.value, from: 'estimated' }) : speed;
}
