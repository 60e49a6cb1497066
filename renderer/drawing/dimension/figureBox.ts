import { limits, type Measure } from '../../../core/model/limits.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity, unitOf } from '../../../core/units/index.ts';
import type { Box } from '../../plots/boxes.ts';
import { textWidth } from '../../plots/textWidth.ts';

/** The size of the figure and of its name under it, and the lines they stand on [px]. */
const FIGURE = 16;
const FIGURE_LINE = 24;
const NAME = 13;
const NAME_LINE = 17;
/** Room on either side of the figure, inside its field [px]. */
const PAD = 6;

export interface FigureSize {
  readonly width: number;
  readonly height: number;
  /** The width of the field alone. */
  readonly field: number;
  /** From the top to the middle of the figure: where a dimension line meets it. */
  readonly middle: number;
}

/** What a figure's field says: the figure, the assumed one, or that there is none yet. */
export function figureText(measure: Measure, value: number | null, units: UnitChoice, assumed?: number | null): string {
  const use = limits[measure].use;
  const said = value ?? assumed ?? null;
  if (said !== null) return textQuantity(said, use, units);
  return unitOf(use, units) === '' ? 'not yet' : `not yet, ${unitOf(use, units)}`;
}

/** A mark of a finding beside the figure [px]. */
const MARK = 18;

/** How much room a figure takes on the drawing, with its name in one or more lines under it, and the mark of a finding beside it. */
export function figureSize(text: string, name: readonly string[], marked = false): FigureSize {
  const field = Math.ceil(textWidth(text, FIGURE, 'strong')) + 2 * PAD + (marked ? MARK : 0);
  const names = name.map((line) => Math.ceil(textWidth(line, NAME, 'name')) + 2);
  return {
    width: Math.max(field, ...names),
    height: FIGURE_LINE + name.length * NAME_LINE,
    field,
    middle: FIGURE_LINE / 2,
  };
}

/** The box of a figure whose field's middle stands at a point; the field begins, ends or is centred there. */
export function figureBox(size: FigureSize, x: number, y: number, anchor: 'start' | 'middle' | 'end'): Box {
  const left = anchor === 'start' ? x : anchor === 'end' ? x - size.width : x - size.width / 2;
  return { left, right: left + size.width, top: y - size.middle, bottom: y - size.middle + size.height };
}
