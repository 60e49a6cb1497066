import type { Id, Stamp } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Trial } from '../../../core/model/trial.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { timeText, whenText } from '../../state/clock.ts';
import { arrowsText, distanceText, shelfText } from './shelfText.ts';

/** A group in a list of groups: what it is, and when it was shot. */
export interface GroupLine {
  readonly text: string;
  readonly when: string;
  /** With how many arrows. */
  readonly small: string;
}

/** Every group of a list by a name of its own: those of a trial by the trial, and two that would read alike by the time or their order. */
export function groupLines(
  groups: readonly ShotGroup[],
  trials: readonly Trial[],
  units: UnitChoice,
  today: Stamp,
): ReadonlyMap<Id, GroupLine> {
  const inTrial = new Map(trials.flatMap((trial) => namesIn(trial, units)));
  const named = groups.map((group) => {
    const name = inTrial.get(group.id);
    const text = name === undefined ? shelfText(group, units) : `${name}, ${distanceText(group, units)}`;
    return { group, text, when: whenText(group.context.shotAt, today) };
  });
  const timed = toldApart(named, ({ group, when }) =>
    when.startsWith('today') ? when : `${when} ${timeText(group.context.shotAt)}`,
  );
  const lines = toldApart(timed, ({ when }, order, count) => `${when}, ${order} of ${count}`);
  return new Map(lines.map(({ group, text, when }) => [group.id, { text, when, small: `${when}, ${arrowsText(group)}` }]));
}

interface Named {
  readonly group: ShotGroup;
  readonly text: string;
  readonly when: string;
}

/** Those that read alike say more of when they were shot. */
function toldApart(named: readonly Named[], more: (one: Named, order: number, count: number) => string): readonly Named[] {
  const alike = new Map<string, Named[]>();
  const key = ({ text, when }: Named) => `${text}\n${when}`;
  for (const one of named) {
    const same = alike.get(key(one));
    if (same === undefined) alike.set(key(one), [one]);
    else same.push(one);
  }
  return named.map((one) => {
    const same = alike.get(key(one)) ?? [];
    return same.length < 2 ? one : { ...one, when: more(one, same.indexOf(one) + 1, same.length) };
  });
}

/** What the groups of a trial are called in it: by the setting that was tried, and by their kind where there are two. */
function namesIn({ trial, name, groups, plan }: Trial, units: UnitChoice): readonly (readonly [Id, string])[] {
  const kinds = trial === 'a against b' ? (['A', 'B'] as const) : (['fletched', 'bare'] as const);
  return groups.flatMap(({ step, first, second }) => {
    const tried = step === null ? null : textQuantity(step, trial === 'nocking point' ? 'setting' : 'length', units);
    const called = (kind: string) => {
      const which = [tried, plan.others > 0 ? kind : null].filter((part) => part !== null).join(', ');
      return which === '' ? name : `${name}: ${which}`;
    };
    return [
      ...(first === null ? [] : [[first, called(kinds[0])] as const]),
      ...(second === null ? [] : [[second, called(kinds[1])] as const]),
    ];
  });
}
