/** Width and height of the bar's place, px; the reference stands in the middle. */
export const differenceSize = { width: 176, height: 20, inset: 6 } as const;

interface DifferenceMarks {
  readonly zero: number;
  readonly bar: { readonly from: number; readonly to: number };
  readonly noise: { readonly from: number; readonly to: number };
  readonly real: boolean;
}

/** So many times its noise fills a bar's place: a difference just past its noise then looks as near to it as it is. */
const FILLED_BY = 3;

/** A difference as a bar from the reference, over what chance and measuring alone would do. Each bar has its own scale: its noise is the measure. */
export function differenceMarks(difference: number, noise: number, real: boolean): DifferenceMarks {
  const { width, inset } = differenceSize;
  const zero = width / 2;
  const reach = Math.max(Math.abs(difference), FILLED_BY * noise);
  const place = (value: number) => (reach === 0 ? zero : zero + (value / reach) * (zero - inset));
  const end = place(difference);
  return {
    zero,
    bar: { from: Math.min(zero, end), to: Math.max(zero, end) },
    noise: { from: place(-noise), to: place(noise) },
    real,
  };
}
