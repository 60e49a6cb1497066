import { settingFields } from '../compare/fields.ts';
import { textQuantity } from '../units/index.ts';
import type { Evidence } from './evidence.ts';

const turned: ReadonlySet<string> = new Set(['braceHeight', 'tiller', 'nockingPoint', 'centreShot', 'buttonTurns']);

/**
 * What has been turned since two groups were shot: a reading holds for its settings, so that only new groups can say more.
 *
 * @equation a setting measured then and now that differs by more than can be read again, or other arrows
 * @param evidence - set-up and groups [record]
 * @returns the sentence; null when nothing has changed [text]
 * @validity a figure measured for the first time since is no change
 * @source common practice
 * @example changedSince({ bundle: exampleBundle, fletched: exampleFletched, bare: exampleBare, units: defaultPreferences.units }) // null
 */
export function changedSince(evidence: Pick<Evidence, 'bundle' | 'fletched' | 'bare' | 'units'>): string | null {
  const { bundle, fletched, bare, units } = evidence;
  const now = bundle.setup.settings;
  for (const { context } of [fletched, bare])
    for (const { key, name, use, resolution } of settingFields) {
      if (!turned.has(key) || use === null) continue;
      const [then, today] = [context.settings[key], now[key]];
      if (typeof then !== 'number' || typeof today !== 'number' || Math.abs(then - today) <= resolution) continue;
      const text = (si: number) => textQuantity(si, use, units);
      return `${name} was ${text(then)} when these were shot and is ${text(today)} now: the reading is of the old setting.`;
    }
  if (fletched.context.arrowSetId !== bundle.arrowSet.id) return 'These were shot with other arrows than the set-up has now.';
  return null;
}
