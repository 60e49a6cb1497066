/** How far a long job is: whoever runs it may show this, and may stop by asking for no more. */
export interface Progress {
  /** Of the whole, 0 to 1. */
  readonly share: number;
  /** What is being done, in words. */
  readonly doing: string;
}

/** A long job in short steps, so that it can be shown, and left. */
export type Steps<T> = Generator<Progress, T, void>;

/**
 * A long job done to its end at once.
 *
 * @equation step after step until none is left
 * @param steps - the job [function]
 * @returns what it comes to [record]
 * @validity a job that ends
 * @source own derivation
 * @example finished((function* () { yield { share: 0.5, doing: 'half' }; return 7; })()) // 7
 */
export function finished<T>(steps: Steps<T>): T {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
  }
}
