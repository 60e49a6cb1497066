import { memo } from 'react';
import type { GroupMarks } from './marks.ts';

const diamond = (x: number, y: number, r: number) => `M${x} ${y - r}l${r} ${r}l${-r} ${r}l${-r} ${-r}z`;

/** The mark of a group: the first is a disc in a light casing, the second a light diamond in a dark one; both read on every ring. */
function ShotMark({ second, x, y, radius }: { second: boolean; x: number; y: number; radius: number }) {
  if (second) return <path className="shot-diamond" d={diamond(x, y, radius * 1.25)} />;
  return (
    <g>
      <circle className="shot-case" cx={x} cy={y} r={radius + 1.6} />
      <circle className="shot-disc" cx={x} cy={y} r={radius} />
    </g>
  );
}

/** A shot that somebody left out: the casing alone, hollow and crossed, whichever group it is of. */
function OutMark({ x, y, radius }: { x: number; y: number; radius: number }) {
  const arm = radius + 2.5;
  const cross = `M${x - arm} ${y - arm}l${2 * arm} ${2 * arm}M${x - arm} ${y + arm}l${2 * arm} ${-2 * arm}`;
  return (
    <g className="shot-out">
      <circle className="case" cx={x} cy={y} r={radius} />
      <path className="case" d={cross} />
      <circle cx={x} cy={y} r={radius} />
      <path d={cross} />
    </g>
  );
}

/** The shots of one group with their arrow numbers. They stay as they are while a pointer or a cross moves over them. */
export const Shots = memo(function Shots({
  group,
  second,
  radius,
  chosen,
}: {
  group: GroupMarks;
  second: boolean;
  radius: number;
  chosen: number | null;
}) {
  if (group.dots !== null) {
    return (
      <g className={second ? 'dots second' : 'dots'} strokeWidth={radius * 2}>
        {[true, false].map((before) => (
          <g key={String(before)} className={before ? 'earlier' : 'now'}>
            {group.dots?.map(({ key, earlier, path }) => earlier === before && <path key={key} d={path} />)}
          </g>
        ))}
        {group.outDots !== null && <path className="out-dots" d={group.outDots} />}
      </g>
    );
  }
  return (
    <g>
      {group.shots.map((shot) => (
        <g key={shot.id} className={shot.earlier ? 'shot-earlier' : undefined}>
          {shot.id === chosen && <circle className="shot-chosen" cx={shot.at.x} cy={shot.at.y} r={radius + 6} />}
          {shot.out ? (
            <OutMark x={shot.at.x} y={shot.at.y} radius={radius} />
          ) : (
            <ShotMark second={second} x={shot.at.x} y={shot.at.y} radius={radius} />
          )}
        </g>
      ))}
      {group.shots.map(
        (shot) =>
          shot.label !== null && (
            <text
              key={shot.id}
              className={shot.out ? 'group-name' : 'shot-number'}
              x={shot.label.at.x}
              y={shot.label.at.y + 5}
              textAnchor="middle"
            >
              {shot.label.text}
            </text>
          ),
      )}
    </g>
  );
});
