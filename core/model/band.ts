/** A figure with what is not known about it: the value to go by, and the ends between which the true one is held to lie. */
export interface Band {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}
