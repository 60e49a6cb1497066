import { axisTest, momentsOf, ONE_HOLE } from '../../group/index.ts';
import { levelPlace, type LevelPlace } from './levelPlace.ts';
import type { BarePlace } from './bareEvidence.ts';
import type { Spanned } from './plot.ts';

/** How far bare shafts strike above fletched ones, by nocking point. */
export interface HeightsAlong {
  readonly points: readonly (Spanned & { readonly setting: number })[];
  readonly line: LevelPlace | null;
  readonly arrows: readonly [fletched: number, bare: number];
}

/**
 * Height of the bare shafts above the fletched at each nocking point, and where they would strike level.
 *
 * @equation h = ȳ_bare - ȳ_fletched with Welch's interval; line by levelPlace, v = s_f²/n_f + s_b²/n_b with s² of each kind pooled over all places
 * @param places - bare and fletched at each setting, two or more arrows of each, at one distance [list]
 * @returns points and line [record]
 * @validity one distance; one vertical scatter of each kind throughout
 * @source welch-1947; fieller-1954
 * @example heightsAlong([]).line // null
 */
export function heightsAlong(places: readonly (BarePlace & { readonly setting: number })[]): HeightsAlong {
  const told = places.map(({ setting, fletched, bare }) => ({
    setting,
    one: momentsOf(fletched.shots),
    other: momentsOf(bare.shots),
  }));
  const pooled = (which: 'one' | 'other') => {
    const df = told.reduce((sum, place) => sum + place[which].n - 1, 0);
    return { df, variance: told.reduce((sum, place) => sum + (place[which].n - 1) * place[which].covariance.yy, 0) / df };
  };
  const [fletched, bare] = [pooled('one'), pooled('other')];
  const points = told.map(({ setting, one, other }) => {
    const value = other.centre.y - one.centre.y;
    const half = axisTest(one, other, 'y', 0.05)?.half ?? 0;
    return { setting, value, low: value - half, high: value + half };
  });
  const heights = told.map(({ setting, one, other }) => ({
    setting,
    height: other.centre.y - one.centre.y,
    variance: fletched.variance / one.n + bare.variance / other.n,
  }));
  const scatters = heights.length > 0 && heights.every(({ variance }) => variance > ONE_HOLE ** 2);
  return {
    points,
    line: scatters ? levelPlace(heights, fletched.df + bare.df) : null,
    arrows: [told.reduce((sum, { one }) => sum + one.n, 0), told.reduce((sum, { other }) => sum + other.n, 0)],
  };
}
