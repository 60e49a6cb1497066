import { inch } from '../../../core/units/exact.ts';
import { pathOf } from '../path.ts';
import { bowBehind } from './behind.ts';
import type { DrawnBow } from './figures.ts';
import type { BowLayout } from './standing.ts';
import { Parts } from './Parts.tsx';

/** The same bow from behind, along the string: the string parts the limbs in two, and the arrow stands beside its line. */
export function BehindView({ bow, layout }: { bow: DrawnBow; layout: BowLayout }) {
  const { shape, arrow, xBehind, y } = layout;
  const { string, serving } = shape;
  const [top, bottom] = [Math.max(...string.map(([, v]) => v)), Math.min(...string.map(([, v]) => v))];
  const nock = [xBehind(0), y(arrow.throat[1])] as const;
  const point = [xBehind(-bow.centre), y(arrow.end[1])] as const;
  const fin = (turn: number) => [nock[0] + 5.2 * Math.cos(turn), nock[1] - 5.2 * Math.sin(turn)] as const;
  const away = Math.sign(xBehind(-1) - xBehind(0)) < 0 ? Math.PI : 0;
  return (
    <g className={bow.measured.length ? 'behind-view' : 'behind-view in-lead'}>
      <Parts parts={bowBehind(bow, shape)} x={xBehind} y={y} />
      <path
        className="centre-line"
        d={pathOf([
          [xBehind(0), y(shape.top) - 6],
          [xBehind(0), y(shape.bottom) + 6],
        ])}
      />
      <path
        className="string"
        d={pathOf([
          [xBehind(0), y(top)],
          [xBehind(0), y(bottom)],
        ])}
      />
      <path
        className="serving"
        d={pathOf([
          [xBehind(0), y(serving[0])],
          [xBehind(0), y(serving[1])],
        ])}
      />
      {bow.pass === 'rest and button' && (
        <path
          className="rest-wire"
          d={pathOf([
            [xBehind(0.26 * inch), point[1] + 2],
            [xBehind(-bow.centre) + Math.sign(point[0] - xBehind(1)) * 2, point[1] + 2],
          ])}
        />
      )}
      {/* One vane stands square out from the riser, the other two lie along it. */}
      {[away, away + (2 * Math.PI) / 3, away - (2 * Math.PI) / 3].map((turn) => (
        <path key={turn.toFixed(2)} className="bow-part inner line" d={pathOf([nock, fin(turn)])} />
      ))}
      <circle className="locator" cx={nock[0]} cy={nock[1]} r="2.1" />
    </g>
  );
}
