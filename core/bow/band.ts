/** A figure that is not known exactly: the value to go by and the ends of what it may well be. */
export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}
