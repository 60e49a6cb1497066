import { Solver } from 'odex';
import { forceDrawCurve } from '../../core/bow/index.ts';
import type { LimbBow } from '../../core/bow/index.ts';
import { bracedOf } from '../../core/bow/limbs/braced.ts';
import { hingeOf } from '../../core/bow/limbs/hinge.ts';
import { seeded } from './flightByOdex.ts';

/** A bow whose force-draw curve is the parabola of that fullness. */
export function parabolicBow(weight: number, fullness: number, bow: Omit<LimbBow, 'force'>): LimbBow {
  const curve = forceDrawCurve(weight, bow.draw - bow.brace, fullness);
  return { ...bow, force: (u) => curve(u - bow.brace) };
}

/** Bows as they come, from a child's flatbow to a heavy recurve, with strings from linen to the stiffest fibre. */
export function randomBows(count: number, seed: number): LimbBow[] {
  const next = seeded(seed);
  const between = (low: number, high: number) => low + (high - low) * next();
  return Array.from({ length: count }, () => {
    const brace = between(0.15, 0.24);
    const tipMass = between(0.015, 0.06);
    const stringStiffness = 1e4 * 30 ** next();
    return parabolicBow(between(60, 260), between(0.47, 0.61), {
      arrowMass: between(0.012, 0.04),
      brace,
      draw: brace + between(0.35, 0.52),
      hingeX: between(0, 0.05),
      hingeY: between(0.32, 0.45),
      limb: between(0.38, 0.5),
      tipMass,
      stringStiffness,
      stringMass: between(0.003, 0.012),
      stringDamping: between(0, 0.2) * Math.sqrt(stringStiffness * tipMass),
      hingeDamping: between(0, 0.2),
      fingers: between(0.001, 0.004),
    });
  });
}

export interface Left {
  readonly time: number;
  readonly speed: number;
  readonly u: number;
}

/** Solves a small linear system by elimination with pivoting. */
function solved(rows: number[][]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    const pivot = rows.slice(i).reduce((best, row, k) => (Math.abs(row[i]!) > Math.abs(rows[best]![i]!) ? i + k : best), i);
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    for (let k = i + 1; k < n; k++) {
      const share = rows[k]![i]! / rows[i]![i]!;
      for (let j = i; j <= n; j++) rows[k]![j]! -= share * rows[i]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--)
    x[i] = (rows[i]![n]! - x.reduce((sum, value, j) => (j > i ? sum + rows[i]![j]! * value : sum), 0)) / rows[i]![i]!;
  return x;
}

/**
 * The same stroke by a general-purpose library (extrapolation after Gragg, Bulirsch and Stoer) and from another formulation: Newton's
 * equations of the nock and of the limb tip in the plane, the tip kept on its circle by a force along the arm that is solved for. Only the
 * hinge's moment is taken from the program.
 */
export function strokeByOdex(bow: LimbBow, tolerance: number): Left {
  const braced = bracedOf(bow);
  const hinge = braced.ok ? hingeOf(bow, braced.value) : braced;
  if (!braced.ok || !hinge.ok) throw new RangeError('This bow cannot be drawn.');
  const { slack, spring } = braced.value;
  const { hingeX, hingeY, limb, arrowMass, tipMass, stringMass, stringDamping, hingeDamping, fingers } = bow;
  const sixth = stringMass / 6;
  const held = bow.force(bow.draw);

  const accelerations = (time: number, [u = 0, x = 0, y = 0, vu = 0, vx = 0, vy = 0]: number[]): number[] => {
    const [dx, dy] = [u - x, -y];
    const length = Math.hypot(dx, dy);
    const lengthening = (dx * (vu - vx) - dy * vy) / length;
    const stretch = length - slack;
    const tension = stretch > 0 ? Math.max(0, spring * stretch + stringDamping * lengthening) : 0;
    const [nx, ny] = [(x - hingeX) / limb, (y - hingeY) / limb];
    const turning = (vx * ny - vy * nx) / limb;
    const across = (2 * (hinge.value.moment(Math.atan2(nx, ny)) + hingeDamping * turning)) / limb;
    const pull = time < fingers ? held * (1 - time / fingers) : 0;
    return solved([
      [arrowMass + 2 * sixth, sixth, 0, 0, (-2 * tension * dx) / length + pull],
      [sixth, 2 * (tipMass + sixth), 0, -nx, (2 * tension * dx) / length - across * ny],
      [0, 0, 2 * (tipMass + sixth), -ny, (2 * tension * dy) / length + across * nx],
      [0, nx, ny, 0, -(vx * vx + vy * vy) / limb],
    ]);
  };
  const rates = (time: number, state: number[]): number[] => [...state.slice(3), ...accelerations(time, state).slice(0, 3)];

  const solver = new Solver(6);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.initialStepSize = 1e-5;
  const from = hinge.value.atDraw.theta;
  let time = fingers;
  let state = [bow.draw, hingeX + limb * Math.sin(from), hingeY + limb * Math.cos(from), 0, 0, 0];
  if (fingers > 0) state = solver.solve(rates, 0, state, fingers).y;
  const step = 2e-4;
  for (let tries = 0; tries < 1000; tries++) {
    const next = solver.solve(rates, time, state, time + step).y;
    if (accelerations(time + step, next)[0]! >= 0) break;
    time += step;
    state = next;
  }
  // The last stretch is halved until nothing is left of it.
  for (let half = step / 2; half > 1e-12; half /= 2) {
    const next = solver.solve(rates, time, state, time + half).y;
    if (accelerations(time + half, next)[0]! >= 0) continue;
    time += half;
    state = next;
  }
  return { time, u: state[0]!, speed: -state[3]! };
}
