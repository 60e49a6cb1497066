import { z } from './zod.ts';
import { Name, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';

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
});
export type ArrowSet = z.infer<typeof ArrowSet>;
