import type { ScaleLinear } from 'd3';
import { touches } from './boxes.ts';
import { label, type Label } from './labels.ts';
import { textWidth } from './textWidth.ts';

export interface Tick {
  /** Along the axis [px]. */
  readonly at: number;
  /** Null where the next tick's text has taken the room. */
  readonly label: Label | null;
}

interface Unit {
  /** The SI value of one of it. */
  readonly factor: number;
  readonly symbol: string;
  /** The steps that are read easily in it, the smallest first. */
  readonly steps?: readonly number[];
}

const SIZE = 12;
const usualSteps = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
/** A draw is read in even inches: people know 24, 26 and 28, and nobody knows 25. */
export const inchSteps = [1, 2, 4, 8, 16];

/** Every so many units from end to end of a scale in SI: the values in the unit, and where they stand. */
function stepped(scale: ScaleLinear<number, number>, { factor, steps = usualSteps }: Unit, room: number) {
  const [from = 0, to = 1] = scale.domain();
  const pixels = Math.abs(scale(from + factor) - scale(from));
  const step = steps.find((one) => one * pixels >= room) ?? steps.at(-1) ?? 1;
  const first = Math.ceil(from / factor / step - 1e-9);
  const last = Math.floor(to / factor / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const value = Number(((first + i) * step).toFixed(6));
    return { value, at: scale(value * factor) };
  });
}

const texts = (count: number, symbol: string) => (value: number, i: number) =>
  `${value}${i === count - 1 ? ` ${symbol}` : ''}`.replace('-', '−');

/** Ticks under a plot, the unit on the last one, which is written whatever room it takes from the one before. */
export function ticksAcross(scale: ScaleLinear<number, number>, unit: Unit, y: number, right: number): Tick[] {
  const values = stepped(scale, unit, 28);
  const text = texts(values.length, unit.symbol);
  const ticks: Tick[] = [];
  let after: Label | null = null;
  for (let i = values.length - 1; i >= 0; i--) {
    const { value, at } = values[i] ?? { value: 0, at: 0 };
    const words = text(value, i);
    const half = textWidth(words, SIZE, 'text') / 2;
    const one: Label = label(words, Math.min(at, right - half), y + 17, 'middle', 'text', SIZE);
    const free = after === null || !touches({ ...one.box, right: one.box.right + 4 }, after.box);
    ticks.unshift({ at, label: free ? one : null });
    if (free) after = one;
  }
  return ticks;
}

/** Ticks up the left side of a plot. The scale's last value carries the unit. */
export function ticksUp(scale: ScaleLinear<number, number>, unit: Unit, x: number, room = 26): Tick[] {
  const values = stepped(scale, unit, room);
  const text = texts(values.length, unit.symbol);
  return values.map(({ value, at }, i) => ({ at, label: label(text(value, i), x, at + 4, 'end', 'text', SIZE) }));
}

/** How wide the left margin must be for the texts up a scale. */
export function widthUp(scale: ScaleLinear<number, number>, unit: Unit, room = 26): number {
  const values = stepped(scale, unit, room);
  const text = texts(values.length, unit.symbol);
  return Math.max(0, ...values.map(({ value }, i) => textWidth(text(value, i), SIZE, 'text')));
}
