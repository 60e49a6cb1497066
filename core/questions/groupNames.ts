import { dayText } from '../findings/index.ts';
import { wallTime } from '../model/common.ts';
import type { ShotGroup } from '../model/group.ts';

const HOUR = 11;
const MINUTE = 16;

/**
 * What each of many groups is called, so that no two go by one name.
 *
 * @equation its day; with its time where another one has that day; with its number in that minute where another one has that too
 * @param groups - all that may be spoken of [list]
 * @returns the name by the group's id [list]
 * @validity any groups; one that stands in the list twice is one
 * @source own derivation
 * @example groupNames([exampleFletched]).get(exampleFletched.id) // "2 May 2026"
 */
export function groupNames(groups: readonly ShotGroup[]): ReadonlyMap<string, string> {
  const single = [...new Map(groups.map((group) => [group.id, group])).values()];
  const dayOf = (group: ShotGroup) => dayText(group.context.shotAt);
  const timeOf = (group: ShotGroup) => {
    const there = new Date(wallTime(group.context.shotAt)).toISOString();
    return `${dayOf(group)}, ${there.slice(HOUR, MINUTE)}`;
  };
  const [days, times] = [countOf(single.map(dayOf)), countOf(single.map(timeOf))];
  const before = new Map<string, number>();
  return new Map(
    single.map((group) => {
      const time = timeOf(group);
      const place = (before.get(time) ?? 0) + 1;
      before.set(time, place);
      if (days.get(dayOf(group)) === 1) return [group.id, dayOf(group)];
      return [group.id, times.get(time) === 1 ? time : `${time} (no. ${place} of that minute)`];
    }),
  );
}

function countOf(words: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}
