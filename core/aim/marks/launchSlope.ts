import { standardGravity } from '../../units/exact.ts';

/**
 * How far an arrow falls below the line it left along, over a stretch of ground.
 *
 * @equation dy/dx = p,  dp/dx = −g w,  dw/dx = 2 k w √(1 + p²),  w = 1/u²;  by Runge and Kutta's rule of the fourth order in equal steps
 * @param speed - v, launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @param slope - p₀ = tan θ at launch [-]
 * @param ahead - x, along the ground from where the arrow left [m]
 * @returns x tan θ − y [m]
 * @validity still air; within 0.02 mm of `trajectory` at 90 m, at a fraction of its cost: a strip asks for half a million
 * @source own derivation
 * @example fallBelowLine(9.80665, 0, 0, 9.80665).toFixed(9) // "4.903325000"
 */
export function fallBelowLine(speed: number, k: number, slope: number, ahead: number): number {
  const start = (standardGravity * (1 + slope * slope)) / (speed * speed);
  const steps = Math.max(2, Math.ceil(ahead * (24 * k + 14 * start)));
  const h = ahead / steps;
  const drag = 2 * k;
  // a = g w, the rate at which the slope falls off.
  let [p, a, fall] = [slope, start, 0];
  for (let step = 0; step < steps; step++) {
    const a1 = drag * a * Math.sqrt(1 + p * p);
    const [p2, b2] = [p - (h / 2) * a, a + (h / 2) * a1];
    const a2 = drag * b2 * Math.sqrt(1 + p2 * p2);
    const [p3, b3] = [p - (h / 2) * b2, a + (h / 2) * a2];
    const a3 = drag * b3 * Math.sqrt(1 + p3 * p3);
    const [p4, b4] = [p - h * b3, a + h * a3];
    const a4 = drag * b4 * Math.sqrt(1 + p4 * p4);
    fall += h * (slope - (p + 2 * p2 + 2 * p3 + p4) / 6);
    p -= (h / 6) * (a + 2 * b2 + 2 * b3 + b4);
    a += (h / 6) * (a1 + 2 * a2 + 2 * a3 + a4);
  }
  return fall;
}

const nearEnough = 1e-9;

/**
 * The slope at which an arrow must leave to strike what lies level with the eye.
 *
 * @equation y(R − e sin θ; θ) = e cos θ; each flight gives c = fall/(1 + tan²θ), the next slope is the low root of e cos θ = x tan θ − c (1 + tan²θ)
 * @param speed - v, launch speed [m/s]
 * @param k - drag parameter [1/m]
 * @param eyeHeight - e, from the arrow's axis up to the eye [m]
 * @param distance - R, from the eye [m]
 * @returns tan θ, or NaN where the arrow does not carry so far: callers turn it into null or a refusal [-]
 * @validity level ground, still air; as `launchElevation` within 1e-6, and 1e-5 where an arrow hardly carries
 * @source own derivation
 * @example launchSlope(57, 0, 0, 18).toFixed(4) // "0.0272"
 */
export function launchSlope(speed: number, k: number, eyeHeight: number, distance: number): number {
  if (!(distance > Math.abs(eyeHeight))) return NaN;
  const z = 2 * k * distance;
  // The fall of a flat flight as a share of x² (1 + p²): only the first guess.
  let share = (standardGravity / (2 * speed * speed)) * (1 + z / 3 + (z * z) / 12);
  let slope = eyeHeight / distance + share * distance;
  let [lastShare, lastFound] = [NaN, NaN];
  for (let tries = 0; tries < 40; tries++) {
    const cosine = 1 / Math.sqrt(1 + slope * slope);
    const ahead = distance - eyeHeight * slope * cosine;
    const up = eyeHeight * cosine;
    const fall = share * ahead * ahead;
    const under = ahead * ahead - 4 * fall * (up + fall);
    if (!(under >= 0)) return NaN;
    const next = (2 * (up + fall)) / (ahead + Math.sqrt(under));
    const moved = Math.abs(next - slope);
    slope = next;
    // The geometry settles by itself in two rounds; only a slope that stands is worth a flight.
    if (tries === 0) continue;
    const found = fallBelowLine(speed, k, slope, ahead) / (ahead * ahead * (1 + slope * slope));
    const off = found - share;
    if (moved < nearEnough && Math.abs(off) * distance < nearEnough) return slope;
    // Secant on share = found(share), whose slope is small: the plain step first.
    const bend = (found - lastFound) / (share - lastShare);
    [lastShare, lastFound] = [share, found];
    share = Math.abs(bend) < 0.9 ? share + off / (1 - bend) : found;
  }
  return NaN;
}
