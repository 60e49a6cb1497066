/** Nearer than this two distances are one [m]. */
const SAME = 0.005;

export const isSame = (one: number, other: number): boolean => Math.abs(one - other) < SAME;
