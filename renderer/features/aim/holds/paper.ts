import type { Face } from '../../../../core/group/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { ok, refuse, type Result } from '../../../../core/model/problem.ts';
import { factorOf, textQuantity, unitOf } from '../../../../core/units/index.ts';
import type { PointPaper, PointRow } from '../../../print/index.ts';
import type { Maker, Span } from '../print/index.ts';
import { holdAt, holdsOf, type Aimed } from './derive.ts';
import { about, holdCell } from './words.ts';

/** Distances a card has no room for more of [count]. */
const MOST_ROWS = 40;

/** The point-of-aim card for these distances: those that this bow should not be raised for are left out and said to be. */
export function pointPaper(aimed: Aimed, { from, to, step }: Span, face: Face, units: UnitChoice): Result<PointPaper> {
  const count = Math.floor((to - from) / step + 1e-6) + 1;
  if (!(count >= 1 && count <= MOST_ROWS))
    return refuse(
      'span',
      `A span of 1 to ${MOST_ROWS} distances was expected, from the nearer to the farther.`,
      'shootingDistance',
    );
  const distances = Array.from({ length: count }, (_, i) => from + i * step);
  const rows = distances.flatMap((distance) => pointRow(aimed, distance, units) ?? []);
  const last = rows.at(-1);
  if (last === undefined)
    return refuse('too-far', 'A distance that this bow need not be raised too far for was expected.', 'shootingDistance');
  const { pointOn } = holdsOf(aimed);
  return ok({
    title: pointOn.ok ? `Points of aim, point on at ${about(pointOn.value, units)}` : 'Points of aim',
    note: `${note(aimed, units)}${rows.length < count ? ` Past ${last.label} this bow would be raised too far.` : ''}`,
    rows,
    face,
  });
}

const note = ({ eyeUp }: Aimed, units: UnitChoice): string =>
  `The tip of the arrow against the centre of the face, in the plane of the target; markers for an eye ${textQuantity(eyeUp, 'length', units)} above level ground. Worked out from speed, drag and anchor, not shot in.`;

function pointRow(aimed: Aimed, distance: number, units: UnitChoice): PointRow[] | null {
  const found = holdAt(aimed, distance);
  if (!found.ok) return null;
  const { hold, ground } = found.value;
  const { figure, band, side } = holdCell(hold, units, ['above', 'below']);
  const [size = '', word = ''] = figure.split(' ');
  return [
    {
      label: textQuantity(distance, 'distance', units),
      hold: side === 'on' ? 'on the centre' : `${size} ${unitOf('drop', units)} ${word}`,
      band,
      side,
      holdM: hold.value,
      ground: ground === null ? null : `marker ${textQuantity(ground.value, 'distance', units)} out`,
    },
  ];
}

/** Works out the card while its distances are chosen, beginning with the usual ones of the unit. */
export function pointsMaker(aimed: Aimed, face: Face, units: UnitChoice): Maker<PointPaper> {
  const factor = factorOf('distance', units);
  const farthest = Math.max(10, Math.min(60, Math.floor(aimed.farthest / factor / 10) * 10));
  return {
    make: (span) => pointPaper(aimed, span, face, units),
    usual: { from: 10 * factor, to: farthest * factor, step: 10 * factor },
  };
}
