/** Something along an arrow that the air pushes aside when the nose is off the path. */
export interface Lifting {
  /** C_Nα on the shaft's cross-section [-]. */
  readonly slope: number;
  /** Where the push acts, from the throat of the nock [m]. */
  readonly at: number;
  /** Over what length it is spread evenly [m]; at one place when left out. */
  readonly over?: number;
}

/** How a nose that is off its path comes back, all against the distance flown. */
export interface YawRates {
  /** κ²: turns the nose back [1/m²]; turns it farther away when negative. */
  readonly turning: number;
  /** d: damps its swing [1/m]. */
  readonly damping: number;
  /** a: bends the path after the nose [1/m]. */
  readonly lift: number;
}

/** The nose where the arrow leaves the bow. */
export interface NoseStart {
  /** α: against the path [rad]. */
  readonly angle: number;
  /** How fast the nose turns [rad/m]; at rest when left out. */
  readonly rate?: number;
}

/** The nose so far down the flight. */
export interface NoseAt {
  /** α, of the nose against the path [rad]. */
  readonly angle: number;
  /** ψ, of the path against the line of the loose [rad]. */
  readonly path: number;
  /** z, beside that line [m]. */
  readonly aside: number;
}

/**
 * How an arrow's nose swings and comes back, from where the air pushes it aside.
 *
 * @equation κ² = ρ A Σ C_i (x_cm − x_i)/(2 I),  d = ρ A Σ C_i ((x_i − x_cm)² + l_i²/12)/(2 I),  a = ρ A Σ C_i/(2 m),  A = π D²/4
 * @param arrow - mass m [kg], inertia I [kg m²], balance x_cm [m] and diameter D [m] [record]
 * @param density - ρ, of the air [kg/m³]
 * @param surfaces - slope C_i [-], place x_i and length l_i [m] of each [list]
 * @returns κ² [1/m²], d [1/m] and a [1/m] [record]
 * @validity small angles, one plane, an arrow that neither bends nor spins; throws RangeError for a mass, an inertia or a diameter that is not above 0
 * @source barrowman-1967; own derivation
 * @example yawRates({ mass: 0.02, inertia: 0.001, balance: 0.4, diameter: Math.sqrt(4 / Math.PI) }, 0.002, [{ slope: 1, at: 0 }]) // {"turning":0.4,"damping":0.16000000000000003,"lift":0.05}
 */
export function yawRates(
  arrow: { readonly mass: number; readonly inertia: number; readonly balance: number; readonly diameter: number },
  density: number,
  surfaces: readonly Lifting[],
): YawRates {
  const { mass, inertia, balance, diameter } = arrow;
  if (!(mass > 0 && inertia > 0 && diameter > 0 && Number.isFinite(mass + inertia + diameter + balance + density)))
    throw new RangeError('An arrow with a mass, an inertia and a diameter above 0 was expected.');
  const area = (Math.PI * diameter ** 2) / 4;
  const sum = (of: (surface: Lifting) => number) => surfaces.reduce((total, surface) => total + surface.slope * of(surface), 0);
  const half = (density * area) / 2;
  return {
    turning: (half * sum(({ at }) => balance - at)) / inertia,
    damping: (half * sum(({ at, over = 0 }) => (at - balance) ** 2 + over ** 2 / 12)) / inertia,
    lift: (half * sum(() => 1)) / mass,
  };
}

/** Below this many radians and metres the closed form loses its figures to rounding, and its series has all of them. */
const CLOSE = 0.5;

/**
 * The nose of an arrow so far down its flight: a damped oscillation about its path.
 *
 * @equation θ″ + d θ′ + κ² α = 0, ψ′ = a α, z′ = ψ, α = θ − ψ: so α″ + 2 γ α′ + Ω² α = 0 with 2 γ = a + d and Ω² = κ² + a d; α, ∫α and ∬α in closed form
 * @param rates - κ² [1/m²], d and a [1/m] [record]
 * @param start - the nose against the path [rad] and how fast it turns [rad/m] [record]
 * @param distance - s, flown [m]
 * @returns angle α [rad], path ψ [rad] and z aside [m] [record]
 * @validity small angles, one plane, a speed that hardly changes; an arrow that is not stable grows without bound, which only its beginning is good for; throws RangeError for figures that are not finite, for s below 0 and for a growth beyond all numbers
 * @source own derivation
 * @example noseAt({ turning: 0.04, damping: 0, lift: 0 }, { angle: 0.01 }, 5 * Math.PI).angle.toFixed(6) // "-0.010000"
 */
