/** The problem: a system of first-order differential equations. `rate` writes dy/dt into `out`, which it must fill and not keep. */
export interface OdeSystem {
  readonly size: number;
  readonly rate: (time: number, state: Float64Array, out: Float64Array) => void;
}

/** One step of the method at a time, in arrays made once: nothing is allocated while stepping. */
interface Stepper {
  /** Where the last accepted step ended; the start before the first. */
  readonly state: () => Float64Array;
  /** Try a step from the state; the answer is its error, 1 being just tolerable. */
  readonly attempt: (time: number, step: number) => number;
  /** Take the step last tried and append its interpolant, five numbers a component. */
  readonly accept: (step: number, coefficients: number[]) => void;
}

// The tableau of Dormand & Prince 1980, as printed in Hairer, Nørsett & Wanner, table II.5.2. The seventh stage is the end of the step
// itself, and so the first stage of the next.
const [c2, c3, c4, c5] = [1 / 5, 3 / 10, 4 / 5, 8 / 9];
const a21 = 1 / 5;
const [a31, a32] = [3 / 40, 9 / 40];
const [a41, a42, a43] = [44 / 45, -56 / 15, 32 / 9];
const [a51, a52, a53, a54] = [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729];
const [a61, a62, a63, a64, a65] = [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656];
const [a71, a73, a74, a75, a76] = [35 / 384, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84];
// Fifth order less fourth order: the estimated error of the step.
const [e1, e3, e4, e5, e6, e7] = [71 / 57600, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40];
// The last coefficient of the fourth-order continuous extension (same book, section II.6).
const [d1, d3, d4] = [-12715105075 / 11282082432, 87487479700 / 32700410799, -10690763975 / 1880347072];
const [d5, d6, d7] = [701980252875 / 199316789632, -1453857185 / 822651844, 69997945 / 29380423];

/**
 * The steps of the Dormand-Prince pair of order 5(4) for one system.
 *
 * @equation y₁ = y₀ + h Σ b_i k_i,  k_i = f(t + c_i h, y₀ + h Σ a_ij k_j);  error = rms of h Σ e_i k_i / (absolute + relative · |y|)
 * @param system - the number of components and the right-hand side f [record]
 * @param start - y at the start, one number a component [list]
 * @param absoluteTolerance - error of one step that is always tolerable, in the components' own units [-]
 * @param relativeTolerance - error of one step that is tolerable as a share of the component [-]
 * @returns the stepper [record]
 * @validity non-stiff systems; an error that is not a number is handed on as it is
 * @source hairer-1993
 * @example dormandPrinceStep({ size: 1, rate: (t, y, out) => { out[0] = 3 * t * t; } }, [2], 1e-9, 1e-9).attempt(0, 1) < 1e-3 // true
 */
export function dormandPrinceStep(
  system: OdeSystem,
  start: ArrayLike<number>,
  absoluteTolerance: number,
  relativeTolerance: number,
): Stepper {
  const { size: n, rate } = system;
  const stage = new Float64Array(n);
  const [k2, k3, k4, k5, k6] = [
    new Float64Array(n),
    new Float64Array(n),
    new Float64Array(n),
    new Float64Array(n),
    new Float64Array(n),
  ];
  // These four trade places when a step is accepted.
  let [y, next, k1, k7] = [Float64Array.from(start), new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  let begun = false;

  return {
    state: () => y,
    attempt: (t, h) => {
      if (!begun) rate(t, y, k1);
      begun = true;
      for (let i = 0; i < n; i++) stage[i] = y[i]! + h * a21 * k1[i]!;
      rate(t + c2 * h, stage, k2);
      for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (a31 * k1[i]! + a32 * k2[i]!);
      rate(t + c3 * h, stage, k3);
      for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (a41 * k1[i]! + a42 * k2[i]! + a43 * k3[i]!);
      rate(t + c4 * h, stage, k4);
      for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (a51 * k1[i]! + a52 * k2[i]! + a53 * k3[i]! + a54 * k4[i]!);
      rate(t + c5 * h, stage, k5);
      for (let i = 0; i < n; i++)
        stage[i] = y[i]! + h * (a61 * k1[i]! + a62 * k2[i]! + a63 * k3[i]! + a64 * k4[i]! + a65 * k5[i]!);
      rate(t + h, stage, k6);
      for (let i = 0; i < n; i++)
        next[i] = y[i]! + h * (a71 * k1[i]! + a73 * k3[i]! + a74 * k4[i]! + a75 * k5[i]! + a76 * k6[i]!);
      rate(t + h, next, k7);

      let sum = 0;
      for (let i = 0; i < n; i++) {
        const error = h * (e1 * k1[i]! + e3 * k3[i]! + e4 * k4[i]! + e5 * k5[i]! + e6 * k6[i]! + e7 * k7[i]!);
        const ratio = error / (absoluteTolerance + relativeTolerance * Math.max(Math.abs(y[i]!), Math.abs(next[i]!)));
        sum += ratio * ratio;
      }
      return Math.sqrt(sum / n);
    },
    accept: (h, coefficients) => {
      for (let i = 0; i < n; i++) {
        const change = next[i]! - y[i]!;
        const bend = h * k1[i]! - change;
        const twist = change - h * k7[i]! - bend;
        const last = h * (d1 * k1[i]! + d3 * k3[i]! + d4 * k4[i]! + d5 * k5[i]! + d6 * k6[i]! + d7 * k7[i]!);
        coefficients.push(y[i]!, change, bend, twist, last);
      }
      [y, next] = [next, y];
      [k1, k7] = [k7, k1];
    },
  };
}
