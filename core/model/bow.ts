import { z } from './zod.ts';
import { Hand } from './archer.ts';
import { Name, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';
import { BowLookOver } from './lookOver.ts';
import { ForceReading, MOST_READINGS } from './readings.ts';

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
  /** What was seen then, part by part; null when only that it was looked over is on record. */
  lookOver: BowLookOver.nullable().default(null),
  /** When it was last loosed without an arrow, if ever: it is not shot again before a technician has looked it over. */
  dryFired: Stamp.nullable().default(null),
  /** Pairs off a bow scale in the order they were read, and the brace height they were read at. */
  forceDraw: z.array(ForceReading).max(MOST_READINGS).default([]),
  forceDrawBrace: measure('braceHeight').nullable().default(null),
  /** Whether the maker allows low-stretch string fibre on it; null while nobody has asked. */
  lowStretch: z.enum(['allowed', 'not allowed']).nullable().default(null),
  /** The bow maker's range of strands. */
  strandsLow: measure('strands').nullable().default(null),
  strandsHigh: measure('strands').nullable().default(null),
  /** The most turns that the maker lets a limb bolt be out. */
  mostBoltTurns: measure('boltTurns').nullable().default(null),
});
export type Bow = z.infer<typeof Bow>;
