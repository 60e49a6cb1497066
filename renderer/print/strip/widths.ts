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
  /** The baseline of the warning up the side of a strip that is not proven; null on one that is. */
  readonly warning: number | null;
}

/** For a broad bar, a usual one and a narrow one. */
export const stripWidths: readonly StripWidth[] = [
  { width: 22, long: 5, short: 2.6, mirrored: 1, marker: 6.6, label: 10.8, side: 15.5, warning: null },
  { width: 14, long: 3, short: 1.7, mirrored: 1, marker: 4.4, label: 8, side: null, warning: null },
  { width: 10, long: 2.2, short: 1.3, mirrored: 0.5, marker: 3.1, label: 6.3, side: null, warning: null },
];

/** The same bars, with a warning in place of the lines from the right: a strip that is not proven must not look as good as one that is. */
const unproven: readonly StripWidth[] = [
  { width: 22, long: 5, short: 2.6, mirrored: 0, marker: 6.6, label: 10.8, side: 15.5, warning: 20 },
  { width: 14, long: 3, short: 1.7, mirrored: 0, marker: 4.4, label: 8, side: null, warning: 12.9 },
  { width: 10, long: 1.2, short: 0.8, mirrored: 0, marker: 2, label: 5.2, side: null, warning: 9.3 },
];

export const widthsFor = (proven: boolean): readonly StripWidth[] => (proven ? stripWidths : unproven);
