import { useMemo } from 'react';
import { useSize } from '../../design/index.ts';
import { SetupMark } from '../SetupMark.tsx';
import { overlayMarks, overlaySize, type OverlayData } from './marks.ts';
import './groupsOverlay.css';

/** Where the groups of two set-ups lie, each centre with its 95 % circle. */
export function GroupsOverlay({ data, sentence }: { data: OverlayData; sentence: string }) {
  const [place, room] = useSize();
  const width = Math.max(240, room?.width ?? 380);
  const marks = useMemo(() => overlayMarks(data, width), [data, width]);
  const { origin, axisY } = marks;
  return (
    <div ref={place} className="groups-overlay">
      <svg width={width} height={overlaySize.height} role="img" aria-label={sentence}>
        <clipPath id="overlay-window">
          <path d={`M0 0H${width}V${axisY}H0z`} />
        </clipPath>
        <g clipPath="url(#overlay-window)">
          {marks.rings.map((radius) => (
            <circle key={radius} className="ring" cx={origin.x} cy={origin.y} r={radius} />
          ))}
          <path className="centre-line" d={`M${origin.x} 0V${axisY}M0 ${origin.y}H${width}`} />
          {marks.entries.map((entry) => (
            <g key={entry.setup}>
              {entry.dots !== null && <path className={`shot dots s${entry.setup + 1}`} d={entry.dots} />}
              {entry.shots.map((shot, index) => (
                <g key={index} className="shot">
                  <SetupMark setup={entry.setup} x={shot.x} y={shot.y} size={3} />
                </g>
              ))}
            </g>
          ))}
          {marks.entries.map((entry) => (
            <circle key={entry.setup} className={`setup-line s${entry.setup + 1}`} cx={entry.x} cy={entry.y} r={entry.r} />
          ))}
          {marks.entries.map((entry) => (
            <SetupMark key={entry.setup} setup={entry.setup} x={entry.x} y={entry.y} size={7} />
          ))}
        </g>
        <path className="axis" d={`M0 ${axisY}H${width}`} />
        {marks.ticks.map((tick) => (
          <g key={tick.x}>
            <path className="axis" d={`M${tick.x} ${axisY}v4`} />
            <text className="tick" x={tick.x} y={axisY + 17} textAnchor="middle">
              {tick.text}
            </text>
          </g>
        ))}
        {marks.originLabel !== null && (
          <text className="name halo" x={marks.originLabel.x} y={marks.originLabel.y}>
            {data.origin}
          </text>
        )}
        {marks.entries.map((entry) => entry.leader !== null && <path key={entry.setup} className="dim-line" d={entry.leader} />)}
        {marks.entries.map(
          (entry) =>
            entry.label !== null && (
              <text key={entry.setup} className="name halo" x={entry.label.x} y={entry.label.y} textAnchor="middle">
                {entry.name}
              </text>
            ),
        )}
      </svg>
    </div>
  );
}
