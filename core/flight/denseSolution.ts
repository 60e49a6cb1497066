/** A solution that can be read anywhere between its steps: per step and component the five numbers of the continuous extension. */
export interface DenseSolution {
  readonly size: number;
  readonly steps: number;
  /** The step ends, one more than there are steps. */
  readonly times: readonly number[];
  readonly coefficients: readonly number[];
}

/**
 * Read one component of a solution inside one of its steps.
 *
 * @equation u(s) = r₁ + s (r₂ + (1−s)(r₃ + s (r₄ + (1−s) r₅)))
 * @param solution - a solution from `integrate` [record]
 * @param step - which step, from 0 [-]
 * @param component - which component, from 0 [-]
 * @param share - s, how far through the step, 0 to 1 [-]
 * @returns the component there, in the component's own unit [-]
 * @validity exact at both ends of the step and of fourth order between them; places are not checked, since it is read inside loops
 * @source hairer-1993
 * @example readDense({ size: 1, steps: 1, times: [0, 2], coefficients: [2, 8, -8, 0, 0] }, 0, 0, 0.5) // 4
 */
export function readDense(solution: DenseSolution, step: number, component: number, share: number): number {
  const r = solution.coefficients;
  const at = 5 * (solution.size * step + component);
  const left = 1 - share;
  return r[at]! + share * (r[at + 1]! + left * (r[at + 2]! + share * (r[at + 3]! + left * r[at + 4]!)));
}
