import { ok, refuse, type Bundle, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { speedBasis, type SpeedBasis } from './chronograph/speedBasis.ts';
import { CHRONOGRAPH_DOUBT } from './chronograph/speedLine.ts';
import { drawnOf } from './curve/drawn.ts';
import { kindFigures } from './kinds.ts';
import { estimatedSpeed } from './speed.ts';

/** Speed of an arrow of any mass from this bow, and what it rests on. */
export interface MassSpeed extends Band {
  /** Read of an arrow of this very mass; fitted to what was read of others; or estimated from the kind of bow. */
  readonly from: 'chronograph' | 'fitted' | 'estimated';
}

export type SpeedByMass = (mass: number) => Result<MassSpeed>;

/** An arrow nearer than this to the one that was read is that one [kg]. */
const SAME_MASS = 0.0001;

/**
 * Speed against arrow mass from this bow at this draw, worked out once for as many masses as are wanted.
 *
 * @equation (m + K) v²/2 = W: K and W of a credible virtualMassOf from several masses; through a single mass that was read v = v₀ √((m₀ + K)/(m + K)), K of a credible virtualMassOf else the kind's; else estimatedSpeed. W and v₀² go with the stored energy where brace height or draw have been altered since
 * @param bundle - the set-up with its records [record]
 * @returns the speed [m/s] as a function of the arrow's mass [kg], which refuses masses outside the model's limits; or the refusal that names what is missing [function]
 * @validity it falls with mass, always; a compound needs speeds of two masses, or gives that of the mass that was read only
 * @source klopsteg-1943
 * @example speedByMass(exampleBundle).value(0.02).value.from // "estimated"
 */
export function speedByMass(bundle: Bundle): Result<SpeedByMass> {
  const basis = speedBasis(bundle);
  const read = basis.ok ? chronographed(basis.value, bundle) : null;
  if (read !== null) return ok(read);
  // Several speeds that cannot be believed together leave the set-up's own one standing: it is what its arrow did.
  const alone = basis.ok && bundle.setup.chronograph.length > 0 ? speedBasis(withoutTable(bundle)) : basis;
  const own = alone.ok ? chronographed(alone.value, bundle) : null;
  if (own !== null) return ok(own);
  const drawn = drawnOf(bundle);
  if (!drawn.ok) return drawn;
  const first = estimatedSpeed(bundle.bow.bowKind, drawn.value.energy, 0.02);
  if (!first.ok) return first;
  return ok((mass) => {
    const speed = estimatedSpeed(bundle.bow.bowKind, drawn.value.energy, mass);
    return speed.ok ? ok({ ...speed.value, from: 'estimated' }) : speed;
  });
}

/**
 * Speed at which an arrow of one mass leaves this bow.
 *
 * @equation as speedByMass
 * @param bundle - the set-up with its records [record]
 * @param mass - m, arrow [kg]
 * @returns v, value with low and high [m/s], and what it rests on [record]
 * @validity as speedByMass
 * @source klopsteg-1943
 * @example speedFor(exampleBundle, 0.02).value.from // "estimated"
 */
export function speedFor(bundle: Bundle, mass: number): Result<MassSpeed> {
  const speeds = speedByMass(bundle);
  return speeds.ok ? speeds.value(mass) : speeds;
}

const withoutTable = (bundle: Bundle): Bundle => ({ ...bundle, setup: { ...bundle.setup, chronograph: [] } });

/** From what was read; null where that is not to be believed, or says nothing of other masses. */
function chronographed(basis: SpeedBasis, bundle: Bundle): SpeedByMass | null {
  const { line, single, doubt, read } = basis;
  const carried = carriedOver(basis);
  const answer = (mass: number, from: MassSpeed['from'], { value, low, high }: Band): Result<MassSpeed> => {
    const known = given('the speed', { arrowMass: mass });
    if (!known.ok) return known;
    const v = value * carried.factor;
    const off = (end: number) => v * Math.hypot(end / value - 1, carried.doubt);
    return ok({ value: v, low: Math.max(0, v - off(low)), high: v + off(high), from });
  };
  if (line !== null) return doubt === null ? (mass) => answer(mass, 'fitted', line.speed(mass)) : null;
  const kind = kindFigures[bundle.bow.bowKind];
  const own = doubt === null ? basis.virtualMass : null;
  const virtualMass = own ?? kind?.virtualMass ?? null;
  const { mass: m0, speed: v0 } = single;
  return (mass) => {
    const here = Math.abs(mass - m0) <= SAME_MASS;
    if (virtualMass === null && !here)
      return refuse(
        'compound',
        'The speed of other arrows from a compound is not estimated. Shoot arrows of two masses over the chronograph.',
        'chronograph',
      );
    const at = (k: number) => v0 * Math.sqrt(Math.max(m0 + k, m0 / 2) / Math.max(mass + k, mass / 2));
    const value = virtualMass === null ? v0 : at(virtualMass.value);
    const ends = virtualMass === null ? [value] : [at(virtualMass.low), at(virtualMass.high)];
    const out = (end: number) => Math.hypot(end - value, CHRONOGRAPH_DOUBT * value);
    const band = {
      value,
      low: value - out(Math.min(value, ...ends)),
      high: value + out(Math.max(value, ...ends)),
    };
    return answer(mass, here && !read.moved ? 'chronograph' : own === null ? 'estimated' : 'fitted', band);
  };
}

/** Speeds go with the square root of the stored energy; half of what that moves them is its doubt. */
function carriedOver({ read, then, now }: SpeedBasis): { readonly factor: number; readonly doubt: number } {
  if (!read.moved || then === null || now === null) return { factor: 1, doubt: 0 };
  const factor = Math.sqrt(now.energy.value / then.energy.value);
  return { factor, doubt: Math.abs(factor - 1) / 2 };
}
