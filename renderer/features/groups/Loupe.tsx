import { useId } from 'react';
import { scoreShot, type Face, type Point } from '../../../core/group/index.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { showQuantity } from '../../../core/units/index.ts';
import { faceMarks } from '../../plots/face/marks.ts';
import { scaleOf, toPixel, type FaceView } from '../../plots/face/geometry.ts';
import { Rings } from '../../plots/face/Rings.tsx';

interface Props {
  face: Face;
  view: FaceView;
  at: Point;
  shaftRadius: number;
  /** What the next shot will be: "shot 4 next". */
  next: string;
  /** Instead of that, what a click on a dot does. */
  on: string | null;
  units: UnitChoice;
  shots: readonly Point[];
}

/** How much larger the loupe shows the face. */
const power = 3.2;

/** Room for the two lines under the loupe [px]. */
const legend = 50;

/** The corner for the loupe: never over the pointer, over as few shots as can be, and of those the nearest. The upper left is the whole-face key's. */
function corner(view: FaceView, pointer: Point, radius: number, shots: readonly Point[]): Point {
  const inset = Math.max(radius + 14, 66);
  const [low, high] = [inset, view.size - inset];
  const corners = [
    { x: high, y: low },
    { x: high, y: high - legend },
    { x: low, y: high - legend },
  ];
  const covers = (at: Point, point: Point) =>
    Math.abs(point.x - at.x) < radius + 12 && point.y > at.y - radius - 12 && point.y < at.y + radius + legend + 8;
  const free = corners.filter((at) => !covers(at, pointer));
  const few = shots.map((shot) => toPixel(view, shot));
  const cost = (at: Point) =>
    few.filter((shot) => covers(at, shot)).length * 1e4 + Math.hypot(at.x - pointer.x, at.y - pointer.y);
  return free.reduce((best, at) => (cost(at) < cost(best) ? at : best), free[0] ?? { x: low, y: low });
}

/** A magnified look at where the shot would go, in the corner away from it, with its place and its ring. */
export function Loupe({ face, view, at, shaftRadius, next, on, units, shots }: Props) {
  const clip = useId();
  const here = toPixel(view, at);
  const radius = Math.max(42, view.size * 0.125);
  const middle = corner(view, here, radius, shots);
  const near: FaceView = { middle: at, half: radius / (scaleOf(view) * power), size: 2 * radius };
  const marks = faceMarks(face, near, [], shaftRadius, false);
  const angle = Math.atan2(middle.y - here.y, middle.x - here.x);
  const side = (sign: 1 | -1) => {
    const turn = angle + (sign * Math.PI) / 2;
    return `M${here.x + Math.cos(turn) * 7} ${here.y + Math.sin(turn) * 7}L${middle.x + Math.cos(turn) * radius} ${middle.y + Math.sin(turn) * radius}`;
  };
  const score = scoreShot(at, shaftRadius, face);
  const place = (value: number) => showQuantity(value, 'setting', units, { digits: 0, signed: true }).figure;
  const arm = (dx: number, dy: number) => `M${dx * 6} ${dy * 6}L${dx * (radius - 6)} ${dy * (radius - 6)}`;
  const cross = arm(1, 0) + arm(-1, 0) + arm(0, 1) + arm(0, -1);
  return (
    <g className="loupe" aria-hidden="true">
      <path className="loupe-line" d={side(1) + side(-1)} />
      <circle className="loupe-line" cx={here.x} cy={here.y} r="7" />
      <g transform={`translate(${middle.x} ${middle.y})`}>
        <clipPath id={clip}>
          <circle r={radius} />
        </clipPath>
        <circle className="loupe-case" r={radius + 3} />
        <g clipPath={`url(#${clip})`}>
          <rect className="butt" x={-radius} y={-radius} width={2 * radius} height={2 * radius} />
          <g transform={`translate(${-radius} ${-radius})`}>
            <Rings marks={marks} scale={power} />
          </g>
        </g>
        <path className="loupe-cross-case" d={cross} />
        <path className="loupe-line" d={cross} />
        <circle className="loupe-shaft" r={Math.max(3, shaftRadius * scaleOf(view) * power)} />
        <circle className="loupe-line" r={radius} />
        <rect className="loupe-ground" x={-62} y={radius + 7} width={124} height={37} />
        <text className="strong" y={radius + 22} textAnchor="middle">
          {place(at.x)}, {place(at.y)} {units.setting}
        </text>
        <text className="tick" y={radius + 38} textAnchor="middle">
          {on ?? `${score.points === 0 ? 'off the rings' : `ring ${score.points}`}; ${next}`}
        </text>
      </g>
    </g>
  );
}
