const n = (value: number): string => value.toFixed(2).replace(/\.?0+$/, '');

/** A path through places that are already on the sheet [px]. */
export const pathOf = (places: readonly (readonly [number, number])[], closed = false): string =>
  places.length === 0 ? '' : `M${places.map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}${closed ? 'Z' : ''}`;
