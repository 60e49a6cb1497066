import { z } from './zod.ts';
import { Archer } from './archer.ts';
import { ArrowSet } from './arrowSet.ts';
import { Bow } from './bow.ts';
import { Id } from './common.ts';
import { ShotGroup } from './group.ts';
import { Picture } from './picture.ts';
import { ScoreSheet } from './scoreSheet.ts';
import { SightMark } from './sightMark.ts';
import { Setup } from './setup.ts';
import { Snapshot } from './snapshot.ts';
import { Trial } from './trial.ts';

/** Everything the notebook holds. */
export const BenchRecord = z.discriminatedUnion('kind', [
  Archer,
  Bow,
  ArrowSet,
  Setup,
  ShotGroup,
  Snapshot,
  Trial,
  Picture,
  ScoreSheet,
  SightMark,
]);
export type BenchRecord = z.infer<typeof BenchRecord>;
export type RecordKind = BenchRecord['kind'];

/** Which state of a record an edit was made on. The notebook holds the rest itself, so a group of 100,000 shots is not sent twice. */
export const RecordState = z.object({
  id: Id,
  kind: z.enum(['archer', 'bow', 'arrowSet', 'setup', 'group', 'snapshot', 'trial', 'picture', 'scoreSheet', 'sightMark']),
  revision: z.int().nonnegative(),
});
export type RecordState = z.infer<typeof RecordState>;

/** One record before and after an edit: null before is a birth, null after a removal (only redo and undo remove; people archive). */
export const RecordEdit = z.strictObject({ id: Id, before: RecordState.nullable(), after: BenchRecord.nullable() });
export type RecordEdit = z.infer<typeof RecordEdit>;

/** A user's edit: what it was, in plain words, and the records before and after. Applied whole or not at all. */
export const Change = z.strictObject({
  label: z.string().min(1).max(200),
  edits: z.array(RecordEdit).min(1).max(200),
});
export type Change = z.infer<typeof Change>;
