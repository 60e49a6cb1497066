import { helmertRadii, inOneHole } from '../../group/index.ts';
import type { ShotPlace } from './places.ts';
import type { SizedSet } from './sizes.ts';

const FEWEST = 3;

/**
 * The groups of each setting as lengths that tell its spread, over all distances and told at the farthest.
 *
 * @equation Helmert lengths of each group about its own centre, times z_far/z; with height alone every place counts with its side left out
 * @param places - places of the trial with a setting [list]
 * @param heightOnly - whether only the height counts, as in a row along an edge [choice]
 * @returns one set for each setting with three or more arrows in a group that is not in one hole, lowest first [list]
 * @validity scatter that grows with the distance
 * @source levene-1960
 * @example sizedSets([], false) // []
 */
export function sizedSets(places: readonly ShotPlace[], heightOnly: boolean): readonly SizedSet[] {
  const told = places.flatMap(({ step, distance, first }) => {
    if (step === null || first === null || first.shots.length < FEWEST) return [];
    const points = first.shots.map(({ x, y }) => ({ x: heightOnly ? 0 : x, y }));
    return inOneHole(points) ? [] : [{ step, distance, points }];
  });
  const far = Math.max(0, ...told.map(({ distance }) => distance));
  const settings = [...new Set(told.map(({ step }) => step))].sort((a, b) => a - b);
  return settings.map((setting): SizedSet => {
    const here = told.filter(({ step }) => step === setting);
    return {
      setting,
      lengths: here.flatMap(({ distance, points }) => helmertRadii(points).map((length) => (length * far) / distance)),
      axes: heightOnly ? 1 : 2,
      arrows: here.reduce((sum, { points }) => sum + points.length, 0),
    };
  });
}
