import { z } from './zod.ts';
import { Stamp } from './common.ts';
import { measure } from './limits.ts';
import { ArrowLookOver } from './lookOver.ts';

/** One arrow of a numbered set, as it was weighed, spined, rolled and looked over. */
export const NumberedArrow = z.strictObject({
  number: z.int('An arrow number was expected as a whole number.').min(1).max(999),
  mass: measure('arrowMass').nullable(),
  /** Deflections on the set's tester, a quarter turn apart from the index mark on; most people read the first one only. */
  spines: z.array(measure('deflection').nullable()).max(4),
  /** Total indicator reading. */
  straightness: measure('straightness').nullable(),
  lookOver: ArrowLookOver.nullable(),
  lookedOver: Stamp.nullable(),
  /** Set aside by somebody, for whatever reason: it is kept on record and left out of the set's figures. */
  setAside: z.boolean(),
  note: z.string().max(200, 'A note of at most 200 characters was expected.'),
});
export type NumberedArrow = z.infer<typeof NumberedArrow>;

export const MOST_ARROWS = 144;
