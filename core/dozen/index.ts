export { spreadOf, type Spread } from './spread.ts';
export { tolerancesOf, type Matching, type Tolerances } from './tolerances.ts';
export { shootingArrows, type SortedArrow } from './shooting.ts';
export { type Outlier } from './outliers.ts';
export { setStatistics, type SetStatistics } from './statistics.ts';
export { closestBox, type Placed } from './closest.ts';
export { bestMatched, type BestMatched } from './bestMatched.ts';
export { spreadAtTarget, type SpreadAtTarget } from './atTarget.ts';
