/**
 * Whether a figure, as it is shown, says nought.
 *
 * @equation no digit from 1 to 9 in it
 * @param figure - a shown figure, with its sign and without its unit [text]
 * @returns true for "0", "0.00" and "−0" [choice]
 * @validity figures of showQuantity
 * @source own derivation
 * @example readsNought('0.00') // true
 */
export function readsNought(figure: string): boolean {
  return !/[1-9]/.test(figure);
}
