import { z } from './zod.ts';
import { Name, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';
import { MOST_ARROWS, NumberedArrow } from './numberedArrow.ts';

/** "500" is ambiguous: a spine is a deflection with its span and its load. */
export const SpineConvention = z.enum(['28 in, 880 g', '26 in, 2 lb']);
export type SpineConvention = z.infer<typeof SpineConvention>;

export const ArrowSet = z.strictObject({
  ...recordBase,
  kind: z.literal('arrowSet'),
  name: Name,
  material: z.enum(['carbon', 'aluminium', 'wood', 'other']),
  /** Throat of the nock to end of shaft; the point is not counted. */
  length: measure('arrowLength').nullable(),
  deflection: measure('deflection').nullable(),
  convention: SpineConvention,
  linearDensity: measure('linearDensity').nullable(),
  diameter: measure('shaftDiameter').nullable(),
  pointMass: measure('pointMass').nullable(),
  insertMass: measure('insertMass').nullable(),
  nockMass: measure('nockMass').nullable(),
  fletchingMass: measure('fletchingMass').nullable(),
  /** The whole fletched arrow on a scale; when it is there it governs the sum of the parts. */
  weighed: measure('arrowMass').nullable(),
  lookedOver: Stamp.nullable(),
  /** Of a tube: with the outer diameter it gives the spine of a metal shaft that nobody has put on a tester. */
  wall: measure('wall').nullable().default(null),
  /** Throat of the nock to the place where the whole arrow balances on an edge. */
  balance: measure('balance').nullable().default(null),
  pinMass: measure('pinMass').nullable().default(null),
  wrapMass: measure('wrapMass').nullable().default(null),
  vaneCount: measure('vaneCount').nullable().default(null),
  vaneLength: measure('vaneLength').nullable().default(null),
  vaneFromThroat: measure('vaneFromThroat').nullable().default(null),
  arrows: z
    .array(NumberedArrow)
    .max(MOST_ARROWS, `At most ${MOST_ARROWS} numbered arrows were expected in one set.`)
    .refine(
      (arrows) => new Set(arrows.map(({ number }) => number)).size === arrows.length,
      'Each number is given to one arrow only.',
    )
    .default([]),
});
export type ArrowSet = z.infer<typeof ArrowSet>;
