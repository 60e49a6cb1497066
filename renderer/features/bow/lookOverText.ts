import { dayText } from '../../../core/findings/index.ts';
import type { Bow } from '../../../core/model/bow.ts';
import type { Stamp } from '../../../core/model/common.ts';
import { together } from '../../../core/model/sentence.ts';
import { bowPartsOf } from '../../../core/safety/index.ts';

/** "today: all sound", "12 March: flaw in the string, serving not looked at". What nobody looked at is said, never taken for sound. */
export function lookOverText({ bowKind, lookedOver, lookOver, dryFired }: Bow, today: Stamp): string {
  const fired = dryFired === null ? '' : `; loosed dry ${dayText(dryFired, today)}`;
  if (lookedOver === null) return `Look it over${fired}`;
  const day = dayText(lookedOver, today);
  if (lookOver === null) return `${day}: part by part not on record${fired}`;
  const are = (condition: string) => bowPartsOf(bowKind).filter((part) => lookOver[part] === condition);
  const flawed = are('flaw');
  const unseen = are('not looked at');
  const seen = [
    ...(flawed.length === 0 ? [] : [`flaw in the ${together(flawed)}`]),
    ...(unseen.length === 0 ? [] : [`${together(unseen)} not looked at`]),
  ];
  return `${day}: ${seen.length === 0 ? 'all sound' : seen.join('; ')}${fired}`;
}
