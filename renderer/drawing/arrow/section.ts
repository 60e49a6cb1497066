import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { figureBox, figureSize, figureText } from '../dimension/figureBox.ts';
import { TAIL, type Span } from '../dimension/lines.ts';
import { detail } from './nockEnd.ts';
import type { ArrowPicture } from './picture.ts';

/** The section is drawn about so wide, at the next whole enlargement below it [px]. */
const WIDEST = 62;
const TRUE_SIZE = 96 / 0.0254;
const enlargements = [1, 1.5, 2, 3, 4, 5];
/** A tube whose wall nobody measured is drawn with about this share of its diameter, in pencil. */
const PENCIL_WALL = 0.1;

/** The shaft cut across: a tube with its wall, or solid wood; the cut is hatched. */
export function shaftSection(arrowSet: ArrowSet, picture: ArrowPicture, units: UnitChoice, width: number) {
  const tube = arrowSet.material !== 'wood';
  const times = enlargements.findLast((each) => each * picture.diameter * TRUE_SIZE <= WIDEST) ?? 1;
  const radius = (times * picture.diameter * TRUE_SIZE) / 2;
  const wall = Math.min(radius, arrowSet.wall === null ? radius * 2 * PENCIL_WALL : times * arrowSet.wall * TRUE_SIZE);
  const outerSize = figureSize(figureText('shaftDiameter', arrowSet.diameter, units), ['outer diameter']);
  const wallSize = figureSize(figureText('wall', arrowSet.wall, units), ['wall']);
  const x = Math.max(radius + 4, outerSize.width / 2);
  const y = detail.middle;
  const diameterSpan: Span = { axis: 'across', from: x - radius, to: x + radius, line: 76, objectFrom: y, objectTo: y };
  const edge = x + radius;
  const wallSpan: Span = {
    axis: 'across',
    from: edge - wall,
    to: edge,
    line: y,
    objectFrom: null,
    objectTo: null,
    leadTo: edge + TAIL + 10,
  };
  const wallBox = figureBox(wallSize, edge + TAIL + 14, y, 'start');
  return {
    width,
    ratio: `${times} : 1`,
    x,
    y,
    radius,
    inner: tube ? radius - wall : 0,
    diameterSpan,
    wallSpan: tube ? wallSpan : null,
    leader: `M${x} 79V${detail.figures - 12}`,
    diameter: { box: figureBox(outerSize, x, detail.figures, 'middle'), anchor: 'middle' as const },
    wall: tube ? { box: wallBox, anchor: 'start' as const } : null,
  };
}
