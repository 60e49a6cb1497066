interface Sum {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}
export function vitestSum(file: string, isOk: boolean): Sum;
export function playwrightSum(file: string, isOk: boolean): Sum;
