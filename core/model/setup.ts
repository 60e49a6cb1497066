import { z } from './zod.ts';
import { Form } from './archer.ts';
import { Id, Name, recordBase } from './common.ts';
import { measure } from './limits.ts';

export const CentreShotDatum = z.enum(['point', 'button']);
export type CentreShotDatum = z.infer<typeof CentreShotDatum>;

/** The settings that can be turned, and what was measured on this archer with this bow and these arrows. */
export const Settings = z.strictObject({
  braceHeight: measure('braceHeight').nullable(),
  tiller: measure('tiller').nullable(),
  nockingPoint: measure('nockingPoint').nullable(),
  centreShot: measure('centreShot').nullable(),
  /** Where the centre shot was read: at the arrow's point or at the button. The two differ three- to fourfold. */
  centreShotDatum: CentreShotDatum,
  buttonTurns: measure('buttonTurns').nullable(),
  weightOnFingers: measure('weightOnFingers').nullable(),
  /** The AMO draw that the weight on the fingers was read at: it holds for no other. Notebooks begun before it was kept have none. */
  weightDraw: measure('drawLength').nullable().default(null),
  arrowSpeed: measure('arrowSpeed').nullable(),
  pointAhead: measure('pointAhead').nullable(),
});
export type Settings = z.infer<typeof Settings>;

export const Setup = z.strictObject({
  ...recordBase,
  kind: z.literal('setup'),
  name: Name,
  archerId: Id,
  bowId: Id,
  arrowSetId: Id,
  settings: Settings,
  form: Form,
});
export type Setup = z.infer<typeof Setup>;
