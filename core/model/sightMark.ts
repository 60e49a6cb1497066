import { z } from './zod.ts';
import { Form } from './archer.ts';
import { ArrowSet } from './arrowSet.ts';
import { Id, Note, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';
import { Settings } from './setup.ts';

/** What of an arrow decides how it flies. */
export const FlownArrow = ArrowSet.pick({
  material: true,
  length: true,
  diameter: true,
  linearDensity: true,
  pointMass: true,
  insertMass: true,
  nockMass: true,
  fletchingMass: true,
  pinMass: true,
  wrapMass: true,
  weighed: true,
  vaneCount: true,
  vaneLength: true,
});
export type FlownArrow = z.infer<typeof FlownArrow>;

/**
 * A distance and what the sight read there, once the arrows came to the middle. It holds for one archer, bow, arrow and form, so it keeps
 * copies of them as they stood: while the set-up is still the same the mark is proven, and afterwards it is not.
 */
export const SightMark = z.strictObject({
  ...recordBase,
  kind: z.literal('sightMark'),
  setupId: Id,
  distance: measure('shootingDistance'),
  /** In the numbers of the sight's own scale. */
  reading: measure('sightReading'),
  /** How many arrows settled it; null where nobody counted. */
  shots: z.int().min(1, 'A number of arrows from 1 on was expected.').max(999, 'At most 999 arrows were expected.').nullable(),
  /** Why somebody left it out of the fit; null for a mark that counts. It is never dropped. */
  leftOut: z
    .string()
    .trim()
    .min(1, 'A reason was expected.')
    .max(200, 'A reason of at most 200 characters was expected.')
    .nullable(),
  note: Note,
  context: z.strictObject({
    shotAt: Stamp,
    weather: z.string().max(200),
    drawLength: measure('drawLength').nullable(),
    form: Form,
    settings: Settings,
    arrowSetId: Id,
    arrow: FlownArrow,
  }),
});
export type SightMark = z.infer<typeof SightMark>;
