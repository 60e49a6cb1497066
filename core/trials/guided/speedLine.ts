import { tQuantile, tTwoSided, weightedFit } from '../../group/index.ts';
import { meanOf } from './meanOf.ts';
import type { ShotPlace } from './places.ts';
import type { SettingPoint } from './plot.ts';

/** Arrow speed against a setting. */
export interface SpeedLine {
  readonly points: readonly SettingPoint[];
  /** Change of speed for each metre of the setting, with half width [1/s]; null where too few were read. */
  readonly slope: { readonly value: number; readonly half: number; readonly p: number } | null;
}

/**
 * Arrow speed against the brace height, from the readings over a chronograph.
 *
 * @equation v = a + b h through all readings, b ± t_0.975 SE; each height's mean with its t interval
 * @param places - places of the trial with a setting [list]
 * @returns means and slope [record]
 * @validity two or more settings and three or more readings for a slope; one arrow's mass and one draw throughout
 * @source draper-smith-1998
 * @example speedAlong([]).slope // null
 */
export function speedAlong(places: readonly ShotPlace[]): SpeedLine {
  const read = places.flatMap(({ step, speeds }) => (step === null || speeds.length === 0 ? [] : [{ step, speeds }]));
  const settings = [...new Set(read.map(({ step }) => step))].sort((a, b) => a - b);
  const sets = settings.map((setting) => ({
    setting,
    speeds: read.filter(({ step }) => step === setting).flatMap(({ speeds }) => speeds),
  }));
  const points = sets.map(({ setting, speeds }): SettingPoint => {
    const mean = meanOf(speeds);
    const [only = 0] = speeds;
    const span = mean === null ? { value: only, low: only, high: only } : { value: mean.value, low: mean.low, high: mean.high };
    return { ...span, setting, arrows: speeds.length, amongBest: null };
  });
  const fit = weightedFit(
    sets.flatMap(({ setting, speeds }) => speeds.map((y) => ({ x: setting, y, weight: 1 }))),
    1,
  );
  if (!fit.ok) return { points, slope: null };
  const [value = 0, error = 0] = [fit.value.coefficients[1], fit.value.errors[1]];
  const p = error > 0 ? tTwoSided(value / error, fit.value.df) : value === 0 ? 1 : 0;
  return { points, slope: { value, half: tQuantile(0.975, fit.value.df) * error, p } };
}
