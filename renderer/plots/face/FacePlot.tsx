import { useContext, useId, useMemo, type ReactNode } from 'react';
import type { Face } from '../../../core/group/index.ts';
import { faceMarks, type DrawnGroup, type FaceMarks, type GroupMarks } from './marks.ts';
import { toPixel, wholeFace, type FaceView } from './geometry.ts';
import { Plumb } from './plumb.ts';
import { Rings } from './Rings.tsx';
import { Shots } from './Shots.tsx';
import './face.css';

interface Props {
  face: Face;
  view: FaceView;
  groups: readonly DrawnGroup[];
  shaftRadius: number;
  showShift: boolean;
  /** The shot in hand, by group. */
  chosen?: { readonly group: number; readonly shot: number } | null;
  /** The shot under the pointer, by group. */
  pointed?: { readonly group: number; readonly shot: number } | null;
  /** What lies over the face: the pointer's loupe, the keyboard's cross. */
  children?: ReactNode;
}

/** The face with its shots, the circles of the centres and the shift between them. */
export function FacePlot({ face, view, groups, shaftRadius, showShift, chosen = null, pointed = null, children }: Props) {
  const clip = useId();
  const plumb = useContext(Plumb) ? toPixel(view, { x: 0, y: 0 }).x : null;
  const marks = useMemo(
    () => faceMarks(face, view, groups, shaftRadius, showShift),
    [face, view, groups, shaftRadius, showShift],
  );
  const cropped = view.half < wholeFace(face.rings[0]?.radius ?? 1).half * 0.98;
  return (
    <>
      <clipPath id={clip}>
        <rect width={view.size} height={view.size} />
      </clipPath>
      <rect className="butt" width={view.size} height={view.size} />
      <g clipPath={`url(#${clip})`}>
        <Rings marks={marks} />
        {marks.figures.map((figure) => (
          <text
            key={figure.points}
            className={`ring-figure ${figure.colour}`}
            x={figure.at.x}
            y={figure.at.y + 4}
            textAnchor="middle"
          >
            {figure.points}
          </text>
        ))}
        {/* Under the shots: it hides none. */}
        {cropped && <WholeFaceKey face={face} view={view} />}
        {plumb !== null && (
          <g className="plumb-line">
            <path className="case" d={`M${plumb} 0V${view.size}`} />
            <path d={`M${plumb} 0V${view.size}`} />
          </g>
        )}
        {marks.groups.map(
          (group, i) =>
            group.circle !== null && (
              <g key={i} className={i === 1 ? 'centre-circle second' : 'centre-circle'}>
                <circle className="case" cx={group.circle.at.x} cy={group.circle.at.y} r={group.circle.radius} />
                <circle cx={group.circle.at.x} cy={group.circle.at.y} r={group.circle.radius} />
              </g>
            ),
        )}
        {marks.groups.map((group, i) => (
          <g key={i} className={i === 1 ? 'centre-oval second' : 'centre-oval'}>
            {group.oval !== null && <Oval oval={group.oval} />}
          </g>
        ))}
        {marks.groups.map((group, i) => (
          <Shots
            key={i}
            group={group}
            second={i === 1}
            radius={marks.shotRadius}
            chosen={chosen?.group === i ? chosen.shot : null}
          />
        ))}
        {/* Over the shots: of very many nothing would be seen below them. */}
        {marks.groups.map((group, i) => (
          <g key={i} className="centre-oval">
            {group.rings.map(({ at, radius, name, nameAt }) => (
              <g key={name}>
                <circle className="case" cx={at.x} cy={at.y} r={radius} />
                <circle cx={at.x} cy={at.y} r={radius} />
                {nameAt !== null && (
                  <text className="group-name" x={nameAt.x} y={nameAt.y + 5} textAnchor="middle">
                    {name}
                  </text>
                )}
              </g>
            ))}
          </g>
        ))}
        {marks.shift !== null && (
          <g className="shift">
            <path className="case" d={`M${marks.shift.from.x} ${marks.shift.from.y}L${marks.shift.to.x} ${marks.shift.to.y}`} />
            <path
              className="line"
              d={`M${marks.shift.from.x} ${marks.shift.from.y}L${marks.shift.to.x - 11 * Math.cos(marks.shift.angle)} ${marks.shift.to.y - 11 * Math.sin(marks.shift.angle)}`}
            />
            <path
              className="head"
              d="M2 0L-13 -5.5L-13 5.5Z"
              transform={`translate(${marks.shift.to.x} ${marks.shift.to.y}) rotate(${(marks.shift.angle * 180) / Math.PI})`}
            />
            <circle className="tail" cx={marks.shift.from.x} cy={marks.shift.from.y} r="4.2" />
          </g>
        )}
        {marks.groups.map(
          (group, i) =>
            group.nameAt !== null && (
              <text key={i} className="group-name" x={group.nameAt.x} y={group.nameAt.y + 5} textAnchor="middle">
                {group.name}
              </text>
            ),
        )}
        <HiddenNumber marks={marks} size={view.size} of={chosen} />
        {pointed?.shot !== chosen?.shot && <HiddenNumber marks={marks} size={view.size} of={pointed} />}
      </g>
      {children}
      <rect className="frame-line" x="0.5" y="0.5" width={view.size - 1} height={view.size - 1} />
    </>
  );
}

/** The number of a shot for which the crowd leaves no room: it is shown over the others while the shot is in hand or pointed at. */
function HiddenNumber({ marks, size, of }: { marks: FaceMarks; size: number; of: Props['chosen'] | null }) {
  const shot = of == null ? undefined : marks.groups[of.group]?.shots.find(({ id }) => id === of.shot);
  if (shot === undefined || shot.number === null || shot.label !== null) return null;
  const above = shot.at.y - marks.shotRadius - 9;
  return (
    <text
      className="shot-number"
      x={Math.max(10, Math.min(size - 10, shot.at.x))}
      y={(above < 9 ? shot.at.y + marks.shotRadius + 9 : above) + 5}
      textAnchor="middle"
    >
      {shot.number}
    </text>
  );
}

/** Drawn thinner than the circle of the centre: it says where shots fall, not where the centre is. */
function Oval({ oval: { at, long, short, turn } }: { oval: NonNullable<GroupMarks['oval']> }) {
  const place = { cx: at.x, cy: at.y, rx: long, ry: short, transform: `rotate(${turn} ${at.x} ${at.y})` };
  return (
    <>
      <ellipse className="case" {...place} />
      <ellipse {...place} />
    </>
  );
}

/** Where on the whole face the window lies. */
function WholeFaceKey({ face, view }: { face: Face; view: FaceView }) {
  const side = 62;
  const whole = { ...wholeFace(face.rings[0]?.radius ?? 1), size: side };
  const marks = faceMarks(face, whole, [], 0, false);
  const half = (view.half / whole.half) * (side / 2);
  return (
    <g transform="translate(10 10)" className="whole-face-key">
      <rect className="key-ground" width={side} height={side} />
      <Rings marks={marks} scale={0.3} />
      <rect className="key-case" x={side / 2 - half} y={side / 2 - half} width={2 * half} height={2 * half} />
      <rect className="key-window" x={side / 2 - half} y={side / 2 - half} width={2 * half} height={2 * half} />
    </g>
  );
}
