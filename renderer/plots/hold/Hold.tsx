import { useMemo } from 'react';
import type { Face } from '../../../core/group/index.ts';
import type { Band } from '../../../core/model/band.ts';
import { useSize } from '../../design/index.ts';
import { useUnits } from '../../state/useBench.ts';
import { faceMarks } from '../face/marks.ts';
import { Rings } from '../face/Rings.tsx';
import { Lettered } from '../Lettered.tsx';
import { holdFrame, holdMarks } from './marks.ts';
import '../face/face.css';
import './hold.css';

interface Props {
  hold: Band;
  face: Face;
  /** How far the ground lies below the centre of the face [m]. */
  ground: number;
  sentence: string;
}

/** On a face smaller than this the lines between the rings would hide the colours [px]. */
const SMALL = 48;

/** Where the tip of the arrow stands against the target, to scale. */
export function Hold({ hold, face, ground, sentence }: Props) {
  const units = useUnits();
  const [place, room] = useSize();
  const width = Math.max(220, Math.floor(room?.width ?? 300));
  const marks = useMemo(() => holdMarks(hold, ground, width, units), [hold, ground, width, units]);
  const { centre, butt, scale, groundY, tipY, dimension, interval } = marks;
  const radius = face.rings[0]?.radius ?? 0.4;
  const size = 2 * radius * scale;
  const rings = useMemo(
    () => faceMarks(face, { middle: { x: 0, y: 0 }, half: radius, size }, [], 0, false),
    [face, radius, size],
  );
  const onButt = tipY > butt.y && tipY < butt.y + butt.side;
  const foot = butt.side * 0.32;
  return (
    <div ref={place} className="hold">
      <svg width={width} height={holdFrame.height} role="img" aria-label={`${sentence}, drawn to scale on a ${face.name} face.`}>
        <path className="axis" d={`M${butt.x - 12} ${groundY}H${butt.x + butt.side + 12}`} />
        <path
          className="inner"
          d={`M${centre.x - foot} ${butt.y + butt.side}L${centre.x - foot * 1.35} ${groundY}M${centre.x + foot} ${butt.y + butt.side}L${centre.x + foot * 1.35} ${groundY}`}
        />
        <rect className="hold-butt" x={butt.x} y={butt.y} width={butt.side} height={butt.side} />
        <g
          className={size < SMALL ? 'hold-small' : undefined}
          transform={`translate(${centre.x - size / 2} ${centre.y - size / 2})`}
        >
          <Rings marks={rings} scale={0.6} />
        </g>
        {dimension !== null && (
          <>
            <path
              className="dim-line"
              d={`M${butt.x - 3} ${centre.y}H${dimension.x - 4}M${onButt ? butt.x - 3 : centre.x - 9} ${tipY}H${dimension.x - 4}M${dimension.x} ${dimension.from}V${dimension.to}`}
            />
            <Head x={dimension.x} y={dimension.from} down={dimension.to < dimension.from} />
            <Head x={dimension.x} y={dimension.to} down={dimension.to > dimension.from} />
          </>
        )}
        <path className="hold-case" d={`M${centre.x} ${tipY}l-5 14h10z`} />
        <path className="hold-tip" d={`M${centre.x} ${tipY}l-5 14h10z`} />
        <path className="dim-line" d={`M${onButt ? butt.x + butt.side + 3 : centre.x + 9} ${tipY}H${interval.x - 6}`} />
        {onButt && <path className="hold-across" d={`M${butt.x} ${tipY}H${butt.x + butt.side}`} />}
        <path
          className="hold-interval"
          d={`M${interval.x} ${interval.low}V${interval.high}M${interval.x - 4} ${interval.low}h8M${interval.x - 4} ${interval.high}h8`}
        />
        {marks.labels.map((one) => (
          <Lettered key={one.text + one.y} label={one} halo />
        ))}
      </svg>
    </div>
  );
}

/** A slender arrowhead with its point at (x, y). */
function Head({ x, y, down }: { x: number; y: number; down: boolean }) {
  return <path className="flight-head" d={`M${x} ${y}l-1.9 ${down ? -7.5 : 7.5}h3.8z`} />;
}
