import type { Band } from '../../model/band.ts';
import { heldOf } from './markModel.ts';
import type { FittedMarks } from './types.ts';

/** Beyond so many standard deviations the marks speak against a figure and not only beside it. */
const against = 2.5;

const millimetres = (value: number) => `${(1000 * value).toFixed(0)} mm`;
const figures = [
  ['speed', 'an arrow speed', (value: number) => `${value.toFixed(1)} m/s`],
  ['eyeHeight', 'an eye height', millimetres],
  ['k', 'a loss of speed', (value: number) => `${(1e4 * value).toFixed(1)} % in 100 m`],
  ['sightRadius', 'a sight radius', millimetres],
] as const;

/**
 * The figure that marks speak against most, in words.
 *
 * @equation z_j = (φ_j − m_j)/s_j; the greatest |z| when it is above 2.5
 * @param fit - likeliest parameters, priors and figures [record]
 * @returns "an arrow speed of 47.1 m/s, where 52.0 m/s to 60.3 m/s was held", or null when none is that far off [text]
 * @validity figures held independently of one another
 * @source own derivation
 * @example heldAgainst(fitMarks(exampleMarks, exampleScale, examplePriors).value) // null
 */
export function heldAgainst({
  parameters,
  priors,
  figures: fitted,
}: Pick<FittedMarks, 'parameters' | 'priors' | 'figures'>): string | null {
  const { means, sds } = heldOf(priors);
  const pulls = means.map((mean, j) => Math.abs((parameters[j] ?? 0) - mean) / (sds[j] ?? 1));
  const most = Math.max(...pulls);
  const figure = figures[pulls.indexOf(most)];
  if (figure === undefined || !(most > against)) return null;
  const [key, name, show] = figure;
  const { low, high }: Band = priors[key];
  return `${name} of ${show(fitted[key].value)}, where ${show(low)} to ${show(high)} was held`;
}
