import type { ShotGroup } from '../../model/group.ts';
import type { UnitChoice } from '../../model/preferences.ts';
import type { Problem } from '../../model/problem.ts';
import { contextDifferences } from '../context.ts';

/** What was not the same while the groups of one trial were shot. */
export interface Throughout {
  /** With this no verdict stands; null when nothing forbids one. */
  readonly voids: Problem | null;
  /** These weaken it: the difference is not the equipment's alone. */
  readonly weakens: readonly string[];
}

/** Planned to differ from place to place. */
const PLANNED = ['distance', 'face'];

/**
 * Whether the groups of a trial were shot in one form and with one set-up.
 *
 * @equation each group against the first of its fletching by contextDifferences; another form voids; other equipment voids unless it is what is on trial; day, weather, light and kit weaken
 * @param groups - the groups of the trial, in any order [list]
 * @param onTrial - whether settings or arrows are what is on trial [choice]
 * @param units - the person's choice of units [record]
 * @returns what voids and what weakens [record]
 * @validity distances and faces may differ as planned
 * @source common practice
 * @example sameThroughout([exampleFletched, exampleBare], false, defaultPreferences.units).voids // null
 */
export function sameThroughout(groups: readonly ShotGroup[], onTrial: boolean, units: UnitChoice): Throughout {
  const weakens: string[] = [];
  let voids: Problem | null = null;
  for (const fletching of ['fletched', 'bare'] as const) {
    const [first, ...others] = groups.filter((group) => group.fletching === fletching);
    if (first === undefined) continue;
    for (const other of others)
      for (const { key, sentence, equipment, known } of contextDifferences(first, other, units)) {
        if (PLANNED.includes(key)) continue;
        if (equipment) {
          if (!onTrial) voids ??= { code: 'setup', sentence };
        } else if (known && key.startsWith('form.')) voids ??= { code: 'form', sentence };
        else weakens.push(sentence);
      }
  }
  return { voids, weakens: [...new Set(weakens)] };
}
