/** Numbers that a formula cannot take are a slip of the programmer, not of the archer: records are checked before they get here. */
export function requirePositive(figures: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(figures)) {
    if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be a positive finite number, not ${value}.`);
  }
}

export function requireNotNegative(figures: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(figures)) {
    if (!(value >= 0 && Number.isFinite(value)))
      throw new RangeError(`${name} must be zero or a positive finite number, not ${value}.`);
  }
}
