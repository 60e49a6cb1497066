/** Where things stand across a strip [mm]. */
export interface StripWidth {
  readonly width: number;
  /** Lines of labelled distances and of the others, in from the left edge; from the right edge `mirrored` times as far. */
  readonly long: number;
  readonly short: number;
  readonly mirrored: number;
  readonly marker: number;
  /** The middle of the labels. */
  readonly label: number;
  /** The baseline of the words up its side; null where there is no room for them. */
  readonly side: number | null;
}

/** For a broad bar, a usual one and a narrow one. */
export const stripWidths: readonly StripWidth[] = [
  { width: 22, long: 5, short: 2.6, mirrored: 1, marker: 6.6, label: 10.8, side: 15.5 },
  { width: 14, long: 3, short: 1.7, mirrored: 1, marker: 4.4, label: 8, side: null },
  { width: 10, long: 2.2, short: 1.3, mirrored: 0.5, marker: 3.1, label: 6.3, side: null },
];
