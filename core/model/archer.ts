import { z } from './zod.ts';
import { Name, recordBase } from './common.ts';
import { measure } from './limits.ts';

export const Hand = z.enum(['right', 'left']);
export type Hand = z.infer<typeof Hand>;

/** How this archer shoots. Marks and bare-shaft readings hold for one archer, bow, arrow and form, so a set-up keeps its own copy. */
export const Form = z.strictObject({
  anchor: z.enum(['under the jaw', 'side of the face', 'other']).nullable(),
  hook: z.enum(['split', 'three under', 'string walk']).nullable(),
  fingerCover: z.enum(['tab', 'glove', 'bare']).nullable(),
  aiming: z.enum(['sight', 'point of aim', 'gap', 'none']).nullable(),
  eyeHeight: measure('eyeHeight').nullable(),
});
export type Form = z.infer<typeof Form>;

export const AgeGroup = z.enum(['up to 12', '13 or 14', '15 or 16', '17 or over']);
export type AgeGroup = z.infer<typeof AgeGroup>;

export const Archer = z.strictObject({
  ...recordBase,
  kind: z.literal('archer'),
  name: Name,
  hand: Hand,
  /** AMO/ATA draw length: nocking point to pivot point at full draw, plus 1 3/4 in. */
  drawLength: measure('drawLength').nullable(),
  /** While nobody noted it the archer is judged as a learner, whose margins are the wider ones. */
  experience: z.enum(['learner', 'settled']).nullable(),
  clicker: z.boolean(),
  /** For the usual starting weights only. */
  ageGroup: AgeGroup.nullable().default(null),
  /** How long full draw is held without a tremor, on a bow of this weight. */
  holdTime: measure('holdTime').nullable().default(null),
  /** From level ground up to the eye, standing as one shoots: where a marker on the ground must lie follows from it. */
  eyeAboveGround: measure('eyeAboveGround').nullable().default(null),
  /** The form last used; each new set-up starts from a copy of it. */
  form: Form,
});
export type Archer = z.infer<typeof Archer>;
