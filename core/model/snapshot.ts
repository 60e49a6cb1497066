import { z } from './zod.ts';
import { Archer } from './archer.ts';
import { ArrowSet } from './arrowSet.ts';
import { Bow } from './bow.ts';
import { Id, Name, Note, recordBase, Stamp } from './common.ts';
import { ShotGroup } from './group.ts';
import { Setup } from './setup.ts';

/**
 * A figure as it was shown at that moment, for the diff only: today's model may say otherwise. SI. Its use is any text: a later version may
 * know more uses, and its snapshots must stay readable here; whoever shows one asks isUse first.
 */
export const ShownFigure = z.strictObject({ key: z.string(), name: z.string(), use: z.string(), value: z.number().nullable() });
export type ShownFigure = z.infer<typeof ShownFigure>;

/** A set-up frozen with everything it rests on. Never written again: the store refuses a second revision. */
export const Snapshot = z.strictObject({
  ...recordBase,
  kind: z.literal('snapshot'),
  name: Name,
  note: Note,
  taken: Stamp,
  setupId: Id,
  bowId: Id,
  state: z.strictObject({ archer: Archer, bow: Bow, arrowSet: ArrowSet, setup: Setup }),
  groups: z.array(ShotGroup),
  figures: z.array(ShownFigure),
  programVersion: z.string(),
});
export type Snapshot = z.infer<typeof Snapshot>;
