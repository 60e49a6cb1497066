import { z } from './zod.ts';
import { Form } from './archer.ts';
import { Id, Note, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';
import { Settings } from './setup.ts';

/** A shot as the archer sees it: metres from the centre of the face, x to the right, y up. */
export const Shot = z.strictObject({
  id: z.int().nonnegative(),
  x: measure('shotOffset'),
  y: measure('shotOffset'),
  /** The number written on the arrow. */
  arrow: z.int().min(1).max(999).nullable(),
  /** The end it was shot in, counted from 1; null where nobody noted it. */
  end: z.int().min(1).max(9999).nullable().default(null),
  /** Why somebody left it out of the figures; null for a shot that counts. It is never dropped. */
  leftOut: z
    .string()
    .trim()
    .min(1, 'A reason was expected.')
    .max(200, 'A reason of at most 200 characters was expected.')
    .nullable()
    .default(null),
});
export type Shot = z.infer<typeof Shot>;

export const FaceId = z.enum(['122', '80', '80-six', '60', '40', '40-triple', '60-triple']);
export type FaceId = z.infer<typeof FaceId>;

/** What was the case while these arrows were shot. A verdict that compares two groups first compares these. */
export const Context = z.strictObject({
  distance: measure('shootingDistance'),
  face: FaceId,
  shotAt: Stamp,
  weather: z.string().max(200),
  light: z.string().max(200),
  kit: z.string().max(200),
  /** The form, the settings and the arrow set as they stood then: copies, since the set-up moves on. */
  form: Form,
  settings: Settings,
  arrowSetId: Id,
});
export type Context = z.infer<typeof Context>;

/** The shots that count: those that nobody left out. A group without any keeps its own list, so that what rests on it is not made anew. */
export function counted(group: { readonly shots: readonly Shot[] }): readonly Shot[] {
  return group.shots.some(({ leftOut }) => leftOut !== null)
    ? group.shots.filter(({ leftOut }) => leftOut === null)
    : group.shots;
}

const MOST_SHOTS = 100_000;

export const ShotGroup = z.strictObject({
  ...recordBase,
  kind: z.literal('group'),
  setupId: Id,
  fletching: z.enum(['fletched', 'bare']),
  context: Context,
  shots: z.array(Shot).max(MOST_SHOTS, 'At most 100,000 shots in one group were expected.'),
  note: Note,
});
export type ShotGroup = z.infer<typeof ShotGroup>;
