/** What the tests use of the package odex 2.0.4: its own TypeScript source does not pass strict checking, so tests/tsconfig.json points here. */
export declare class Solver {
  constructor(size: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  initialStepSize: number;
  solve(f: (x: number, y: number[]) => number[], x: number, y: number[], xEnd: number): { y: number[]; nEval: number };
}
