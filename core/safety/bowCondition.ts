import type { Bow, BowKind, BowLookOver } from '../model/index.ts';
import type { SafetyLevel } from './level.ts';

/** What is looked at on a bow, in the order in which hands go over it. */
const parts = ['limbs', 'tips', 'bolts', 'string', 'serving'] as const satisfies readonly (keyof BowLookOver)[];
export type BowPart = (typeof parts)[number];

/** Their limbs are held by bolts; nothing of the others could come loose. */
const bolted: readonly BowKind[] = ['take-down recurve', 'compound'];

/**
 * The parts that a bow of a kind is looked over for.
 *
 * @equation limbs, tips, bolts where it has any, string, serving
 * @param bowKind - the kind of bow [choice]
 * @returns the parts, in the order in which hands go over them [list]
 * @validity any kind
 * @source common practice
 * @example bowPartsOf('longbow') // ["limbs", "tips", "string", "serving"]
 */
export function bowPartsOf(bowKind: BowKind): readonly BowPart[] {
  return parts.filter((part) => part !== 'bolts' || bolted.includes(bowKind));
}

/** What a dry fire may have cracked or torn: a look-over that left one of them out has not looked for it. */
const strained: readonly BowPart[] = ['limbs', 'tips', 'string'];

export interface BowCondition {
  readonly level: SafetyLevel;
  /** Parts with a flaw, and parts that nobody looked at. */
  readonly flaws: readonly BowPart[];
  readonly unseen: readonly BowPart[];
  /** Whether it was loosed without an arrow, and if so whether anybody has looked it over since. */
  readonly dryFired: 'never' | 'looked over since' | 'not looked over since';
}

/**
 * What the last look-over says of a bow: a flaw, or a dry fire that nobody has looked at since, means that nothing is shot from it.
 *
 * @equation stop for any flaw and for a dry fire at or after the last look-over, or where limbs, tips or string were not looked at in it; caution for an earlier dry fire; unknown while a part, or the whole, was not looked at; else in range
 * @param bow - bowKind, lookOver, lookedOver and dryFired [record]
 * @returns level, the parts with a flaw, the parts not looked at and how a dry fire stands [record]
 * @validity it says what somebody saw, and nothing of what cannot be seen; whether a look-over is fresh is asked elsewhere
 * @source common practice
 * @example bowCondition({ bowKind: 'longbow', lookOver: null, lookedOver: null, dryFired: null }).level // "unknown"
 */
export function bowCondition({
  bowKind,
  lookOver,
  lookedOver,
  dryFired: fired,
}: Pick<Bow, 'bowKind' | 'lookOver' | 'lookedOver' | 'dryFired'>): BowCondition {
  const having = (condition: 'flaw' | 'not looked at') => bowPartsOf(bowKind).filter((part) => lookOver?.[part] === condition);
  const [flaws, unseen] = [having('flaw'), having('not looked at')];
  const looked = lookedOver === null ? null : Date.parse(lookedOver.at);
  const since =
    fired !== null && looked !== null && looked > Date.parse(fired.at) && !strained.some((part) => unseen.includes(part));
  const dryFired = fired === null ? 'never' : since ? 'looked over since' : 'not looked over since';
  const level =
    flaws.length > 0 || dryFired === 'not looked over since'
      ? 'stop'
      : dryFired === 'looked over since'
        ? 'caution'
        : lookedOver === null || unseen.length > 0
          ? 'unknown'
          : 'in range';
  return { level, flaws, unseen, dryFired };
}
