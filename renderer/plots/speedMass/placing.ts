import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';
import type { Box } from '../boxes.ts';
import { label, type Label } from '../labels.ts';
import { FIGURE, NAME, namesOn, type Plotted } from '../placing.ts';
import type { SpeedMassData } from './data.ts';
import { atTheArrow, bandName } from './words.ts';

/** What is drawn, as far as a name has to keep off it or belongs to it. */
export interface Drawn extends Plotted {
  /** This arrow, with the interval of its speed; null where it is too light. */
  readonly arrow: { readonly x: number; readonly y: number; readonly low: number; readonly high: number } | null;
  /** Where this arrow would stand on the axis. */
  readonly arrowX: number;
  /** The zone of arrows that are too light: its right edge; null where there is no limit. */
  readonly tooLight: { readonly x: number } | null;
}

/** This arrow's speed and energy beside its mark, the limit at its edge, what the band holds: each where it is free. */
export function placeLabels(data: SpeedMassData, marks: Drawn, units: UnitChoice): readonly Label[] {
  const { x, y, window, arrow, tooLight } = marks;
  const band = data.samples.map(({ mass, low, high }) => ({ at: mass, low, high }));
  const others: readonly Box[] = [
    { left: marks.arrowX - 3, right: marks.arrowX + 3, top: arrow?.y ?? window.top, bottom: window.bottom },
    ...(arrow === null ? [] : [{ left: arrow.x - 6, right: arrow.x + 6, top: arrow.high - 2, bottom: arrow.low + 2 }]),
    ...(tooLight === null ? [] : [{ left: window.left, right: tooLight.x + 2, top: window.top, bottom: window.bottom }]),
  ];
  const { place, placed } = namesOn(marks, band, others, 0);

  if (arrow !== null && data.arrow.speed !== null) {
    const speed = textQuantity(data.arrow.speed.value, 'speed', units);
    const more = atTheArrow(data, units);
    const above = [10, 18, 28, 40].flatMap((up) => [6, 0, 20, 40].map((out) => ({ x: arrow.x + out, y: arrow.high - up })));
    const below = [24, 34, 46, 60, 76].flatMap((down) => [-10, -24].map((out) => ({ x: arrow.x + out, y: arrow.low + down })));
    const row = (text: string, at: { x: number; y: number }, anchor: 'start' | 'end') => [
      label(speed, at.x, at.y - (text === '' ? 0 : 18), anchor, 'strong', FIGURE),
      ...(text === '' ? [] : [label(text, at.x, at.y, anchor, 'name', NAME)]),
    ];
    [...more, ''].some(
      (text) =>
        place(above.map((at) => row(text, at, 'start'))) || place(below.map((at) => row(text, { ...at, y: at.y + 12 }, 'end'))),
    );
  }
  if (tooLight !== null && data.least !== null) {
    const least = textQuantity(data.least.mass, 'mass', units);
    const source = data.least.from === 'maker' ? 'the maker’s least' : 'least, common practice';
    [`${source}, ${least}`, `least ${least}`, least].some((text) =>
      place([6, 22, 40, 60].map((up) => [label(text, tooLight.x + 7, window.bottom - up, 'start', 'name', NAME)])),
    );
  }
  if (tooLight !== null && tooLight.x - window.left > 62)
    placed.push(label('too light', (window.left + tooLight.x) / 2, window.top + 18, 'middle', 'name', NAME));
  const last = data.samples.at(-1);
  if (last !== undefined) {
    const text = bandName(data);
    const places = [2, 40, 80].flatMap((back) =>
      [8, 16, 26].map((up) => [label(text, x(last.mass) - back, y(bandAt(data, x, back).high) - up, 'end', 'name', NAME)]),
    );
    place(places);
  }
  return placed;
}

/** The sample that lies so many pixels before the curve's end. */
function bandAt({ samples }: SpeedMassData, x: Drawn['x'], back: number) {
  const end = x(samples.at(-1)?.mass ?? 0) - back - 30;
  return samples.find(({ mass }) => x(mass) >= end) ?? { high: 0 };
}
