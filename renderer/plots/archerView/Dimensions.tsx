import type { ArcherViewMarks } from './marks.ts';

/** A dimension shorter than this has its arrowheads outside [px]. */
const INSIDE = 22;

/** From the centre to what is held, in the plane of the target, and how far what is held may be out. */
export function Dimensions({ marks }: { marks: ArcherViewMarks }) {
  const { dimension, sideways, interval, held, centre, butt, arrow, mirrored, width } = marks;
  const onButt = held.y > butt.y && held.y < butt.y + butt.side;
  const near = onButt ? butt.x - 3 : held.x - (arrow?.half ?? 10) - 5;
  return (
    <g transform={mirrored ? `matrix(-1 0 0 1 ${width} 0)` : undefined}>
      {dimension !== null && (
        <>
          {onButt && <path className="view-across" d={`M${butt.x} ${held.y}H${butt.x + butt.side}`} />}
          <path className="dim-line" d={`M${butt.x - 3} ${centre.y}H${dimension.x - 4}M${near} ${held.y}H${dimension.x - 4}`} />
          <Upright {...dimension} />
        </>
      )}
      {sideways !== null && <Sideways {...sideways} />}
      {interval !== null && (
        <>
          <path className="view-interval case" d={bar(interval)} />
          <path className="view-interval" d={bar(interval)} />
        </>
      )}
    </g>
  );
}

const bar = ({ x, low, high }: { x: number; low: number; high: number }) =>
  `M${x} ${low}V${high}M${x - 4} ${low}h8M${x - 4} ${high}h8`;

function Upright({ x, from, to }: { x: number; from: number; to: number }) {
  const inside = Math.abs(to - from) >= INSIDE;
  const down = to > from ? 1 : -1;
  const head = (y: number, towards: number) => `M${x} ${y}l-1.9 ${-7.5 * towards}h3.8z`;
  return (
    <>
      <path className="dim-line" d={inside ? `M${x} ${from}V${to}` : `M${x} ${from - 14 * down}V${to + 14 * down}`} />
      <path className="view-head" d={head(from, inside ? -down : down) + head(to, inside ? down : -down)} />
    </>
  );
}

function Sideways({ y, from, to }: { y: number; from: number; to: number }) {
  const inside = Math.abs(to - from) >= INSIDE;
  const onward = to > from ? 1 : -1;
  const head = (x: number, towards: number) => `M${x} ${y}l${-7.5 * towards} -1.9v3.8z`;
  return (
    <>
      <path
        className="dim-line"
        d={`M${from} ${y - 4}v8M${to} ${y - 4}v8${inside ? `M${from} ${y}H${to}` : `M${from - 14 * onward} ${y}H${to + 14 * onward}`}`}
      />
      <path className="view-head" d={head(from, inside ? -onward : onward) + head(to, inside ? onward : -onward)} />
    </>
  );
}
