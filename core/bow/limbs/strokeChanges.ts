import { ok, refuse, type Bundle, type Result } from '../../model/index.ts';
import { defaultPreferences } from '../../model/preferences.ts';
import { inch } from '../../units/exact.ts';
import { bracedOf, type Braced } from './braced.ts';
import { heldAt } from './heldAt.ts';
import { hingeOf, type Hinge } from './hinge.ts';
import type { LimbBow } from './limbBow.ts';
import { exitOf } from './runStroke.ts';
import { fittedBowOf } from './strokeOfSetup.ts';
import { tellsBrace } from './tellsBrace.ts';

/** What one change does to a stroke: differences, after less before. */
export interface StrokeChange {
  readonly change: 'brace +5 mm' | 'brace -5 mm' | 'draw +1 in' | 'draw -1 in';
  /** [m/s] */
  readonly speed: number;
  /** Stored [J]. */
  readonly energy: number;
  /** On the string [s]. */
  readonly time: number;
  /** On the fingers [N]. */
  readonly weight: number;
}

const changes: readonly (readonly [StrokeChange['change'], brace: number, draw: number])[] = [
  ['brace +5 mm', 0.005, 0],
  ['brace -5 mm', -0.005, 0],
  ['draw +1 in', 0, inch],
  ['draw -1 in', 0, -inch],
];

/**
 * What 5 mm of brace height or an inch of draw does to the stroke of a set-up.
 *
 * @equation the same limbs, their hinge fitted to the curve up to an inch beyond full draw, with a string twisted to another s₀ or drawn to another D; each run less the run without a change
 * @param bundle - the set-up with its records [record]
 * @returns differences of speed [m/s], stored energy [J], time on the string [s] and weight on the fingers [N]; those of the brace height are left out where tellsBrace says so [list]
 * @validity as strokeOfSetup; a brace height is changed by twisting the string, limbs, arrow and archer stay as they are; beyond the deepest draw that was read the curve is an estimate
 * @source own derivation
 * @example strokeChanges(exampleBundle).value.map((change) => Math.sign(change.speed)) // [-1, 1, 1, -1]
 */
export function strokeChanges(bundle: Bundle): Result<readonly StrokeChange[]> {
  const found = fittedBowOf(bundle, defaultPreferences.units);
  if (!found.ok) return found;
  const { bow } = found.value;
  const deeper = { ...bow, draw: bow.draw + inch };
  const braced = bracedOf(deeper);
  if (!braced.ok) return braced;
  const hinge = hingeOf(deeper, braced.value);
  if (!hinge.ok) return hinge;
  const now = changed(bow, hinge.value, braced.value, 0, 0);
  if (!now.ok) return now;
  const told: StrokeChange[] = [];
  for (const [change, brace, draw] of changes) {
    if (brace !== 0 && !tellsBrace(now.value.atBrace, now.value.atDraw)) continue;
    const then = changed(bow, hinge.value, braced.value, brace, draw);
    if (!then.ok) return then;
    told.push({
      change,
      speed: then.value.speed - now.value.speed,
      energy: then.value.energy - now.value.energy,
      time: then.value.time - now.value.time,
      weight: then.value.weight - now.value.weight,
    });
  }
  return ok(told);
}

/** What is compared, and the tensions at rest [N]. */
interface Drawn extends Omit<StrokeChange, 'change'> {
  readonly atBrace: number;
  readonly atDraw: number;
}

/** The same limbs with their string twisted to another brace height, held at another draw, and loosed. */
function changed(before: LimbBow, hinge: Hinge, { slack: slackBefore }: Braced, brace: number, draw: number): Result<Drawn> {
  const bow = { ...before, brace: before.brace + brace, draw: before.draw + draw };
  const sine = (bow.brace - bow.hingeX) / bow.limb;
  if (!(Math.abs(sine) < 1)) return cannotBe;
  const theta = Math.asin(sine);
  const length = bow.hingeY + bow.limb * Math.cos(theta);
  // A straight string has the lever ell sin θ: this is the tension with which these limbs stand at this brace height.
  const tension = hinge.moment(theta) / (bow.limb * sine);
  const slack = length / (1 + tension / bow.stringStiffness);
  if (!(tension > 0 && Math.abs(slack / slackBefore - 1) < 0.1)) return cannotBe;
  const string: Braced = { theta, tension, slack, spring: bow.stringStiffness / slack };
  const atDraw = heldAt(bow, string, hinge.moment, bow.draw, hinge.atDraw.theta);
  if (!(atDraw.force > 0 && atDraw.tension > 0)) return cannotBe;
  const left = exitOf(bow, string, { ...hinge, atDraw });
  if (!left.ok) return left;
  const { exit, work } = left.value;
  return ok({
    speed: exit.speed,
    energy: work,
    time: exit.time,
    weight: atDraw.force,
    atBrace: string.tension,
    atDraw: atDraw.tension,
  });
}

const cannotBe = refuse('cannot be', 'These limbs have no stroke at a brace height or draw near this one. Measure both again.');
