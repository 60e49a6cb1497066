import {
  defaultPreferences,
  exampleNow,
  unmeasured,
  type Bundle,
  type Context,
  type Id,
  type ShotGroup,
  type Trial,
  type TrialGroups,
  type TrialKind,
} from '../../../../core/model/index.ts';
import { exampleTrial, readTrial, type SpreadAt, type TrialInput } from '../../../../core/trials/index.ts';
import { normalPair, type Random } from '../../../../fixtures/random.ts';
import { mirroredBundle, mirroredGroup, ring, setUp, shotWith, withContext } from '../build.ts';

export const { units } = defaultPreferences;

/** What was shot at one place of a trial, in millimetres about the middle of the face. */
export interface Shot {
  readonly distance: number;
  readonly step?: number;
  readonly first?: ShotGroup | null;
  readonly second?: ShotGroup | null;
  readonly speeds?: readonly number[];
}

/** A trial of a kind with what was shot, by a set-up that it was shot with. */
export function trialOf(
  kind: TrialKind,
  shot: readonly Shot[],
  rest: { readonly bundle?: Bundle; readonly trial?: Partial<Trial>; readonly spread?: SpreadAt | null } = {},
): TrialInput {
  const { bundle = setUp(), trial = {}, spread = null } = rest;
  const groups = new Map<Id, ShotGroup>();
  const keep = (group: ShotGroup | null | undefined, distance: number): Id | null => {
    if (group == null) return null;
    const id = `50000000-0000-4000-8000-${String(groups.size).padStart(12, '0')}`;
    groups.set(id, { ...withContext(shotWith(bundle, group), { distance }), id });
    return id;
  };
  const rows = shot.map(({ distance, step = null, first, second, speeds = [] }): TrialGroups => ({
    distance,
    step,
    first: keep(first, distance),
    second: keep(second, distance),
    speeds: [...speeds],
  }));
  const begun = exampleTrial(kind);
  return { ...begun, bundle, groups, spread, now: exampleNow, trial: { ...begun.trial, groups: rows, ...trial } };
}

export const fletched = (count: number, centreMm: readonly [number, number], radiusMm: number) =>
  ring('fletched', count, centreMm, radiusMm);
export const bare = (count: number, centreMm: readonly [number, number], radiusMm: number) =>
  ring('bare', count, centreMm, radiusMm);

/** Round normal shots about a centre, in millimetres. */
export function scattered(
  random: Random,
  fletching: ShotGroup['fletching'],
  count: number,
  centreMm: readonly [number, number],
  spreadMm: number,
): ShotGroup {
  return {
    ...ring(fletching, 0, [0, 0], 0),
    shots: Array.from({ length: count }, (_, id) => {
      const [x, y] = normalPair(random);
      return { ...unmeasured.shot, id, x: (centreMm[0] + spreadMm * x) / 1000, y: (centreMm[1] + spreadMm * y) / 1000 };
    }),
  };
}

export const changed = (input: TrialInput, context: Partial<Context>, which: number): TrialInput => ({
  ...input,
  groups: new Map([...input.groups].map(([id, group], i) => [id, i === which ? withContext(group, context) : group])),
});

/** Seen in a mirror: hands, shots and tears. */
export const mirrored = (input: TrialInput): TrialInput => ({
  ...input,
  bundle: mirroredBundle(input.bundle),
  trial: { ...input.trial, tears: input.trial.tears.map((tear) => ({ ...tear, across: 0 - tear.across })) },
  groups: new Map([...input.groups].map(([id, group]) => [id, mirroredGroup(group)])),
});

/** A reading in three words: its verdict, and the kind and title of the next step. */
export const read = (input: TrialInput) => {
  const { verdict, next } = readTrial(input);
  return [verdict, next.kind, next.title];
};
