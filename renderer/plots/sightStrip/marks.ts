import type { Band } from '../../../core/model/band.ts';
import { label, type Label } from '../labels.ts';

/** A distance on the bar. */
export interface StripSample {
  /** In the unit that is shown: 30. */
  readonly distance: number;
  /** Downward along the bar, with its 95 % [m]; null where the arrow does not carry so far. */
  readonly place: Band | null;
  readonly weak: boolean;
}

/** What the strip is drawn from. */
export interface SightStripData {
  /** In even steps of the unit, nearest first. */
  readonly samples: readonly StripSample[];
  /** Marks that were shot in: where they were read [m]. */
  readonly known: readonly { readonly distance: number; readonly place: number }[];
  /** The ends of the bar, downward [m]; null where nobody gave them. */
  readonly ends: { readonly upper: number | null; readonly lower: number | null };
  readonly distanceUnit: string;
}

/** Pixels to the metre at true size: 96 to the inch, as browsers have it. */
const TRUE = 96 / 0.0254;
/** Parts of true size that are said easily, the largest first. */
const sizes = [
  [1, 'true size'],
  [3 / 4, '3/4 of true size'],
  [1 / 2, 'half of true size'],
  [1 / 3, '1/3 of true size'],
  [1 / 4, '1/4 of true size'],
  [1 / 5, '1/5 of true size'],
  [1 / 10, '1/10 of true size'],
  [1 / 20, '1/20 of true size'],
] as const;

/** Pixels: the strip and its lanes; what a tick and a label keep free; how high it may be. */
export const stripFrame = { left: 1, bar: 56, intervals: 80, width: 96, edge: 14, foot: 34, most: 440 } as const;
const LETTER = 14;
const ticks = { ten: 26, five: 14, one: 7 } as const;
const NEXT_TICK = 2.4;
const NEXT_LABEL = 15;
/** The rule under the strip, at its scale: the longest of these that fits [m]. */
const rules = [0.02, 0.05, 0.1, 0.2] as const;

interface StripTick {
  readonly y: number;
  readonly length: number;
  readonly weak: boolean;
}

export interface SightStripMarks {
  readonly width: number;
  readonly height: number;
  /** "true size", "half of true size". */
  readonly size: string;
  readonly top: number;
  readonly bottom: number;
  readonly ticks: readonly StripTick[];
  readonly labels: readonly (Label & { readonly weak: boolean })[];
  readonly intervals: readonly {
    readonly y: number;
    readonly low: number;
    readonly high: number;
    /** Past the drawn strip: the end stays open. */
    readonly open: readonly [low: boolean, high: boolean];
    readonly weak: boolean;
  }[];
  readonly known: readonly { readonly y: number }[];
  readonly ends: readonly number[];
  readonly rule: { readonly y: number; readonly from: number; readonly to: number; readonly label: Label };
}

const isRound = (distance: number, by: number): boolean => Math.abs(distance / by - Math.round(distance / by)) < 1e-6;

/** A strip at the largest size that fits: a tick for each metre or yard that has room, a figure at every tenth and at what is known, an interval beside it. */
export function sightStripMarks({ samples, known, ends, distanceUnit }: SightStripData): SightStripMarks | null {
  const carried = samples.filter((one): one is StripSample & { place: Band } => one.place !== null);
  const values = carried.map(({ place }) => place.value);
  // Nearer than where the pin stands highest the marks lie over those beyond.
  const beyond = carried.slice(values.indexOf(Math.min(...values)));
  const [first, last] = [beyond[0], beyond.at(-1)];
  if (first === undefined || last === undefined) return null;
  const from = Math.min(first.place.value, ...known.map(({ place }) => place));
  const to = Math.max(last.place.value, ...known.map(({ place }) => place));
  const { left, bar, edge, foot, most, width } = stripFrame;
  const [part, size] = sizes.find(([one]) => (to - from) * one * TRUE <= most) ?? [1 / 20, '1/20 of true size'];
  const top = 1;
  const y = (place: number) => top + edge + (place - from) * part * TRUE;
  const bottom = y(to) + edge;
  const taken: number[] = [];
  const drawn: (StripTick & { readonly distance: number })[] = [];
  const isKnown = (distance: number) => known.some((mark) => Math.abs(mark.distance - distance) < 1e-6);
  const rounds = [
    [(distance: number) => isRound(distance, 10), ticks.ten],
    [isKnown, ticks.ten],
    [(distance: number) => isRound(distance, 5), ticks.five],
    [() => true, ticks.one],
  ] as const;
  for (const [wanted, length] of rounds)
    for (const { distance, place, weak } of beyond.toReversed()) {
      const at = y(place.value);
      if (!wanted(distance) || taken.some((other) => Math.abs(other - at) < NEXT_TICK)) continue;
      taken.push(at);
      drawn.push({ distance, y: at, length, weak });
    }
  const labels: (Label & { weak: boolean })[] = [];
  for (const { distance, y: at, length, weak } of drawn) {
    if (length === ticks.one || (length === ticks.five && beyond.length > 24)) continue;
    if (labels.some((other) => Math.abs(other.y - at - 5) < NEXT_LABEL)) continue;
    const text = `${Number(distance.toFixed(1))}`;
    labels.push({ ...label(text, left + ticks.ten + 4, at + 5, 'start', 'strong', LETTER), weak });
  }
  const knownAt = known.map(({ distance, place }) => ({ distance, y: y(place) }));
  const within = (at: number) => Math.max(top, Math.min(bottom, at));
  const intervals = beyond
    .filter(({ distance }) => isKnown(distance) || labels.some(({ text }) => text === `${Number(distance.toFixed(1))}`))
    .map(({ place, weak }) => {
      const [low, high] = [y(place.low), y(place.high)];
      return { y: y(place.value), low: within(low), high: within(high), open: [low < top, high > bottom] as const, weak };
    });
  const scaled = part * TRUE;
  const rule = rules.findLast((one) => one * scaled <= width - 34) ?? rules[0];
  const ruleTo = left + rule * scaled;
  const ruleY = bottom + 20;
  const millimetres = `${Math.round(1000 * rule)} mm`;
  return {
    width: Math.max(width, ruleTo + 8 + 44),
    height: bottom + foot,
    size,
    top,
    bottom,
    ticks: drawn.toSorted((a, b) => a.y - b.y),
    labels: labels.map((one, i) => (i === 0 ? { ...one, ...unitOn(one, distanceUnit, left + bar) } : one)),
    intervals,
    known: knownAt,
    ends: [ends.upper, ends.lower]
      .filter((end) => end !== null)
      .map(y)
      .filter((at) => at > top && at < bottom),
    rule: { y: ruleY, from: left, to: ruleTo, label: label(millimetres, ruleTo + 8, ruleY + 4, 'start', 'text', 12) },
  };
}

/** The farthest figure carries the unit, where there is room for it. */
function unitOn({ text, x, y }: Label, unit: string, right: number): Label | Record<string, never> {
  const whole = label(`${text} ${unit}`, x, y, 'start', 'strong', LETTER);
  return whole.box.right <= right - 2 ? whole : {};
}
