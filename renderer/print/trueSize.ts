/** The length of the check line as it should be [mm]. */
export const CHECK = 50;

/** How many times larger what is at true size is drawn for a printer on which the check line measures `checkLine` [m]. */
export const correction = (checkLine: number | null): number => (checkLine === null ? 1 : CHECK / (1000 * checkLine));

/** " Drawn 2.0 % larger for this printer." */
export function correctionText(factor: number): string {
  const percent = Math.abs(100 * (factor - 1));
  return percent < 0.05 ? '' : ` Drawn ${percent.toFixed(1)} % ${factor > 1 ? 'larger' : 'smaller'} to make up for this printer.`;
}
