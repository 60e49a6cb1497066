/** The least of 1, 2, 5, 10, 20 ... and their tenths that is no less than asked for. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5, 10].find((step) => step * power >= least * (1 - 1e-9)) ?? 10);
}
