import type { Stamp } from '../model/common.ts';
import type { ShotGroup } from '../model/group.ts';
import type { Trial } from '../model/trial.ts';
import { hoursBetween } from './day.ts';

/** What is on the bench with one set-up. */
export interface OnTheBench {
  /** The set-up's groups. */
  readonly groups: readonly ShotGroup[];
  /** The groups that are on the page. */
  readonly shown: readonly ShotGroup[];
  /** The set-up's trials that were not put away. */
  readonly trials: readonly Trial[];
  /** The trial that is on the page; null where none is. */
  readonly chosen: Trial | null;
}

const DAY = 24;

/** Trials that are shot with bare shafts whatever their plan says, since both kinds may be added to a plan at any time. */
const shotBare = ({ trial, plan }: Trial): boolean =>
  trial === 'bare shaft' || trial === 'nocking point' || (trial === 'paper tear' && plan.others > 0);

/**
 * Whether bare shafts are about to be shot, or were within the day.
 *
 * @equation a bare group on the page or of the last 24 hours, or a trial with bare shafts: the one on the page, else any of the set-up's that goes on
 * @param bench - groups and trials of the set-up, and which of them are on the page [record]
 * @param now - the present instant [record]
 * @returns true when the caution for bare shafts is due [choice]
 * @validity any records; a group dated in the future counts as of today
 * @source common practice
 * @example bareInHand({ groups: [], shown: [exampleBare], trials: [], chosen: null }, exampleNow) // true
 */
export function bareInHand({ groups, shown, trials, chosen }: OnTheBench, now: Stamp): boolean {
  const bare = ({ fletching }: ShotGroup) => fletching === 'bare';
  if (shown.some(bare)) return true;
  if (groups.some((group) => bare(group) && hoursBetween(group.context.shotAt, now) < DAY)) return true;
  return chosen === null ? trials.some((trial) => trial.ended === null && shotBare(trial)) : shotBare(chosen);
}
