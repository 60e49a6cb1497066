import { z } from './zod.ts';
import { Form } from './archer.ts';
import { Id, Name, recordBase } from './common.ts';
import { measure } from './limits.ts';
import { FlightSpeed, MOST_READINGS, SpeedReading } from './readings.ts';

export const CentreShotDatum = z.enum(['point', 'button']);
export type CentreShotDatum = z.infer<typeof CentreShotDatum>;

/** Polyester stretches and is kind to old bows; the low-stretch fibres are only for bows that their makers allow them on. */
export const StringMaterial = z.enum(['polyester', 'linen', 'HMPE', 'HMPE and LCP', 'LCP', 'aramid', 'other']);
export type StringMaterial = z.infer<typeof StringMaterial>;

export const NockFit = z.enum(['a light tap frees it', 'tight', 'loose']);
export type NockFit = z.infer<typeof NockFit>;

export const SightGrows = z.enum(['down', 'up']);
export type SightGrows = z.infer<typeof SightGrows>;

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
  /** The whole arrow and the brace height that the speed was measured with: it holds for no other. Not noted in notebooks begun before. */
  speedMass: measure('arrowMass').nullable().default(null),
  speedBrace: measure('braceHeight').nullable().default(null),
  pointAhead: measure('pointAhead').nullable(),
  /** From the limb's root to the string, above and below; their difference is the tiller, which is read alone where these are not given. */
  tillerUpper: measure('limbToString').nullable().default(null),
  tillerLower: measure('limbToString').nullable().default(null),
  /** Turns out from fully in. */
  upperBolt: measure('boltTurns').nullable().default(null),
  lowerBolt: measure('boltTurns').nullable().default(null),
  nockFit: NockFit.nullable().default(null),
  buttonPreload: measure('buttonPreload').nullable().default(null),
  buttonRate: measure('buttonRate').nullable().default(null),
  stringMaterial: StringMaterial.nullable().default(null),
  strands: measure('strands').nullable().default(null),
  /** From loop to loop as it is measured under load, not braced. */
  stringLength: measure('stringLength').nullable().default(null),
  /** With its servings and nocking points. */
  stringMass: measure('stringMass').nullable().default(null),
  twists: measure('twists').nullable().default(null),
  stringFitted: z.iso.date('A date was expected, year first: 2026-06-21.').nullable().default(null),
  /** One unit of the numbers on the sight's bar, and whether they grow as the pin moves down, as it does for farther targets. */
  sightUnit: measure('sightUnit').nullable().default(null),
  sightGrows: SightGrows.nullable().default(null),
  /** The ends of the bar, in its own numbers. */
  sightLowest: measure('sightReading').nullable().default(null),
  sightHighest: measure('sightReading').nullable().default(null),
  /** From the eye to the pin along the arrow at full draw. */
  sightRadius: measure('sightRadius').nullable().default(null),
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
  /** Arrows of several masses over the chronograph, and the brace height and AMO draw that they were shot at. */
  chronograph: z.array(SpeedReading).max(MOST_READINGS).default([]),
  chronographBrace: measure('braceHeight').nullable().default(null),
  chronographDraw: measure('drawLength').nullable().default(null),
  /** One arrow's speed at several places of its flight: what its drag follows from. */
  flightSpeeds: z.array(FlightSpeed).max(MOST_READINGS).default([]),
});
export type Setup = z.infer<typeof Setup>;
