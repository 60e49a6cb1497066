import type { Needed, Verdict } from './verdict.ts';

/** One way of looking at whether a shaft suits: what it needs, on the standard tester [m], and what it says of this shaft. */
export interface View {
  readonly name: string;
  readonly needed: Needed;
  readonly verdict: Verdict;
}

/**
 * Whether one view calls the shaft stiff and another calls it weak.
 *
 * @equation stiff and weak both among the verdicts
 * @param views - the views that speak [list]
 * @returns true when they contradict each other outright [choice]
 * @validity any views
 * @source own derivation
 * @example opposed([{ verdict: 'stiff' }, { verdict: 'weak' }]) // true
 */
export function opposed(views: readonly Pick<View, 'verdict'>[]): boolean {
  const said = new Set(views.map(({ verdict }) => verdict));
  return said.has('stiff') && said.has('weak');
}

/**
 * Whether all views say the same.
 *
 * @equation true when every verdict is one; null with a single view or where one cannot tell
 * @param views - the views that speak [list]
 * @returns true, false, or null when there is nothing to agree on [choice]
 * @validity any views
 * @source own derivation
 * @example agreed([{ verdict: 'weak' }, { verdict: 'in range' }]) // false
 */
export function agreed(views: readonly Pick<View, 'verdict'>[]): boolean | null {
  const said = new Set(views.map(({ verdict }) => verdict));
  return views.length < 2 || said.has('cannot tell') ? null : said.size === 1;
}
