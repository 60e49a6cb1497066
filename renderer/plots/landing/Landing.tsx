import { useId, useMemo } from 'react';
import type { Point } from '../../../core/group/index.ts';
import { Rings } from '../face/Rings.tsx';
import { landingMarks, type LandingData, type LandingMarks } from './marks.ts';
import '../face/face.css';
import './landing.css';

interface Props {
  data: LandingData;
  size: number;
  sentence: string;
}

/** The face with where the group will land: its centre with the band, and the oval that holds 95 % of the arrows. */
export function Landing({ data, size, sentence }: Props) {
  const clip = useId();
  const marks = useMemo(() => landingMarks(data, size), [data, size]);
  const { face, oval, shift, bars, labels } = marks;
  const place = { cx: oval.at.x, cy: oval.at.y, rx: oval.rx, ry: oval.ry };
  return (
    <svg className="landing" width={size} height={size} role="img" aria-label={sentence}>
      <clipPath id={clip}>
        <rect width={size} height={size} />
      </clipPath>
      <rect className="butt" width={size} height={size} />
      <g clipPath={`url(#${clip})`}>
        <g className={marks.small ? 'landing-small' : undefined}>
          <Rings marks={face} />
        </g>
        {face.figures.map(({ points, at, colour }) => (
          <text key={points} className={`ring-figure ${colour}`} x={at.x} y={at.y + 4} textAnchor="middle">
            {points}
          </text>
        ))}
        <g className="centre-oval">
          <ellipse className="case" {...place} />
          <ellipse {...place} />
        </g>
        {shift !== null && <Shift from={shift[0]} to={shift[1]} />}
        <Bars bars={bars} />
        <circle className="landing-centre" cx={oval.at.x} cy={oval.at.y} r="5" />
        {labels.map(({ text, at }) => (
          <text key={text} className="group-name" x={at.x} y={at.y + 5} textAnchor="middle">
            {text}
          </text>
        ))}
      </g>
      <rect className="frame-line" x="0.5" y="0.5" width={size - 1} height={size - 1} />
    </svg>
  );
}

/** From the middle of the face to that of the group. */
function Shift({ from, to }: { from: Point; to: Point }) {
  const line = `M${from.x} ${from.y}L${to.x} ${to.y}`;
  return (
    <g className="shift">
      <path className="case" d={line} />
      <path className="line" d={line} />
    </g>
  );
}

/** An interval bar with ends, each way that there is one to be seen. */
function Bars({ bars: { across, up } }: Pick<LandingMarks, 'bars'>) {
  const bar = (from: Point, to: Point, end: string) =>
    `M${from.x} ${from.y}L${to.x} ${to.y}M${from.x} ${from.y}${end}M${to.x} ${to.y}${end}`;
  const paths = [across && bar(across[0], across[1], 'm0 -5v10'), up && bar(up[0], up[1], 'm-5 0h10')].filter(
    (path) => path !== null,
  );
  return (
    <g className="landing-bars">
      {paths.map((path) => (
        <path key={`${path} case`} className="case" d={path} />
      ))}
      {paths.map((path) => (
        <path key={path} d={path} />
      ))}
    </g>
  );
}
