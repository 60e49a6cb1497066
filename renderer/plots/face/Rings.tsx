import { memo } from 'react';
import type { FaceMarks } from './marks.ts';

/** The rings of the face. Face colours appear here and nowhere else. */
export const Rings = memo(function Rings({
  marks,
  scale = 1,
}: {
  marks: Pick<FaceMarks, 'rings' | 'innerTen' | 'centre'>;
  scale?: number;
}) {
  const { x, y } = marks.centre;
  const arm = 4 * scale;
  return (
    <g className="rings">
      {marks.rings.map((ring) => (
        <circle
          key={ring.points}
          className={`ring ${ring.colour}${ring.onBlack ? ' on-black' : ''}`}
          cx={x}
          cy={y}
          r={ring.radius}
        />
      ))}
      <circle className="ring-line" cx={x} cy={y} r={marks.innerTen} />
      <path className="ring-line" d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`} />
    </g>
  );
});
