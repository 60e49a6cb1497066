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

/** The shots of one group with their arrow numbers. */
export function Shots({
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
        <path d={group.dots} />
      </g>
    );
  }
  return (
    <g>
      {group.shots.map((shot) => (
        <g key={shot.id}>
          {shot.id === chosen && <circle className="shot-chosen" cx={shot.at.x} cy={shot.at.y} r={radius + 6} />}
          <ShotMark second={second} x={shot.at.x} y={shot.at.y} radius={radius} />
        </g>
      ))}
      {group.shots.map(
        (shot) =>
          shot.label !== null && (
            <text key={shot.id} className="shot-number" x={shot.label.at.x} y={shot.label.at.y + 5} textAnchor="middle">
              {shot.label.text}
            </text>
          ),
      )}
    </g>
  );
}
