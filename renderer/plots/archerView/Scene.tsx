import { useId, useMemo } from 'react';
import type { Face } from '../../../core/group/index.ts';
import { faceMarks } from '../face/marks.ts';
import { Rings } from '../face/Rings.tsx';
import type { ArcherViewMarks } from './marks.ts';

/** On a face smaller than this the lines between the rings would hide the colours [px]. */
const SMALL = 48;

/** Ground, target, bow and arrow, drawn for a bow to the right; for the other hand the whole is turned. */
export function Scene({ marks, face }: { marks: ArcherViewMarks; face: Face }) {
  const clip = useId();
  const { width, height, frame, butt, centre, faceSize, stand, bow, string, held, arrow, marker, mirrored } = marks;
  const radius = face.rings[0]?.radius ?? 0.4;
  const rings = useMemo(
    () => faceMarks(face, { middle: { x: 0, y: 0 }, half: radius, size: faceSize }, [], 0, false),
    [face, radius, faceSize],
  );
  return (
    <g transform={mirrored ? `matrix(-1 0 0 1 ${width} 0)` : undefined}>
      <clipPath id={clip}>
        <rect x="0.5" y="0.5" width={width - 1} height={height - 1} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        <rect className="view-ground" x="0" y={frame.horizon} width={width} height={Math.max(0, height - frame.horizon)} />
        {marks.ground.map(({ y, figure }) => (
          <path key={figure} className="grid" d={`M0 ${y}H${width}`} />
        ))}
        <path className="construction" d={stand.lane} />
        <path className="axis" d={`M0 ${frame.horizon}H${width}`} />
        <path className="view-foot" d={`M0 ${marks.foot}H${width}`} />
        <path className="inner" d={stand.back} />
        <path className="view-wood" d={stand.legs} />
        <rect className="view-wood" x={butt.x} y={butt.y} width={butt.side} height={butt.side} />
        <g
          className={faceSize < SMALL ? 'view-small' : undefined}
          transform={`translate(${centre.x - faceSize / 2} ${centre.y - faceSize / 2})`}
        >
          <Rings marks={rings} scale={0.6} />
        </g>
        <rect className="view-string" x={string.x} y="0" width={string.width} height={height} />
        <rect className="view-bow" x={bow.x} y="-2" width={bow.width} height={height + 4} />
        {marker !== null && <ellipse className="view-marker" cx={marker.x} cy={marker.y} rx={marker.rx} ry={marker.ry} />}
        {arrow === null ? (
          <Pin x={held.x} y={held.y} to={bow.x} />
        ) : (
          <g className={held.y < centre.y ? 'view-arrow through' : 'view-arrow'}>
            <path className="shaft" d={arrow.shaft} />
            <path className="point" d={arrow.point} />
          </g>
        )}
      </g>
      <rect className="view-edge" x="0.5" y="0.5" width={width - 1} height={height - 1} />
    </g>
  );
}

/** The pin in its ring, on its rod from the bow. */
function Pin({ x, y, to }: { x: number; y: number; to: number }) {
  return (
    <>
      <path className="view-case" d={`M${x + 9} ${y}H${to}M${x - 9} ${y}a9 9 0 1 1 18 0a9 9 0 1 1 -18 0`} />
      <path className="outline" d={`M${x + 9} ${y}H${to}M${x - 9} ${y}a9 9 0 1 1 18 0a9 9 0 1 1 -18 0`} />
      <circle className="view-dot" cx={x} cy={y} r="2.4" />
    </>
  );
}
