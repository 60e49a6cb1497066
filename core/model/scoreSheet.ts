import { z } from './zod.ts';
import { Id, Note, recordBase, Stamp } from './common.ts';
import { FaceId } from './group.ts';
import { measure } from './limits.ts';

/** What one arrow scored: its value, or X for the inner ten; M, a miss, is 0. */
export const ArrowScore = z.union([z.int().min(0).max(10), z.literal('X')]);
export type ArrowScore = z.infer<typeof ArrowScore>;

/** Values written down without places: they tell the spread, not the aim. */
export const ScoreSheet = z.strictObject({
  ...recordBase,
  kind: z.literal('scoreSheet'),
  setupId: Id,
  face: FaceId,
  distance: measure('shootingDistance'),
  shotAt: Stamp,
  ends: z.array(z.array(ArrowScore).min(1).max(24)).min(1).max(200),
  note: Note,
});
export type ScoreSheet = z.infer<typeof ScoreSheet>;
