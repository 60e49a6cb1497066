import type { ShotGroup } from '../../model/group.ts';
import { onlyCounted } from '../onlyCounted.ts';
import type { TrialInput } from './types.ts';

/** The groups of one place of a trial, with the shots that count. */
export interface ShotPlace {
  readonly distance: number;
  readonly step: number | null;
  readonly first: ShotGroup | null;
  readonly second: ShotGroup | null;
  readonly speeds: readonly number[];
}

/**
 * What was shot at each place of a trial.
 *
 * @equation the groups that the trial points to, with their counted shots; by distance, then by setting
 * @param input - the trial with its groups [record]
 * @returns the places, nearest and lowest first [list]
 * @validity a group that is not at hand counts as not shot; the distance is the group's own where it has one
 * @source own derivation
 * @example placesShot(exampleTrialInput).length // 1
 */
export function placesShot({ trial, groups }: Pick<TrialInput, 'trial' | 'groups'>): readonly ShotPlace[] {
  const at = (id: string | null): ShotGroup | null => {
    const group = id === null ? undefined : groups.get(id);
    return group === undefined ? null : onlyCounted(group);
  };
  return trial.groups
    .map(({ distance, step, first, second, speeds }): ShotPlace => {
      const [one, other] = [at(first), at(second)];
      return { distance: one?.context.distance ?? other?.context.distance ?? distance, step, first: one, second: other, speeds };
    })
    .sort((a, b) => a.distance - b.distance || (a.step ?? 0) - (b.step ?? 0));
}

/**
 * The shots of a trial that somebody left out, in words.
 *
 * @equation how many, with their reasons, each told once
 * @param input - the trial with its groups [record]
 * @returns for instance "1 shot: a nock burst"; null when none was left out [text]
 * @validity any trial
 * @source own derivation
 * @example leftOutText(exampleTrialInput) // null
 */
export function leftOutText({ trial, groups }: Pick<TrialInput, 'trial' | 'groups'>): string | null {
  const out = trial.groups
    .flatMap(({ first, second }) => [first, second])
    .flatMap((id) => (id === null ? [] : (groups.get(id)?.shots ?? [])))
    .flatMap(({ leftOut }) => (leftOut === null ? [] : [leftOut.trim().replace(/[.\s]+$/, '')]));
  if (out.length === 0) return null;
  return `${out.length} ${out.length === 1 ? 'shot' : 'shots'}: ${[...new Set(out)].join(', ')}`;
}
