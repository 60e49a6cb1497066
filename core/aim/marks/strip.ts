import type { Band } from '../../model/band.ts';
import { ok, refuse, type Result } from '../../model/problem.ts';
import { markError, pinPlace, readingOf, usualShots } from './markModel.ts';
import { normalPair } from './normalPair.ts';
import { drawTruths } from './posterior.ts';
import { type OnBar, onBar } from './readingAt.ts';
import { slopesOver } from './slopesOver.ts';
import type { FittedMarks } from './types.ts';

/** One line of a sight strip. */
export interface StripRow {
  readonly distance: number;
  /** In the scale's numbers with its 95 % interval; null where one possible arrow in forty does not carry. */
  readonly reading: Band | null;
  readonly bar: OnBar;
}

const MOST_ROWS = 500;
const tail = 0.025;

/** The value that a share of the sorted ones lies below, between the two nearest. */
function quantile(sorted: Float64Array, share: number): number {
  const place = share * (sorted.length - 1);
  const low = Math.floor(place);
  const [a, b] = [sorted[low] ?? NaN, sorted[low + 1] ?? sorted[low] ?? NaN];
  return a + (place - low) * (b - a);
}

/**
 * A sight strip: the reading for every distance, with an interval that keeps the bend of the model.
 *
 * @equation q̂(R), and the 2.5 % and 97.5 % points of q₀ + r tan θ(R) + S σ z over truths drawn by `drawTruths`
 * @param fit - from `fitMarks` [record]
 * @param from - first distance [m]
 * @param to - last distance [m]
 * @param step - from one to the next [m]
 * @param draws - how many truths, 2000 for a strip [-]
 * @param random - numbers from 0 to 1, below 1, from a seed [function]
 * @returns a row for each distance, or a refusal when they are no distances or too many [list]
 * @validity level ground, still air; the value is that of `readingAt`; the same random numbers give the same strip
 * @source jcgm-101
 * @example strip(fitMarks(exampleMarks, exampleScale, examplePriors).value, 10, 90, 10, 100, () => 0.4).value.length // 9
 */
export function strip(
  fit: FittedMarks,
  from: number,
  to: number,
  step: number,
  draws: number,
  random: () => number,
): Result<StripRow[]> {
  const rows = Math.floor((to - from) / step + 1e-9) + 1;
  if (!(from >= 1 && to >= from && to <= 1000 && step > 0 && rows <= MOST_ROWS))
    return refuse(
      'distances',
      `Distances from 1 m on, the nearest first and at most ${MOST_ROWS} of them, were expected.`,
      'distances',
    );
  if (!(Number.isInteger(draws) && draws >= 100 && draws <= 100_000))
    return refuse('draws', 'From 100 to 100,000 draws were expected.', 'draws');
  const { wider, priors } = fit;
  const distances = Array.from({ length: rows }, (_, row) => from + row * step);
  const slopesOf = slopesOver(distances);
  const places = distances.map(() => new Float64Array(draws));
  const own = wider * markError(priors, usualShots);
  let drawn = 0;
  for (const { speed, k, eyeHeight, sightRadius, zero, times } of drawTruths(fit, draws, random)) {
    const slopes = slopesOf(speed, k, eyeHeight);
    for (let time = 0; time < times; time++, drawn++) {
      // One error a truth, the same at every distance: the strip's edges stay as smooth as its middle.
      const level = zero + own * normalPair(random)[0];
      for (let row = 0; row < rows; row++) (places[row] as Float64Array)[drawn] = level + sightRadius * (slopes[row] ?? NaN);
    }
  }
  return ok(distances.map((distance, row) => rowOf(fit, distance, (places[row] as Float64Array).subarray(0, drawn))));
}

/** A row out of the places of all truths [m]: not a number where an arrow does not carry. */
function rowOf({ parameters, scale }: FittedMarks, distance: number, places: Float64Array): StripRow {
  const sorted = places.sort();
  // Numbers that are none are sorted last.
  let count = sorted.length;
  while (count > 0 && Number.isNaN(sorted[count - 1])) count--;
  const value = pinPlace(parameters, distance);
  if (!(count > 0 && count >= (1 - tail) * sorted.length && Number.isFinite(value)))
    return { distance, reading: null, bar: 'off' };
  const carried = sorted.subarray(0, count);
  const [a, b] = [tail, 1 - tail].map((share) => readingOf(quantile(carried, share), scale)) as [number, number];
  const middle = readingOf(value, scale);
  const reading = { value: middle, low: Math.min(middle, a, b), high: Math.max(middle, a, b) };
  return { distance, reading, bar: onBar(reading, scale) };
}
