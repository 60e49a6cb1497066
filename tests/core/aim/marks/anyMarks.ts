import fc from 'fast-check';
import { type KnownMark, launchSlope, markError, type MarkPriors, type SightScale } from '../../../../core/aim/index.ts';
import type { Band } from '../../../../core/model/index.ts';
import { normalPair, type Random } from '../../../../fixtures/random.ts';
import { inside } from '../../inside.ts';

/** A millimetre scale without ends. */
export const millimetreScale: SightScale = { unit: 0.001, grows: 'down' };

export const targetPriors: MarkPriors = {
  speed: { value: 56, low: 52, high: 60.3 },
  eyeHeight: { value: 0.12, low: 0.1, high: 0.14 },
  k: { value: 0.0022, low: 0.0015, high: 0.0032 },
  sightRadius: { value: 0.85, low: 0.83, high: 0.87 },
  spreadPerMetre: 0.0015,
};

/** What is true of one archer and bow. */
export interface Truth {
  readonly speed: number;
  readonly eyeHeight: number;
  readonly k: number;
  readonly sightRadius: number;
  /** On a scale of millimetres. */
  readonly zero: number;
}

export const trueReading = ({ speed, k, eyeHeight, sightRadius, zero }: Truth, distance: number): number =>
  zero + 1000 * sightRadius * launchSlope(speed, k, eyeHeight, distance);

export const truths = fc.record({
  speed: inside(52, 60),
  eyeHeight: inside(0.1, 0.14),
  k: inside(0.0015, 0.003),
  sightRadius: inside(0.83, 0.87),
  zero: inside(-20, 20),
});

/** Distances 4 m apart at least, some of them at random. */
export const distances = fc
  .subarray([10, 18, 25, 30, 40, 50, 60, 70], { minLength: 2, maxLength: 5 })
  .chain((chosen) => fc.shuffledSubarray(chosen, { minLength: chosen.length }));

const Z95 = 1.96;
const spreadOf = ({ low, high }: Band) => (high - low) / (2 * Z95);

/** A truth as likely as the priors say. */
export function drawTruth(priors: MarkPriors, random: Random): Truth {
  const [a, b] = normalPair(random);
  const [c, d] = normalPair(random);
  const { speed, eyeHeight, k, sightRadius } = priors;
  return {
    speed: speed.value * Math.exp((a * Math.log(speed.high / speed.low)) / (2 * Z95)),
    eyeHeight: eyeHeight.value + b * spreadOf(eyeHeight),
    k: k.value * Math.exp((c * Math.log(k.high / k.low)) / (2 * Z95)),
    sightRadius: sightRadius.value + d * spreadOf(sightRadius),
    zero: 10,
  };
}

/** A mark as six arrows settle it. */
export function shotIn(truth: Truth, distance: number, priors: MarkPriors, random: Random, wider = 1): KnownMark {
  const [z] = normalPair(random);
  return { distance, reading: trueReading(truth, distance) + 1000 * wider * markError(priors, 6) * z };
}
