import type { Band } from '../model/band.ts';
import type { Bundle } from '../model/index.ts';
import { requirePositive } from '../model/positive.ts';
import type { SinceTimed } from './chronograph/sinceTimed.ts';
import { believable, speedBasis } from './chronograph/speedBasis.ts';
import { CHRONOGRAPH_DOUBT } from './chronograph/speedLine.ts';
import { drawnOf } from './curve/drawn.ts';
import { kindFigures } from './kinds.ts';
import { AMO_ADDS } from './stroke.ts';

/** A draw that nobody measured, and the least stroke that is reckoned with [m]: from memory. */
const usualDraw = 0.71;
const LEAST_STROKE = 0.1;
/** A compound's cams make each model a kind of its own: between a slip's limits it may be anything [kg]. From memory. */
const anyVirtualMass: Band = { value: 0.006, ...believable };

/**
 * A speed that was measured, carried over to another arrow or another brace height.
 *
 * @equation v = v₀ √((m₀ + K)/(m + K)) √(E/E₀), K of a credible virtualMassOf, else the kind's; E of the force-draw curve, else ∝ power stroke; the band has K at its ends, half of what the brace height moves, and the chronograph's 1 %, in squares
 * @param bundle - the set-up with its records [record]
 * @param speed - v₀, as measured [m/s]
 * @param since - the whole arrow's mass [kg] and the brace height [m], then and now [record]
 * @returns v, value with low and high [m/s] [record]
 * @validity RangeError for a speed that is not positive and finite; a compound, of which no K is known, has one of 2 to 30 g
 * @source klopsteg-1943; from memory
 * @example carriedSpeed(exampleBundle, 55, { mass: { then: 0.024, now: 0.024 }, brace: null }).value // 55
 */
export function carriedSpeed(bundle: Bundle, speed: number, { mass, brace }: SinceTimed): Band {
  requirePositive({ speed });
  const virtualMass = virtualMassHere(bundle);
  const byMass = (k: number): number =>
    mass === null ? 1 : Math.sqrt(Math.max(mass.then + k, mass.then / 2) / Math.max(mass.now + k, mass.now / 2));
  const moved = brace === null ? { factor: 1, doubt: 0 } : byBrace(bundle, brace.then, brace.now);
  const value = speed * byMass(virtualMass.value) * moved.factor;
  const ends = [virtualMass.low, virtualMass.high].map((k) => speed * byMass(k) * moved.factor);
  const out = (end: number) => Math.hypot(end - value, CHRONOGRAPH_DOUBT * value, moved.doubt * value);
  return { value, low: Math.max(0, value - out(Math.min(value, ...ends))), high: value + out(Math.max(value, ...ends)) };
}

function virtualMassHere(bundle: Bundle): Band {
  const basis = speedBasis(bundle);
  const own = basis.ok && basis.value.doubt === null ? basis.value.virtualMass : null;
  return own ?? kindFigures[bundle.bow.bowKind]?.virtualMass ?? anyVirtualMass;
}

/** Speeds go with the square root of the stored energy; half of what that moves them, and never less than of what the stroke does, is its doubt. */
function byBrace(bundle: Bundle, then: number, now: number): { readonly factor: number; readonly doubt: number } {
  const { archer, setup } = bundle;
  const stroke = (braceHeight: number) => Math.max(LEAST_STROKE, (archer.drawLength ?? usualDraw) - AMO_ADDS - braceHeight);
  const byStroke = Math.sqrt(stroke(now) / stroke(then));
  const energy = (braceHeight: number): number | null => {
    const drawn = drawnOf({ ...bundle, setup: { ...setup, settings: { ...setup.settings, braceHeight } } });
    return drawn.ok && drawn.value.energy.value > 0 ? drawn.value.energy.value : null;
  };
  const [before, after] = [energy(then), energy(now)];
  const factor = before === null || after === null ? byStroke : Math.sqrt(after / before);
  return { factor, doubt: Math.max(Math.abs(factor - 1), Math.abs(byStroke - 1)) / 2 };
}
