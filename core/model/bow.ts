import { z } from './zod.ts';
import { Hand } from './archer.ts';
import { Name, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';

export const BowKind = z.enum(['take-down recurve', 'one-piece recurve', 'longbow', 'flatbow', 'self bow', 'compound']);
export type BowKind = z.infer<typeof BowKind>;

/** What carries the arrow: it decides which band of the column view holds. */
export const ArrowPass = z.enum(['rest and button', 'shelf', 'hand']);
export type ArrowPass = z.infer<typeof ArrowPass>;

export const Bow = z.strictObject({
  ...recordBase,
  kind: z.literal('bow'),
  name: Name,
  bowKind: BowKind,
  hand: Hand,
  arrowPass: ArrowPass,
  length: measure('bowLength').nullable(),
  markedWeight: measure('markedWeight').nullable(),
  /** The AMO draw at which the weight is marked; most makers mean 28 in. */
  markedDraw: measure('markedDraw'),
  /** The bow maker's own range; when both ends are there it governs. */
  braceLow: measure('braceHeight').nullable(),
  braceHigh: measure('braceHeight').nullable(),
  /** The bow maker's least arrow mass per draw weight [kg/N]. */
  leastMassPerWeight: measure('leastMassPerWeight').nullable(),
  lookedOver: Stamp.nullable(),
});
export type Bow = z.infer<typeof Bow>;
