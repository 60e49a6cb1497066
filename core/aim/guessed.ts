import type { Band } from '../model/band.ts';
import { ok, refuse, type Result } from '../model/problem.ts';
import type { Corners } from './bands.ts';
import { landing } from './landing.ts';
import type { Launch } from './launch.ts';

/** What a distance that is only guessed does to the height on the face. */
export interface Guessed {
  /** The target is farther than guessed by the whole of it: below the middle, so not above nought [m]. */
  readonly farther: Band;
  /** It is nearer by the whole of it: above the middle [m]. */
  readonly nearer: Band;
  /** One standard deviation that guess after guess adds up and down [m]. */
  readonly spread: number;
}

/** The share of guesses that fall within what is said: 95 %. */
const WITHIN = 1.959963984540054;
/** Nearer than this nobody sets a sight [m]. */
const NEAREST = 2;

const stillAir = { x: 0, y: 0, z: 0 };

/**
 * What a misjudged distance does: struck low when the target is farther than guessed, high when it is nearer, and how much guessing spreads arrows up and down.
 *
 * @equation landing with the sight set for R − g and for R + g; spread = (high − low)/(2 · 1.96), 95 in 100 guesses lying within ± g
 * @param launches - speed, drag parameter, eye height and target drop, with what is not known of them [record]
 * @param distance - R, where the target stands [m]
 * @param within - g, how far out a guess may be [m]
 * @returns both heights with their bands and the spread; or a refusal: `too-near` when R − g is nearer than a sight is set for, those of landing [record]
 * @validity level ground, still air; normal guesses; height taken as straight in the distance over ± g
 * @source own derivation
 * @example guessed({ value: { speed: 50, k: 0, eyeHeight: 0 }, corners: [] }, 30, 0).value.spread.toFixed(6) // "0.000000"
 */
export function guessed(launches: Corners<Launch>, distance: number, within: number): Result<Guessed> {
  if (!(within >= 0 && distance - within >= NEAREST))
    return refuse('too-near', 'A guess well within the distance itself was expected.', 'distanceOff');
  const believing = (setFor: number) => landing(launches, { setFor, distance, slope: 0, wind: stillAir });
  const farther = believing(distance - within);
  if (!farther.ok) return farther;
  const nearer = believing(distance + within);
  if (!nearer.ok) return nearer;
  const [low, high] = [farther.value.up, nearer.value.up];
  return ok({ farther: low, nearer: high, spread: (high.value - low.value) / (2 * WITHIN) });
}
