import { z } from './zod.ts';

/** What somebody saw of one part. "Not looked at" is shown as unknown and never taken for sound. */
export const Condition = z.enum(['sound', 'flaw', 'not looked at']);
export type Condition = z.infer<typeof Condition>;

/** The last look-over of a bow, part by part: when it was is the bow's `lookedOver`. */
export const BowLookOver = z.strictObject({
  by: z.string().trim().max(80, 'A name of at most 80 characters was expected.'),
  limbs: Condition,
  tips: Condition,
  bolts: Condition,
  string: Condition,
  serving: Condition,
  note: z.string().max(400, 'A note of at most 400 characters was expected.'),
});
export type BowLookOver = z.infer<typeof BowLookOver>;

/** One numbered arrow looked and felt along. */
export const ArrowLookOver = z.strictObject({ nock: Condition, shaft: Condition, point: Condition, fletching: Condition });
export type ArrowLookOver = z.infer<typeof ArrowLookOver>;