export function noseAt(rates: YawRates, start: NoseStart, distance: number): NoseAt {
  const { turning, damping, lift } = rates;
  const { angle, rate = 0 } = start;
  const s = distance;
  if (!(s >= 0 && Number.isFinite(turning + damping + lift + angle + rate + s)))
    throw new RangeError('Finite figures and a distance of 0 or more were expected.');
  const gamma = (lift + damping) / 2;
  const square = turning + lift * damping;
  const slope = rate - lift * angle;
  if (Math.max(2 * Math.abs(gamma), Math.sqrt(Math.abs(square))) * s < CLOSE)
    return aside(lift, bySeries(gamma, square, angle, slope, s));

  const { even, odd } = swing(gamma, square, s);
  const now = angle * even + (slope + gamma * angle) * odd;
  const turningNow = slope * even - (gamma * slope + square * angle) * odd;
  if (!Number.isFinite(now + turningNow)) throw new RangeError('A nose that does not turn away without bound was expected.');
  if (Math.abs(square) * s * s < CLOSE ** 4) return aside(lift, byParts(gamma, square, angle, slope, s));
  const once = (slope + 2 * gamma * angle - turningNow - 2 * gamma * now) / square;
  const twice = (angle - now + (slope + 2 * gamma * angle) * s - 2 * gamma * once) / square;
  return aside(lift, { now, once, twice });
}

/** α and its integrals over the distance. */
interface Swung {
  readonly now: number;
  readonly once: number;
  readonly twice: number;
}

const aside = (lift: number, { now, once, twice }: Swung): NoseAt => ({ angle: now, path: lift * once, aside: lift * twice });

/** e^(−γ s) times cos and sin/w of w s, or times their like where w² = Ω² − γ² is negative. */
function swing(gamma: number, square: number, s: number): { readonly even: number; readonly odd: number } {
  const left = square - gamma * gamma;
  const w = Math.sqrt(Math.abs(left));
  const decay = Math.exp(-gamma * s);
  if (w * s < 1e-6) return { even: decay, odd: decay * s };
  if (left > 0) return { even: decay * Math.cos(w * s), odd: (decay * Math.sin(w * s)) / w };
  const [slow, fast] = [Math.exp((w - gamma) * s), Math.exp(-(w + gamma) * s)];
  return { even: (slow + fast) / 2, odd: (slow - fast) / (2 * w) };
}

/** Powers of s: each derivative of α at the start follows from the two before it. */
function bySeries(gamma: number, square: number, angle: number, slope: number, s: number): Swung {
  let [before, here] = [angle, slope];
  let power = 1;
  const swung = { now: 0, once: 0, twice: 0 };
  for (let n = 0; n < 40; n++) {
    swung.now += before * power;
    swung.once += (before * power * s) / (n + 1);
    swung.twice += (before * power * s * s) / ((n + 1) * (n + 2));
    power *= s / (n + 1);
    [before, here] = [here, -2 * gamma * here - square * before];
  }
  return swung;
}

/** Where nothing turns the nose back the closed form divides by nought: short pieces by the series, laid end to end. */
function byParts(gamma: number, square: number, angle: number, slope: number, s: number): Swung {
  const pieces = Math.ceil((2 * Math.abs(gamma) * s) / CLOSE);
  const piece = s / pieces;
  let [now, turning, once, twice] = [angle, slope, 0, 0];
  for (let i = 0; i < pieces; i++) {
    const over = bySeries(gamma, square, now, turning, piece);
    twice += once * piece + over.twice;
    once += over.once;
    turning += -2 * gamma * (over.now - now) - square * over.once;
    now = over.now;
  }
  return { now, once, twice };
}

/**
 * Where the path points once the nose has settled on it.
 *
 * @equation ψ_∞ = a (θ′₀ + d θ₀)/(κ² + a d)
 * @param rates - κ² [1/m²], d and a [1/m] [record]
 * @param start - the nose against the path [rad] and how fast it turns [rad/m] [record]
 * @returns ψ_∞ against the line of the loose; null for an arrow that does not settle [rad]
 * @validity as noseAt; many arrows have not settled at the target
 * @source own derivation
 * @example settledPath({ turning: 0.04, damping: 0.02, lift: 0.01 }, { angle: 0.01 }).toFixed(8) // "0.00004975"
 */
export function settledPath({ turning, damping, lift }: YawRates, { angle, rate = 0 }: NoseStart): number | null {
  const square = turning + lift * damping;
  if (!(square > 0 && lift + damping > 0)) return null;
  return (lift * (rate + damping * angle)) / square;
}
