import { grain } from '../../../core/units/exact.ts';
import { label, type Label } from '../../plots/labels.ts';
import { textWidth } from '../../plots/textWidth.ts';
import { figureBox, figureSize } from '../dimension/figureBox.ts';
import { lane } from '../dimension/lanes.ts';
import type { FieldSpot } from './dimensions.ts';
import type { PartName } from '../../../core/arrow/index.ts';
import type { ArrowPicture, PartPlace } from './picture.ts';
import type { ArrowScale } from './scale.ts';

/** What stands under a part's dot: its figure and its name, and a line more where the figure needs one. */
export interface MassText {
  readonly figure: string;
  readonly name: string;
  readonly more: string | null;
  /** Whether a finding’s mark stands beside the figure. */
  readonly marked: boolean;
}

export interface MassMark extends FieldSpot {
  readonly part: PartPlace;
  readonly x: number;
  /** Its area goes with the mass. */
  readonly radius: number;
  readonly leader: string;
  readonly more: Label | null;
}

/** A dot of one grain has this radius, px; its area goes with its grains, and so does that of the shaft's line. */
const GRAIN_RADIUS = 0.82;
/** Smaller than this a dot is not seen [px]. */
const LEAST_RADIUS = 1.6;
/** From the lane to the middle of the figures, and between two labels [px]. */
const DROP = 33;
const GAP = 10;

const radiusOf = (mass: number) => Math.max(LEAST_RADIUS, GRAIN_RADIUS * Math.sqrt(mass / grain));

/** The masses on the arrow's own length: each part a dot at its place, its figure in a lane below, in order, joined by a leader. */
export function massMarks(
  picture: ArrowPicture,
  texts: Readonly<Record<PartName, MassText>>,
  scale: ArrowScale,
  y: number,
): readonly MassMark[] {
  const parts = [...picture.parts].sort((a, b) => a.at - b.at);
  const sizes = parts.map((part) => {
    const { figure, name, more, marked } = texts[part.name];
    const size = figureSize(figure, [name], marked);
    return { ...size, wide: Math.max(size.width, more === null ? 0 : Math.ceil(textWidth(more, 12, 'text')) + 2) };
  });
  const wishes = parts.map((part, i) => ({ at: scale.at(part.at), size: sizes[i]?.wide ?? 0 }));
  const places = lane(wishes, 0, scale.width, GAP);
  return parts.map((part, i) => {
    const x = scale.at(part.at);
    const size = sizes[i] ?? { ...figureSize('', []), wide: 0 };
    const at = places[i]?.at ?? x;
    const box = figureBox(size, at, y + DROP, 'middle');
    const radius = part.name === 'shaft' ? 0 : radiusOf(part.mass ?? 0);
    const { more } = texts[part.name];
    return {
      part,
      x,
      radius,
      box,
      anchor: 'middle',
      leader: `M${x.toFixed(1)} ${(y + radius + 2).toFixed(1)}V${Math.max(y + 12, y + radius + 3).toFixed(1)}L${at.toFixed(1)} ${(box.top + 1).toFixed(1)}`,
      more: more === null ? null : label(more, at, box.bottom + 10, 'middle', 'text', 12),
    };
  });
}

/** How thick the shaft's line is, so that its area too goes with its grains, px. */
export function shaftStroke(picture: ArrowPicture, scale: ArrowScale): number {
  const shaft = picture.parts.find(({ name }) => name === 'shaft');
  const long = scale.at(picture.length) - scale.at(0);
  return shaft === undefined || shaft.mass === null
    ? 0.8
    : Math.max(0.6, (Math.PI * GRAIN_RADIUS ** 2 * (shaft.mass / grain)) / long);
}
