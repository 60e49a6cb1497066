import type { PartName } from '../../../core/arrow/index.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { figureText } from '../dimension/figureBox.ts';
import { arrowDimensions, type Marked } from './dimensions.ts';
import { massMarks, shaftStroke, type MassText } from './masses.ts';
import { arrowPicture, type ArrowPicture } from './picture.ts';
import { arrowScale } from './scale.ts';
import { arrowShapes } from './shapes.ts';

/** Heights of the arrow's line, of the lane of masses, and of the whole drawing, px. */
const arrowY = 110;
const massY = 156;
const HEIGHT = 234;

/**
 * Where everything of the drawing stands at a width: pure, so that a test can hold every box against every other. What is drawn may still be on its
 * way to what is written.
 */
export function arrowLayout(arrowSet: ArrowSet, units: UnitChoice, width: number, marked: Marked, drawn: ArrowSet = arrowSet) {
  const picture = arrowPicture(drawn);
  const measured = drawn === arrowSet ? picture : arrowPicture(arrowSet);
  const scale = arrowScale(picture, width);
  const shapes = arrowShapes(picture, scale, arrowY);
  const { balance } = measured;
  const dimensions = arrowDimensions(
    picture,
    {
      length: figureText('arrowLength', arrowSet.length, units),
      balance: figureText('balance', arrowSet.balance, units, assumedBalance(measured)),
      foc: balance === null ? null : percent(balance.foc),
    },
    marked,
    scale,
    arrowY - shapes.halfThick,
  );
  return {
    picture,
    /** The same without the movement: what is said and assumed rests on it. */
    measured,
    scale,
    shapes,
    dimensions,
    masses: massMarks(picture, massTexts(arrowSet, measured, units, marked), scale, massY),
    shaftStroke: shaftStroke(picture, scale),
    arrowY,
    massY,
    height: HEIGHT,
  };
}

/** The balance point that follows from the parts, in pencil until somebody measures it. */
export const assumedBalance = ({ balance }: ArrowPicture): number | null =>
  balance === null || balance.measured ? null : balance.at;

/** The mass per length that follows from what was weighed or from the tube, in pencil. */
export function assumedDensity(arrowSet: ArrowSet, { parts, length }: ArrowPicture): number | null {
  const shaft = parts.find(({ name }) => name === 'shaft')?.mass ?? null;
  return arrowSet.linearDensity !== null || shaft === null ? null : shaft / length;
}

const percent = (share: number): string => `${(100 * share).toFixed(1).replace('-', '\u2212')} %`;

function massTexts(
  arrowSet: ArrowSet,
  picture: ArrowPicture,
  units: UnitChoice,
  marked: Marked,
): Readonly<Record<PartName, MassText>> {
  const shaft = picture.parts.find(({ name }) => name === 'shaft')?.mass ?? null;
  const { fletchingMass, vaneCount } = arrowSet;
  const each =
    fletchingMass === null || vaneCount === null
      ? null
      : `${vaneCount} of ${textQuantity(fletchingMass / vaneCount, 'mass', units)}`;
  const text = (field: Measured, name: string, assumed: number | null = null, more: string | null = null): MassText => ({
    figure: figureText(field, arrowSet[field], units, assumed),
    name,
    more,
    marked: marked.has(field),
  });
  return {
    nock: text('nockMass', 'nock'),
    // Most arrows have neither: a blank counts as none, and is shown as that.
    pin: text('pinMass', 'pin', 0),
    wrap: text('wrapMass', 'wrap', 0),
    fletching: text('fletchingMass', 'fletching', null, each),
    shaft: text(
      'linearDensity',
      'shaft’s mass',
      assumedDensity(arrowSet, picture),
      shaft === null ? null : `${textQuantity(shaft, 'mass', units)} in all`,
    ),
    insert: text('insertMass', 'insert'),
    point: text('pointMass', 'point'),
  };
}

type Measured = 'nockMass' | 'pinMass' | 'wrapMass' | 'fletchingMass' | 'linearDensity' | 'insertMass' | 'pointMass';
