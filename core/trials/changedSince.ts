import { tillerOf } from '../bow/index.ts';
import { formFields, settingFields } from '../compare/fields.ts';
import { textQuantity } from '../units/index.ts';
import type { Evidence } from './evidence.ts';

/** What can be turned, and how many times as coarsely as it is read: a bow weighed again after its bolts were turned scatters more than a tape does. */
const turned: Readonly<Record<string, number>> = {
  braceHeight: 1,
  tiller: 1,
  nockingPoint: 1,
  centreShot: 1,
  buttonTurns: 1,
  weightOnFingers: 3,
};

/**
 * What has been turned since two groups were shot: a reading holds for its settings, so that only new groups can say more.
 *
 * @equation a setting measured then and now that differs by more than can be read again, another form, or other arrows
 * @param evidence - set-up and groups [record]
 * @returns the sentence; null when nothing has changed [text]
 * @validity a figure measured for the first time since is no change
 * @source common practice
 * @example changedSince({ bundle: exampleBundle, fletched: exampleFletched, bare: exampleBare, units: defaultPreferences.units }) // null
 */
export function changedSince(evidence: Pick<Evidence, 'bundle' | 'fletched' | 'bare' | 'units'>): string | null {
  const { bundle, fletched, bare, units } = evidence;
  const now = { ...bundle.setup.settings, tiller: tillerOf(bundle.setup.settings) };
  for (const { context } of [fletched, bare])
    for (const { key, name, use, resolution } of settingFields) {
      const before = key === 'tiller' ? tillerOf(context.settings) : context.settings[key];
      const [then, today, coarse] = [before, now[key], turned[key]];
      if (use === null || coarse === undefined || typeof then !== 'number' || typeof today !== 'number') continue;
      if (Math.abs(then - today) <= coarse * resolution) continue;
      const text = (si: number) => textQuantity(si, use, units);
      return `${name} was ${text(then)} when these were shot and is ${text(today)} now: the reading is of the old setting.`;
    }
  for (const { key, name, use } of formFields) {
    const [then, today] = [fletched.context.form[key], bundle.setup.form[key]];
    if (use === null && then !== null && today !== null && then !== today)
      return `${name} was ${then} when these were shot and is ${today} now: the reading is of the old form.`;
  }
  if (fletched.context.arrowSetId !== bundle.arrowSet.id) return 'These were shot with other arrows than the set-up has now.';
  return null;
}
