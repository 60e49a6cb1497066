import { inch } from '../../../core/units/exact.ts';
import { pathOf } from '../path.ts';
import type { DrawnBow } from './figures.ts';
import type { BowLayout } from './standing.ts';
import { Parts } from './Parts.tsx';
import type { Place } from './points.ts';

/** The bow braced, from the arrow's side, with the arrow nocked and lying on its rest. */
export function SideView({ bow, layout }: { bow: DrawnBow; layout: BowLayout }) {
  const { shape, arrow, x, y } = layout;
  const on = (places: readonly Place[], closed = false) =>
    pathOf(
      places.map(([u, v]) => [x(u), y(v)] as const),
      closed,
    );
  const { rest } = shape;
  const button = bow.pass === 'rest and button';
  const under = 0.06 * inch;
  return (
    <g className={bow.measured.brace && bow.measured.length ? 'side-view' : 'side-view in-lead'}>
      <path
        className="centre-line"
        d={on([
          [-1 * inch, 0],
          [Math.min(shape.front + 1.2 * inch, bow.arrow), 0],
        ])}
      />
      <Parts parts={shape.parts} x={x} y={y} />
      <path className="string" d={on(shape.string)} />
      <path className="serving" d={on(shape.serving.map((v) => [0, v] as const))} />
      <g className={bow.measured.arrow ? 'nocked' : 'nocked in-lead'}>
        {arrow.vanes.map((vane, i) => (
          <path key={i === 0 ? 'upper' : 'lower'} className="bow-part inner vane" d={on(vane, true)} />
        ))}
        <path className="shaft" d={on(arrow.shaft, true)} />
        <path className="bow-part inner metal" d={on(arrow.point, true)} />
        <path className="bow-part inner hole" d={on(arrow.nock, true)} />
      </g>
      {button && (
        <>
          <path
            className="rest-wire"
            d={on([
              [rest[0] + 0.55 * inch, 0.1 * inch],
              [rest[0] + 0.5 * inch, -under],
              [rest[0] - 0.5 * inch, -under],
            ])}
          />
          <circle className="bow-part inner metal" cx={x(rest[0])} cy={y(bow.shaft / 2)} r="2.6" />
        </>
      )}
      {[bow.nocking - 0.11 * inch, bow.nocking + bow.shaft + 0.11 * inch].map((v) => (
        <rect key={v < bow.nocking ? 'below' : 'above'} className="locator" x={x(0) - 3} y={y(v) - 1} width="6" height="2" />
      ))}
    </g>
  );
}
