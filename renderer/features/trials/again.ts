import { together } from '../../../core/model/sentence.ts';
import { counted } from '../../../core/model/group.ts';
import type { TrialPlan } from '../../../core/model/trial.ts';
import type { TrialInput, TrialSheet } from '../../../core/trials/index.ts';
import { textQuantity } from '../../../core/units/index.ts';
import { unshot } from './standing.ts';

/** As many of each as a bare-shaft trial is read from. */
const LEAST = { fletched: 6, bare: 4 } as const;

/** What "again" plans: the same, and of bare shafts whose verdict stood early what was shot of the plan, as the advice says. */
export function againOf(
  { trial, groups, units }: Pick<TrialInput, 'trial' | 'groups' | 'units'>,
  rows: TrialSheet,
): { readonly plan: TrialPlan; readonly words: string } {
  const { plan } = trial;
  const whole = { plan, words: 'Shoot it again' };
  if (trial.trial !== 'bare shaft' || !unshot(rows) || plan.others === 0) return whole;
  const many = (id: string | null): number => {
    const group = id === null ? undefined : groups.get(id);
    return group === undefined ? 0 : counted(group).length;
  };
  const places = trial.groups
    .map(({ distance, first, second }) => ({ distance, fletched: many(first), bare: many(second) }))
    .filter(({ fletched, bare }) => fletched > 0 && bare > 0)
    .sort((a, b) => a.distance - b.distance);
  const far = places.at(-1);
  if (far === undefined) return whole;
  const ends = Math.max(
    Math.ceil(Math.max(LEAST.fletched, far.fletched) / plan.arrows),
    Math.ceil(Math.max(LEAST.bare, far.bare) / plan.others),
  );
  const distances = [...new Set(places.map(({ distance }) => distance))];
  const at = together(distances.map((distance) => textQuantity(distance, 'distance', units)));
  return {
    plan: { ...plan, distances, ends },
    words: `Shoot it again at ${at}: ${ends * plan.arrows} and ${ends * plan.others}`,
  };
}
