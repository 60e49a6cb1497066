import { extent, max, min, scaleLinear } from 'd3';
import { spread } from '../spread.ts';
import { timelineSize, type Time, type TimelineData, type TimelineMarks } from './data.ts';

/** One or two arrows are no figure of how the bow shoots now. */
const FEWEST = 3;

/** Group sizes as open dots with their intervals; dots that would lie on each other are parted. */
export function panelMarks(
  points: TimelineData['sizes']['points'],
  x: Time,
  top: number,
  bottom: number,
  left: number,
  right: number,
): NonNullable<TimelineMarks['panel']> {
  const largest = max(points, (point) => point.value) ?? 0;
  // Two arrows tell almost nothing: their interval would flatten all the others, so it may run out of the panel.
  const most = Math.min(max(points, (point) => point.high) ?? 0, 2.2 * largest);
  const least = min(points, (point) => point.low) ?? 0;
  const y = scaleLinear([least, most], [bottom - 6, top + 6]).nice(4);
  const low = y.domain()[0] ?? 0;
  y.domain([low, Math.max(y.domain()[1] ?? most, most)]);
  const at = points.map((point) => x(point.at));
  const apart = spread(at, timelineSize.dot, left + 8, right - 8);
  const [fewest = 0, greatest = 0] = extent(points, (point) => point.shots);
  const dots = points.map((point, index) => ({
    x: apart[index] ?? 0,
    at: at[index] ?? 0,
    y: y(point.value),
    r: 2 + 0.55 * Math.sqrt(Math.min(point.shots, 60)),
    from: y(Math.max(point.low, low)),
    to: y(Math.min(point.high, y.domain()[1] ?? most)),
    beyond: point.high > (y.domain()[1] ?? most),
    tried: point.tried !== undefined,
    said: `${point.text}, ${point.shots} arrows${point.tried === undefined ? '' : `: ${point.tried}`}`,
  }));
  const now = points.findLastIndex(({ shots, tried }) => tried === undefined && shots >= FEWEST);
  const last = dots[now];
  return {
    top,
    bottom,
    grid: y.ticks(4).map((tick) => ({ y: y(tick), text: y.tickFormat(4)(tick).replace('-', '−') })),
    dots,
    last: last === undefined ? null : { x: right + 10, y: last.y + 5, text: points[now]?.text ?? '', anchor: 'start' },
    dotNote:
      greatest > fewest
        ? ['larger:', 'more arrows'].map((text, line) => ({ x: 0, y: top + 60 + 16 * line, text, anchor: 'start' }))
        : [],
  };
}
