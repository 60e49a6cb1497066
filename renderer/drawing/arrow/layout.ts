import type { PartName } from '../../../core/arrow/index.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { figureText } from '../dimension/figureBox.ts';
import { arrowDimensions } from './dimensions.ts';
import { massMarks, shaftStroke, type MassText } from './masses.ts';
import { arrowPicture, type ArrowPicture } from './picture.ts';
import { arrowScale } from './scale.ts';
import { arrowShapes } from './shapes.ts';

/** Heights of the arrow's line, of the lane of masses, and of the whole drawing, px. */
const arrowY = 110;
const massY = 156;
const HEIGHT = 234;

/** Where everything of the drawing stands at a width: pure, so that a test can hold every box against every other. */
export function arrowLayout(arrowSet: ArrowSet, units: UnitChoice, width: number) {
  const picture = arrowPicture(arrowSet);
  const scale = arrowScale(picture, width);
  const shapes = arrowShapes(picture, scale, arrowY);
  const { balance } = picture;
  const dimensions = arrowDimensions(
    picture,
    {
      length: figureText('arrowLength', arrowSet.length, units),
      balance: figureText('balance', arrowSet.balance, units, assumedBalance(picture)),
      foc: balance === null ? null : percent(balance.foc),
    },
    scale,
    arrowY - shapes.halfThick,
  );
  return {
    picture,
    scale,
    shapes,
    dimensions,
    masses: massMarks(picture, massTexts(arrowSet, picture, units), scale, massY),
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

function massTexts(arrowSet: ArrowSet, picture: ArrowPicture, units: UnitChoice): Readonly<Record<PartName, MassText>> {
  const shaft = picture.parts.find(({ name }) => name === 'shaft')?.mass ?? null;
  const { fletchingMass, vaneCount } = arrowSet;
  const each =
    fletchingMass === null || vaneCount === null
      ? null
      : `${vaneCount} of ${textQuantity(fletchingMass / vaneCount, 'mass', units)}`;
  const text = (figure: string, name: string, more: string | null = null): MassText => ({ figure, name, more });
  return {
    nock: text(figureText('nockMass', arrowSet.nockMass, units), 'nock'),
    // Most arrows have neither: a blank counts as none, and is shown as that.
    pin: text(figureText('pinMass', arrowSet.pinMass, units, 0), 'pin'),
    wrap: text(figureText('wrapMass', arrowSet.wrapMass, units, 0), 'wrap'),
    fletching: text(figureText('fletchingMass', fletchingMass, units), 'fletching', each),
    shaft: text(
      figureText('linearDensity', arrowSet.linearDensity, units, assumedDensity(arrowSet, picture)),
      'shaft’s mass',
      shaft === null ? null : `${textQuantity(shaft, 'mass', units)} in all`,
    ),
    insert: text(figureText('insertMass', arrowSet.insertMass, units), 'insert'),
    point: text(figureText('pointMass', arrowSet.pointMass, units), 'point'),
  };
}
