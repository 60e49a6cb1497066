import { type Held, heldOf, markError, pinPlace, placeOf, usualShots } from './markModel.ts';
import { leastSquares, type SquaresFit } from './leastSquares.ts';
import type { KnownMark, MarkParameters, MarkPriors, SightScale } from './types.ts';

/** The likeliest figures and how well they are told, before anything is widened. */
export interface SolvedMarks {
  readonly parameters: MarkParameters;
  readonly covariance: readonly (readonly number[])[];
  /** The squared misses of the marks and of what was held beforehand, in their standard deviations. */
  readonly sum: number;
}

const isFive = (values: readonly number[]): values is MarkParameters & readonly number[] => values.length === 5;

function fromPriors(held: Held, fast: number): readonly number[] {
  const [logSpeed, ...rest] = held.means;
  return [logSpeed + fast * held.sds[0], ...rest];
}

/**
 * The likeliest speed, eye height, drag, sight radius and zero behind some marks.
 *
 * @equation least Σ ((q_i − q(R_i))/σ_i)² + Σ ((φ_j − m_j)/s_j)² over φ = (ln v, e, ln k, r) and q₀, which is free
 * @param marks - one or more, checked [list]
 * @param scale - the sight's scale [record]
 * @param priors - what is held beforehand [record]
 * @returns parameters, covariance and sum of squares; null when no flight reaches every mark [record]
 * @validity level ground, still air; a start at what is held, or with a faster arrow where that does not carry
 * @source marquardt-1963; own derivation
 * @example solveMarks(exampleMarks, exampleScale, examplePriors).parameters[1].toFixed(2) // "0.12"
 */
export function solveMarks(marks: readonly KnownMark[], scale: SightScale, priors: MarkPriors): SolvedMarks | null {
  const held = heldOf(priors);
  const known = marks.map(({ distance, reading, shots = usualShots }) => ({
    distance,
    place: placeOf(reading, scale),
    error: markError(priors, shots),
  }));
  const misses = (values: readonly number[]): readonly number[] | null => {
    if (!isFive(values)) return null;
    const found = known.map(({ distance, place, error }) => (pinPlace(values, distance) - place) / error);
    if (!found.every(Number.isFinite)) return null;
    return [...found, ...held.means.map((mean, j) => ((values[j] ?? 0) - mean) / (held.sds[j] ?? 1))];
  };
  const steps = [...held.sds.map((sd, j) => Math.min(1e-2 * sd, [1e-4, 1e-4, 1e-3, 1e-4][j] ?? sd)), 1e-4];
  for (const fast of [0, 2, 4]) {
    const start = fromPriors(held, fast);
    const level = known.map(({ distance, place }) => place - pinPlace([...start, 0] as unknown as MarkParameters, distance));
    const zero = level.reduce((total, each) => total + each, 0) / known.length;
    const found: SquaresFit | null = Number.isFinite(zero)
      ? leastSquares({ misses, start: [...start, zero], steps, settled: 1e-5 })
      : null;
    if (found !== null && isFive(found.parameters)) return { ...found, parameters: found.parameters };
  }
  return null;
}
