/** The figure at a tick of an axis with nought in it: a plus above nought, a true minus below. */
export function signed(value: number): string {
  const figure = Number(value.toFixed(6));
  return `${figure > 0 ? '+' : ''}${figure}`.replace('-', '−');
}
