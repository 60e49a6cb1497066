import { z } from './zod.ts';

/** Identity of a record: made by the renderer when the record is born, so that a redo restores the same one. */
export const Id = z.uuid();
export type Id = z.infer<typeof Id>;

/** An instant as it was lived: UTC, and the offset of the place in minutes east of Greenwich. Core never asks for the time; it is passed in. */
export const Stamp = z.strictObject({
  at: z.iso.datetime(),
  offsetMinutes: z
    .int()
    .min(-14 * 60)
    .max(14 * 60),
});
export type Stamp = z.infer<typeof Stamp>;

/** The clock on the wall of the place, as milliseconds: what days and calendar axes are counted in. */
export const wallTime = (stamp: Stamp): number => Date.parse(stamp.at) + stamp.offsetMinutes * 60_000;

/** What every record carries. `revision` counts writes; a write on a stale revision is refused by the store. */
export const recordBase = {
  id: Id,
  revision: z.int().nonnegative(),
  born: Stamp,
  archivedAt: Stamp.nullable(),
};

/** A name as a person types it. */
export const Name = z
  .string()
  .trim()
  .min(1, 'A name of 1 to 80 characters was expected.')
  .max(80, 'A name of 1 to 80 characters was expected.');
export const Note = z.string().max(4000, 'A note of at most 4000 characters was expected.');
