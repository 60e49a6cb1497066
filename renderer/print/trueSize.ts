/** The length of the check line as it should be [mm]. */
export const CHECK = 50;

/** How many times larger what is at true size is drawn for a printer on which the check line measures `checkLine` [m]. */
export const correction = (checkLine: number | null): number => (checkLine === null ? 1 : CHECK / (1000 * checkLine));

/** " Drawn 2.0 % larger for this printer." */
function correctionText(factor: number): string {
  const percent = Math.abs(100 * (factor - 1));
  return percent < 0.05 ? '' : ` Drawn ${percent.toFixed(1)} % ${factor > 1 ? 'larger' : 'smaller'} to make up for this printer.`;
}

/** What to do with the check line. A line that is already drawn larger does not say what the printer makes of 50 mm: that takes an empty field. */
export function checkText(factor: number): string {
  const drawn = correctionText(factor);
  const enter =
    drawn === ''
      ? 'enter what it measures beside the preview'
      : 'empty the field beside the preview, print again, and enter what the line measures then';
  return `Measure the check line. If it is not ${CHECK}.0 mm, print once more at 100 %, fitted to nothing; if it still is not, ${enter}.${drawn}`;
}
