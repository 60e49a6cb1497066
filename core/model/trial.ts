import { z } from './zod.ts';
import { Id, Name, Note, recordBase, Stamp } from './common.ts';
import { measure } from './limits.ts';
import { Settings } from './setup.ts';

export const TrialKind = z.enum([
  'bare shaft',
  'paper tear',
  'walk-back',
  'brace height',
  'nocking point',
  'clearance',
  'a against b',
]);
export type TrialKind = z.infer<typeof TrialKind>;

/** How much is to be shot, as it was planned before the first arrow. */
export const TrialPlan = z.strictObject({
  /** Nearest first; a trial at one distance has one. */
  distances: z.array(measure('shootingDistance')).min(1).max(12),
  /** Ends of each kind at each distance or step. */
  ends: z.int().min(1).max(40),
  /** Arrows of an end; of the first kind where two are alternated (fletched, or A). */
  arrows: z.int().min(1).max(24),
  /** Arrows of an end of the second kind (bare, or B); 0 where there is one kind only. */
  others: z.int().min(0).max(24),
  /** The settings tried one after the other: brace heights or nocking points [m]; empty for any other trial. */
  steps: z.array(z.number().min(-0.05).max(0.4)).max(20),
});
export type TrialPlan = z.infer<typeof TrialPlan>;

/** The groups of one place of the plan: shot at one distance and one step of the setting. */
export const TrialGroups = z.strictObject({
  distance: measure('shootingDistance'),
  /** The setting that was tried [m]; null where none is. */
  step: z.number().min(-0.05).max(0.4).nullable(),
  /** Fletched, or A, or the only one. */
  first: Id.nullable(),
  /** Bare, or B. */
  second: Id.nullable(),
  /** Over the chronograph, where one stood; brace height only. */
  speeds: z.array(measure('arrowSpeed')).max(60),
});
export type TrialGroups = z.infer<typeof TrialGroups>;

/** A tear in paper: from the hole of the point to that of the nock, as the archer sees it [m]. */
export const Tear = z.strictObject({
  distance: measure('paperDistance'),
  /** To the right. */
  across: measure('tear'),
  up: measure('tear'),
  fletching: z.enum(['fletched', 'bare']),
});
export type Tear = z.infer<typeof Tear>;

/** Where the powder was touched after one shot. */
export const ClearanceShot = z.strictObject({
  /** The parts of the arrow or bow with a mark on them; an even trace where the shaft slides is none. */
  touched: z.array(z.enum(['fletching', 'nock end of the shaft', 'rest', 'button', 'window', 'arm or clothing'])).max(6),
  /** How far the nock was turned from where the trial began, in parts of a turn. */
  nockTurn: z.number().min(-0.5).max(0.5),
});
export type ClearanceShot = z.infer<typeof ClearanceShot>;

/** A change that came of the trial, noted as done: what was tried stays on record. */
export const TrialChange = z.strictObject({
  at: Stamp,
  title: z.string().min(1).max(200),
  patch: Settings.partial().nullable(),
});
export type TrialChange = z.infer<typeof TrialChange>;

const MOST_ROWS = 200;

/** A tuning test, from its plan to what came of it. It can be left and taken up again, so everything it knows stands here. */
export const Trial = z.strictObject({
  ...recordBase,
  kind: z.literal('trial'),
  setupId: Id,
  trial: TrialKind,
  name: Name,
  plan: TrialPlan,
  /** The cautions were read and the place was found fit, by whoever shoots; null while they were not. */
  cautionsRead: Stamp.nullable(),
  groups: z.array(TrialGroups).max(MOST_ROWS),
  tears: z.array(Tear).max(MOST_ROWS),
  clearance: z.array(ClearanceShot).max(MOST_ROWS),
  /** The change on trial, in the archer's words; for A against B only. */
  between: z.string().max(200, 'At most 200 characters were expected.'),
  changes: z.array(TrialChange).max(60),
  /** When it was brought to an end; null while it goes on. */
  ended: Stamp.nullable(),
  note: Note,
});
export type Trial = z.infer<typeof Trial>;
