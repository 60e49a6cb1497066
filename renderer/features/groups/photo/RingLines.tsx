import { useMemo } from 'react';
import type { Face } from '../../../../core/group/index.ts';
import { toPicture, type Homography } from '../../../../core/photo/index.ts';

const SIDES = 96;

/** The rings of a face as they lie in a picture of that width [px]. */
export function RingLines({ face, homography, width }: { face: Face; homography: Homography; width: number }) {
  const paths = useMemo(
    () => face.rings.map(({ points, radius }) => ({ points, path: ringPath(homography, radius, width) })),
    [face, homography, width],
  );
  return paths.map(({ points, path }) => (
    <g key={points} className="photo-ring">
      <path className="case" d={path} />
      <path d={path} />
    </g>
  ));
}

function ringPath(homography: Homography, radius: number, width: number): string {
  const points = Array.from({ length: SIDES }, (_, i) => {
    const angle = (2 * Math.PI * i) / SIDES;
    const { x, y } = toPicture(homography, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
    return `${(x * width).toFixed(1)} ${(y * width).toFixed(1)}`;
  });
  return `M${points.join('L')}Z`;
}
