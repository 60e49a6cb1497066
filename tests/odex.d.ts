/** What the tests use of the package odex 2.0.4: its own TypeScript source does not pass strict checking, so tests/tsconfig.json points here. */
export declare class Solver {
  constructor(size: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  initialStepSize: number;
  denseOutput: boolean;
  solve(
    f: (x: number, y: number[]) => number[],
    x: number,
    y: number[],
    xEnd: number,
    /** After each step; false ends it. `read` gives a component anywhere in the step. */
    seen?: (
      step: number,
      from: number,
      to: number,
      y: number[],
      read: (component: number, x: number) => number,
    ) => boolean | void,
  ): { y: number[]; nEval: number };
}
