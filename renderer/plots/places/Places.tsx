import { useMemo } from 'react';
import { Lettered } from '../Lettered.tsx';
import { placesMarks, type Place } from './marks.ts';
import './places.css';

interface Props {
  places: readonly Place[];
  origin: string;
  width: number;
  unit: { readonly factor: number; readonly symbol: string };
  sentence: string;
}

/** Where arrows or groups lie about their mean, each with its 95 % circle. */
export function Places({ places, origin, width, unit, sentence }: Props) {
  const marks = useMemo(() => placesMarks(places, origin, width, unit), [places, origin, width, unit]);
  const { x, y } = marks.origin;
  return (
    <svg className="places" width={width} height={marks.height} role="img" aria-label={sentence}>
      <path className="centre-line" d={`M0 ${y}H${width}M${x} 0V${marks.axisY}`} />
      {marks.places.map((place, i) => (
        <g key={i} className={place.strong ? 'place strong' : 'place'}>
          <circle className="about" cx={place.dot.x} cy={place.dot.y} r={place.r} />
          <circle className="dot" cx={place.dot.x} cy={place.dot.y} r={place.strong ? 4.2 : 3.4} />
        </g>
      ))}
      {marks.places.map(
        (place, i) =>
          place.label !== null && (
            <text
              key={i}
              className={place.strong ? 'place-name strong halo' : 'place-name halo'}
              x={place.label.x}
              y={place.label.y + 4}
              textAnchor="middle"
            >
              {place.name}
            </text>
          ),
      )}
      {marks.originAt !== null && (
        <text className="name halo" x={marks.originAt.x} y={marks.originAt.y + 4} textAnchor="middle">
          {origin}
        </text>
      )}
      <path className="axis" d={`M0 ${marks.axisY}H${width}`} />
      {marks.ticks.map(({ at, label }) => (
        <g key={at}>
          <path className="axis" d={`M${at} ${marks.axisY}v4`} />
          {label !== null && <Lettered label={label} />}
        </g>
      ))}
    </svg>
  );
}
