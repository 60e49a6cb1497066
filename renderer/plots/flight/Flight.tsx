import { useMemo, useState, type KeyboardEvent, type PointerEvent } from 'react';
import { factorOf, textQuantity } from '../../../core/units/index.ts';
import { useSize } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { useUnits } from '../../state/useBench.ts';
import type { FlightData, FlightReading } from './data.ts';
import { flightMarks } from './marks.ts';
import { ReadingMark, Readout } from './Readout.tsx';
import { Scene, Target } from './Scene.tsx';
import { stepped } from './stepped.ts';
import { flightTable } from './table.ts';
import './flight.css';

interface Props {
  data: FlightData;
  title: string;
  /** What must be known of the ground, after how far the heights are stretched; said where the ground is in the picture. */
  ofGround: string;
  /** The whole picture in a sentence, for those who hear it. */
  sentence: string;
  /** The nearest and the farthest distance that the target may be moved to. */
  nearest: number;
  farthest: number;
  onSetFor(distance: number): void;
  /** Told when the target is taken hold of and let go, so that the axis can stand still meanwhile. */
  onHold(held: boolean): void;
  read(distance: number): FlightReading | null;
  /** Where there is little height for it. */
  low?: boolean;
}

/** The flight over its line of sight. The target moves along it; a line of figures follows the pointer and the arrow keys. */
export function Flight({ data, title, ofGround, sentence, nearest, farthest, onSetFor, onHold, read, low = false }: Props) {
  const units = useUnits();
  const [place, room] = useSize();
  const width = Math.max(220, Math.floor(room?.width ?? 740));
  const marks = useMemo(() => flightMarks(data, width, units, low), [data, width, units, low]);
  const [readAt, setReadAt] = useState<number | null>(null);
  const [held, setHeld] = useState(false);

  const step = factorOf('distance', units);
  const readFarthest = Math.min(data.farEnd, data.samples.at(-1)?.distance ?? data.farEnd);
  const limit = (distance: number, low: number, high: number) => Math.max(low, Math.min(high, distance));
  const reading = read(limit(readAt ?? data.setFor, 0, readFarthest));
  const inUnits = (distance: number) => textQuantity(distance, 'distance', units);

  const distanceUnder = (event: PointerEvent<SVGSVGElement>) => {
    const { left } = event.currentTarget.getBoundingClientRect();
    return Math.round(marks.x.invert(event.clientX - left) / step) * step;
  };
  const hold = (now: boolean) => {
    setHeld(now);
    setReadAt(null);
    onHold(now);
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const distance = distanceUnder(event);
    if (held) onSetFor(limit(distance, nearest, farthest));
    else setReadAt(distance < 0 || distance > data.farEnd ? null : distance);
  };
  const onReadKey = (event: KeyboardEvent) => {
    const next = stepped(event.key, event.shiftKey, readAt ?? data.setFor, step, step, readFarthest);
    if (event.key === 'Escape') setReadAt(null);
    if (next === null) return;
    event.preventDefault();
    setReadAt(next);
  };
  const onTargetKey = (event: KeyboardEvent) => {
    const next = stepped(event.key, event.shiftKey, data.setFor, step, nearest, farthest);
    if (next === null) return;
    event.preventDefault();
    onSetFor(next);
  };

  const { window } = marks;
  const said = marks.groundY === null ? stretch(marks.exaggeration) : `${stretch(marks.exaggeration)} ${ofGround}`;
  return (
    <div ref={place} className="flight">
      <div className="flight-title">
        <h2 className="plate">{title}</h2>
        <p className="note">{said}</p>
      </div>
      <Exportable of="flight" title={title} note={said} sentence={sentence} table={() => flightTable(data, units)}>
        <svg
          width={width}
          height={marks.height}
          role="group"
          aria-label={sentence}
          onPointerMove={onPointerMove}
          onPointerLeave={() => setReadAt(null)}
          onPointerUp={() => held && hold(false)}
          onPointerCancel={() => held && hold(false)}
        >
          <g aria-hidden="true">
            <Scene marks={marks}>
              {reading !== null && readAt !== null && !held && <ReadingMark reading={reading} marks={marks} />}
            </Scene>
          </g>
          {reading !== null && <Readout reading={reading} marks={marks} />}
          <g
            className="flight-read"
            role="slider"
            tabIndex={0}
            aria-label="Read the flight at a distance"
            aria-orientation="horizontal"
            aria-valuemin={0}
            aria-valuemax={Math.round(readFarthest / step)}
            aria-valuenow={Math.round((readAt ?? data.setFor) / step)}
            aria-valuetext={reading === null ? 'no reading' : `${reading.where} ${reading.figures}`}
            onKeyDown={onReadKey}
            onFocus={() => setReadAt((now) => now ?? data.setFor)}
            onBlur={() => setReadAt(null)}
          >
            <rect
              className="hit"
              x={window.left}
              y={window.top}
              width={window.right - window.left}
              height={marks.axisY - window.top}
            />
            <rect className="focus-ring" x="1" y={window.top} width={width - 2} height={marks.axisY + 22 - window.top} rx="2" />
          </g>
          <g
            className={held ? 'flight-target held' : 'flight-target'}
            role="slider"
            tabIndex={0}
            aria-label="Set for"
            aria-orientation="horizontal"
            aria-valuemin={Math.ceil(nearest / step)}
            aria-valuemax={Math.floor(farthest / step)}
            aria-valuenow={Math.round(data.setFor / step)}
            aria-valuetext={`${inUnits(data.setFor)}: ${textQuantity(data.top.height, 'drop', units)} above the line of sight at the top`}
            onKeyDown={onTargetKey}
            onPointerDown={(event) => {
              event.currentTarget.ownerSVGElement?.setPointerCapture(event.pointerId);
              hold(true);
            }}
          >
            <Target {...marks.target} />
          </g>
        </svg>
      </Exportable>
    </div>
  );
}

const stretch = (factor: number): string =>
  factor === 1 ? 'Heights to the scale of distances.' : `Heights × ${factor} of distances.`;
