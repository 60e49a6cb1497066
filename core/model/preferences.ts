import { z } from './zod.ts';
import { measure } from './limits.ts';

/** The unit each kind of figure is shown in. Any unit may be typed. */
export const UnitChoice = z.strictObject({
  length: z.enum(['in', 'cm', 'mm']),
  setting: z.enum(['mm', 'cm', 'in']),
  weight: z.enum(['lb', 'kg', 'N']),
  mass: z.enum(['gr', 'g']),
  distance: z.enum(['m', 'yd']),
  speed: z.enum(['ft/s', 'm/s']),
  deflection: z.enum(['in', 'mm']),
});
export type UnitChoice = z.infer<typeof UnitChoice>;

export const Preferences = z.strictObject({
  units: UnitChoice,
  theme: z.enum(['system', 'light', 'dark']),
  /** What the 50 mm check line measures on this person's printer [m]: what is printed at true size is made larger or smaller by it. */
  checkLine: measure('checkLine').nullable().default(null),
});
export type Preferences = z.infer<typeof Preferences>;

export const defaultPreferences: Preferences = {
  units: { length: 'in', setting: 'mm', weight: 'lb', mass: 'gr', distance: 'm', speed: 'ft/s', deflection: 'in' },
  theme: 'system',
  checkLine: null,
};
