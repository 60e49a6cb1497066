import type { Point } from '../../../../core/group/index.ts';
import { labelPlaces } from './labels.ts';

interface Props {
  holes: readonly { readonly id: number; readonly at: Point; readonly arrow: number | null }[];
  radius: number;
  width: number;
  height: number;
  chosen: number | null;
}

/** Holes as open circles, so that the hole in the picture is seen through them. */
export function HoleMarks({ holes, radius, width, height, chosen }: Props) {
  const named = holes.map(({ at, arrow }) => ({ at, text: arrow === null ? '' : String(arrow) }));
  const places = labelPlaces(named, radius, width, height);
  return holes.map(({ id, at, arrow }, i) => {
    const place = places[i] ?? null;
    return (
      <g key={id} className="photo-hole">
        <circle className="case" cx={at.x} cy={at.y} r={radius} />
        <circle cx={at.x} cy={at.y} r={radius} />
        {id === chosen && <circle className="shot-chosen" cx={at.x} cy={at.y} r={radius + 5} />}
        {place !== null && arrow !== null && (
          <text className="shot-number" x={place.x} y={place.y + 5} textAnchor="middle">
            {arrow}
          </text>
        )}
      </g>
    );
  });
}
