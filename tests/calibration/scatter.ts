import type { Point } from '../../core/group/index.ts';
import { normalPair, type Random } from '../../fixtures/random.ts';

/** How shots scatter about their true centre, in spreads of 1. */
export interface Scatter {
  readonly words: string;
  /** Standard deviations across and up; with tails, what they are multiplied by. */
  readonly spread: readonly [number, number];
  /** Degrees of freedom of Student's law, one divisor for both axes; Infinity is the normal. */
  readonly tails: number;
  /** A divisor for each axis by itself, in place of one for both. */
  readonly eachAxis?: boolean;
  /** The oval leans by this, counter-clockwise [rad]. */
  readonly turn?: number;
}

export const round: Scatter = { words: 'round', spread: [1, 1], tails: Infinity };
export const oval = (ratio: number): Scatter => ({ words: `oval ${ratio} to 1`, spread: [ratio, 1], tails: Infinity });
export const student = (df: number): Scatter => ({ words: `t${df} tails`, spread: [1, 1], tails: df });
/** Heavy tails across and up by themselves, as the listed cases of the shift test have them. */
export const studentEach = (df: number): Scatter => ({ ...student(df), words: `t${df} tails each way`, eachAxis: true });
/** A hundred to one. */
export const needle: Scatter = { words: 'needle', spread: [1, 0.01], tails: Infinity };

export const wider = (scatter: Scatter, by: number): Scatter => ({
  ...scatter,
  spread: [by * scatter.spread[0], by * scatter.spread[1]],
});
export const across = (scatter: Scatter): Scatter => ({ ...scatter, spread: [scatter.spread[1], scatter.spread[0]] });

/** A spread of 1 as a spread on the face [m]: the figures do not depend on it, the limits of a shot's place are far away. */
const SIZE = 0.001;

function chiSquare(random: Random, df: number): number {
  let sum = 0;
  for (let i = 0; i < df; i += 2) {
    const [u, v] = normalPair(random);
    sum += u * u + (i + 1 < df ? v * v : 0);
  }
  return sum;
}

/** One shot, its true centre given in spreads. */
export function shot(random: Random, { spread, tails, eachAxis = false, turn = 0 }: Scatter, x = 0, y = 0): Point {
  const [u, v] = normalPair(random);
  const stretch = (): number => (tails === Infinity ? 1 : Math.sqrt(tails / chiSquare(random, tails)));
  const along = stretch();
  const up = eachAxis ? stretch() : along;
  const [wide, high] = [along * spread[0] * u, up * spread[1] * v];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return { x: SIZE * (x + wide * cos - high * sin), y: SIZE * (y + wide * sin + high * cos) };
}

export const shots = (random: Random, n: number, scatter: Scatter, x = 0, y = 0): Point[] =>
  Array.from({ length: n }, () => shot(random, scatter, x, y));

/** A length in spreads as one on the face [m]. */
export const onFace = (spreads: number): number => SIZE * spreads;
