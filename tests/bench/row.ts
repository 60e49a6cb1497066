/** One figure of the bench: what was measured, beside what it is held against where there is such a thing. */
export interface Row {
  readonly id: string;
  readonly value: number;
  readonly unit: string;
  /** The same work done the plain way, in the same unit and in the same run, or what a person is to wait at most; null where nothing compares. */
  readonly reference: number | null;
  /** value over reference. */
  readonly ratio: number | null;
}

export const row = (id: string, value: number, unit: string, reference: number | null = null): Row => ({
  id,
  value,
  unit,
  reference,
  ratio: reference === null ? null : value / reference,
});

const MICROSECONDS = 1e6;

/** A time in µs, both figures given in seconds. */
export const timed = (id: string, seconds: number, reference: number | null = null): Row =>
  row(id, seconds * MICROSECONDS, 'µs', reference === null ? null : reference * MICROSECONDS);

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? NaN) + upper) / 2;
}
