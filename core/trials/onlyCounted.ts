import { counted, type ShotGroup } from '../model/group.ts';

/**
 * A group with the shots that count, so that nothing that reads it takes one that somebody left out.
 *
 * @equation the shots without a reason for being left out; the group itself when there is none to leave out
 * @param group - the group [record]
 * @returns the same with its counted shots [record]
 * @validity any group
 * @source own derivation
 * @example onlyCounted(exampleFletched).shots.length // 6
 */
export function onlyCounted(group: ShotGroup): ShotGroup {
  const shots = counted(group);
  return shots === group.shots ? group : { ...group, shots: [...shots] };
}
