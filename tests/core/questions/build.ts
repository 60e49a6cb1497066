import { exampleBundle, exampleFletched } from '../../../core/model/example.ts';
import { defaultPreferences, unmeasured, type Shot, type ShotGroup } from '../../../core/model/index.ts';
import type { QuestionInput } from '../../../core/questions/index.ts';
import { normalPair, randomFrom } from '../../../fixtures/random.ts';

type Place = Pick<Shot, 'x' | 'y'> & Partial<Shot>;

/** A group of its own day; earlier days have smaller numbers. */
export function groupOn(day: number, shots: readonly Place[], patch: Partial<ShotGroup> = {}): ShotGroup {
  return {
    ...exampleFletched,
    id: `20000000-0000-4000-8000-${String(day).padStart(12, '0')}`,
    context: { ...exampleFletched.context, shotAt: { at: new Date(Date.UTC(2026, 0, day)).toISOString(), offsetMinutes: 0 } },
    shots: shots.map((shot, id) => ({ ...unmeasured.shot, id, ...shot })),
    ...patch,
  };
}

/** Round normal shots, always the same for one seed. */
export function roundShots(seed: number, count: number, spread: number): { x: number; y: number }[] {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const [x, y] = normalPair(random);
    return { x: spread * x, y: spread * y };
  });
}

export const inputOf = (group: ShotGroup, patch: Partial<QuestionInput> = {}): QuestionInput => ({
  group,
  beside: null,
  others: [],
  bundle: exampleBundle,
  shaftRadius: 0.0029,
  units: defaultPreferences.units,
  ...patch,
});
