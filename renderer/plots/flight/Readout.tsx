import type { FlightReading } from './data.ts';
import { flightFrame } from './frame.ts';
import type { FlightMarks } from './marks.ts';
import { textWidth } from '../textWidth.ts';

/** The line of figures above the flight, over the distance it speaks of. */
export function Readout({ reading, marks }: { reading: FlightReading; marks: FlightMarks }) {
  const width = textWidth(reading.where, 14, 'strong') + 8 + textWidth(reading.figures, 13, 'note');
  const left = Math.max(0, Math.min(marks.width - width, marks.x(reading.distance) - width / 2));
  return (
    <text className="flight-readout" x={left} y="14" aria-hidden="true">
      <tspan className="where">{reading.where}</tspan>
      <tspan dx="8">{reading.figures}</tspan>
    </text>
  );
}

/** Where it is read, on the curve, with the interval there. */
export function ReadingMark({ reading, marks }: { reading: FlightReading; marks: FlightMarks }) {
  const at = marks.x(reading.distance);
  const [low, value, high] = [marks.y(reading.height.low), marks.y(reading.height.value), marks.y(reading.height.high)];
  const under = Math.min(low, marks.window.bottom);
  return (
    <>
      <path className="flight-cursor" d={`M${at} ${flightFrame.lane}V${marks.axisY + 4}`} />
      {value <= marks.window.bottom && (
        <>
          <path className="flight-interval" d={`M${at} ${high}V${under}M${at - 4} ${high}h8M${at - 4} ${under}h8`} />
          <circle className="flight-dot" cx={at} cy={value} r="4" />
        </>
      )}
    </>
  );
}
