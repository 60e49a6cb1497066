import type { ArrowPicture } from './picture.ts';

/** The arrow's own length on the page. Dimensions, masses and bends all hang on it. */
export interface ArrowScale {
  readonly width: number;
  /** Where the throat of the nock stands, and px per metre along the arrow. */
  readonly throat: number;
  readonly perMetre: number;
  /** How often thicker than to scale the arrow is drawn, so that its edges can be told apart. */
  readonly thickness: number;
  /** Metres to px along the page; nothing leaves it. */
  readonly at: (metres: number) => number;
  /** "1 : 3.7" */
  readonly ratio: string;
}

/** A pixel of the page is 1/96 in: so many make a metre at true size. */
const TRUE_SIZE = 96 / 0.0254;
/** Kept free at both ends, for heads and strokes [px]. */
const EDGE = 3;
/** Thinner than this a shaft is only a line [px]. */
const THIN = 6;

/** The largest scale that holds the whole arrow in the width. */
export function arrowScale({ back, tip, diameter }: Pick<ArrowPicture, 'back' | 'tip' | 'diameter'>, width: number): ArrowScale {
  const perMetre = (width - 2 * EDGE) / (tip - back);
  const throat = EDGE - back * perMetre;
  const ratio = TRUE_SIZE / perMetre;
  return {
    width,
    throat,
    perMetre,
    thickness: [1, 1.5, 2].find((times) => times * diameter * perMetre >= THIN) ?? 3,
    at: (metres) => Math.min(width - EDGE, Math.max(EDGE, throat + metres * perMetre)),
    ratio: `1 : ${ratio.toFixed(1).replace(/\.0$/, '')}`,
  };
}
