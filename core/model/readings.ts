import { z } from './zod.ts';
import { measure } from './limits.ts';

/** One pair read on a bow scale. Draws are kept as AMO draws, whatever datum they were read from. */
export const ForceReading = z.strictObject({
  draw: measure('readingDraw'),
  force: measure('readingForce'),
  /** Read while drawing, or while letting the string down slowly: the difference between the two is what the bow keeps for itself. */
  way: z.enum(['draw', 'let-down']),
});
export type ForceReading = z.infer<typeof ForceReading>;

/** One arrow over the chronograph. */
export const SpeedReading = z.strictObject({ mass: measure('arrowMass'), speed: measure('arrowSpeed') });
export type SpeedReading = z.infer<typeof SpeedReading>;

/** The speed of one arrow so far down its flight. */
export const FlightSpeed = z.strictObject({ distance: measure('speedDistance'), speed: measure('arrowSpeed') });
export type FlightSpeed = z.infer<typeof FlightSpeed>;

/** More rows than anybody reads off a scale: a table of this size is another table. */
export const MOST_READINGS = 400;
