/**
 * A whole number as it is, for a sentence.
 *
 * @equation its digits, thousands parted by commas
 * @param count - a count [-]
 * @returns for instance "1,234" [text]
 * @validity whole numbers
 * @source own derivation
 * @example wholeCount(1234) // "1,234"
 */
export function wholeCount(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}
