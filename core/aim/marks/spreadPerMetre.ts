import { inOneHole } from '../../group/index.ts';
import { counted, type ShotGroup } from '../../model/group.ts';

/** A standard deviation from fewer degrees of freedom than this is out by a fifth or more: two ends of six, or three of four. */
const FEWEST_DEGREES = 10;
/** What was shot longer ago says less of today. */
const MOST_GROUPS = 40;

/**
 * How far an archer's arrows scatter up and down, as an angle, from groups.
 *
 * @equation s = √(Σ Σ (y − ȳ)²/R² / Σ (n − 1)) over the last 40 fletched groups with two counted shots or more that are not all in one hole
 * @param groups - of one archer and bow, oldest first [list]
 * @returns one standard deviation, or null below ten degrees of freedom [rad]
 * @validity a scatter that grows with the distance; shots that somebody left out do not count
 * @source own derivation
 * @example spreadPerMetre([exampleFletched]) // null
 */
export function spreadPerMetre(groups: readonly ShotGroup[]): number | null {
  let [squares, degrees] = [0, 0];
  const fletched = groups.filter(({ fletching, context }) => fletching === 'fletched' && context.distance > 0);
  const told = fletched
    .map((group) => ({ shots: counted(group), distance: group.context.distance }))
    .filter(({ shots }) => shots.length > 1 && !inOneHole(shots));
  for (const { shots, distance } of told.slice(-MOST_GROUPS)) {
    const mean = shots.reduce((sum, { y }) => sum + y, 0) / shots.length;
    squares += shots.reduce((sum, { y }) => sum + (y - mean) ** 2, 0) / distance ** 2;
    degrees += shots.length - 1;
  }
  return degrees < FEWEST_DEGREES ? null : Math.sqrt(squares / degrees);
}
