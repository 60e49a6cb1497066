import type { Box } from '../../plots/boxes.ts';
import { figureSize, type FigureSize } from '../dimension/figureBox.ts';
import type { Span } from '../dimension/lines.ts';
import type { NockedArrow } from './arrow.ts';
import type { BowShape } from './shape.ts';

/** The figures that stand on the drawing itself. */
export const onDrawing = ['upper', 'brace', 'lower', 'tiller', 'string', 'length', 'arrow'] as const;
export type OnDrawing = (typeof onDrawing)[number];

export interface Standing {
  readonly box: Box;
  readonly anchor: 'start' | 'middle' | 'end';
}

export interface BowLayout {
  readonly width: number;
  readonly height: number;
  /** Drawn at one to so many, on a screen of 96 px to the inch. */
  readonly scale: number;
  readonly shape: BowShape;
  readonly arrow: NockedArrow;
  /** px from the left for a distance from the string, in the view from the side; and from the string's line in the view from behind. */
  readonly x: (u: number) => number;
  readonly xBehind: (z: number) => number;
  readonly y: (v: number) => number;
  readonly figures: Readonly<Record<OnDrawing, Standing>>;
  readonly dimensions: Readonly<Record<Exclude<OnDrawing, 'tiller'>, Span>>;
  /** From a dimension line to its figure, where that had to move. */
  readonly leaders: readonly (readonly [x: number, y: number])[][];
  readonly keys: Readonly<Record<'A' | 'B', { readonly box: Box; readonly ring: readonly [x: number, y: number, r: number] }>>;
  /** Free ground beside the lower limb, for what is set and not drawn; null where there is none. */
  readonly corner: Box | null;
  /** From where to where the maker wants the brace height, on its dimension line; null without the maker's range. */
  readonly band: Box | null;
  /** From the grip out to that band, where it lies beyond the dimension line; nothing where the line reaches it. */
  readonly bandReach: readonly (readonly [x: number, y: number])[];
}

export interface FigureText {
  readonly text: string;
  readonly name: readonly string[];
  /** A finding's mark stands beside it. */
  readonly marked: boolean;
}

export interface BowTexts {
  /** What each figure says, and its name line by line. */
  readonly figures: Readonly<Record<OnDrawing, FigureText>>;
}

/** Under a figure that begins or ends at its line the name is set in as far as the figure is [px]. */
const SET_IN = 6;

export function sizeOf({ text, name, marked }: FigureText): FigureSize {
  const size = figureSize(text, name, marked);
  return { ...size, width: Math.max(size.field, figureSize('', name).width + SET_IN) };
}
