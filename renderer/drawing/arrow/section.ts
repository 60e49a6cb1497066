import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { figureBox, figureSize, figureText } from '../dimension/figureBox.ts';
import { lane } from '../dimension/lanes.ts';
import { TAIL, type Span } from '../dimension/lines.ts';
import type { Box } from '../../plots/boxes.ts';
import type { FieldSpot } from './dimensions.ts';
import { detail } from './nockEnd.ts';
import type { ArrowPicture } from './picture.ts';

/** The section is drawn about so wide, at the next whole enlargement below it [px]. */
const WIDEST = 62;
const TRUE_SIZE = 96 / 0.0254;
const enlargements = [1, 1.5, 2, 3, 4, 5];
/** A tube whose wall nobody measured is drawn with about this share of its diameter, in pencil. */
const PENCIL_WALL = 0.1;
const GAP = 4;
const outerLines = ['outer', 'diameter'] as const;

/** The shaft cut across: a tube with its wall, or solid wood; the cut is hatched. */
export function shaftSection(arrowSet: ArrowSet, picture: ArrowPicture, units: UnitChoice, width: number) {
  const tube = arrowSet.material !== 'wood';
  const times = enlargements.findLast((each) => each * picture.diameter * TRUE_SIZE <= WIDEST) ?? 1;
  const radius = (times * picture.diameter * TRUE_SIZE) / 2;
  const wall = Math.min(radius, arrowSet.wall === null ? radius * 2 * PENCIL_WALL : times * arrowSet.wall * TRUE_SIZE);
  const y = detail.middle;
  const x = radius + 8;
  const edge = x + radius;
  const out = edge + TAIL;
  const sizes = [
    figureSize(figureText('shaftDiameter', arrowSet.diameter, units), outerLines),
    figureSize(figureText('wall', arrowSet.wall, units), ['wall']),
  ].slice(0, tube ? 2 : 1);
  const places = lane(
    sizes.map(({ width: size }, i) => ({ at: i === 0 ? x : out + size / 2, size })),
    0,
    width,
    GAP,
  );
  const spot = (i: number): FieldSpot => ({
    box: figureBox(sizes[i] ?? figureSize('', []), places[i]?.at ?? 0, detail.figures, 'middle'),
    anchor: 'middle',
  });
  const [diameter, wallSpot] = [spot(0), spot(1)];
  const under = (box: Box) => `${(box.left + box.right) / 2} ${box.top + 1}`;
  return {
    width,
    ratio: `${times} : 1`,
    x,
    y,
    radius,
    inner: tube ? radius - wall : 0,
    diameterSpan: { axis: 'across', from: x - radius, to: edge, line: 76, objectFrom: y, objectTo: y } satisfies Span,
    wallSpan: tube
      ? ({ axis: 'across', from: edge - wall, to: edge, line: y, objectFrom: null, objectTo: null } satisfies Span)
      : null,
    leader: `M${x} 79L${under(diameter.box)}${tube ? `M${out} ${y}L${under(wallSpot.box)}` : ''}`,
    diameter: { ...diameter, lines: outerLines },
    wall: tube ? wallSpot : null,
  };
}
