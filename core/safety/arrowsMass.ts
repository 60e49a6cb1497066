import { arrowMass, type ArrowMass } from '../arrow/index.ts';
import { ok, type ArrowSet, type Bow, type Result } from '../model/index.ts';
import type { Band } from '../model/band.ts';
import { given } from '../model/given.ts';
import { massPerWeightCheck, type MassCheck } from './massPerWeight.ts';
import { worseLevel } from './level.ts';

/** The arrow that decides whether a set is heavy enough, and how it stands. */
export interface ArrowsMassCheck {
  readonly mass: number;
  readonly from: ArrowMass['from'] | 'numbered';
  /** Its number, where it is one of the numbered ones and stands worse than the set as it was weighed. */
  readonly number: number | null;
  readonly check: MassCheck;
  /** The lightest that is shot, be it judged by or not [kg]. */
  readonly lightest: number;
}

/**
 * Whether the arrows of a set are heavy enough for a bow: the set as it was weighed, and the lightest of its numbered arrows where that stands worse.
 *
 * @equation as massPerWeightCheck, of the mass of the set and of the lightest numbered arrow that is not set aside; the worse of the two
 * @param bow - bowKind and leastMassPerWeight [kg/N] [record]
 * @param arrowSet - what was weighed, its parts and its numbered arrows [record]
 * @param weight - F, draw weight on the fingers, value with low and high [N] [record]
 * @returns mass [kg], where it is from, the arrow's number and how it stands [record]
 * @validity refused as arrowMass where no numbered arrow was weighed either
 * @source common practice
 * @example arrowsMassCheck({ bowKind: 'self bow', leastMassPerWeight: null }, { ...exampleBundle.arrowSet, weighed: 0.02 }, { value: 200, low: 198, high: 202 }).value.check.level // "stop"
 */
export function arrowsMassCheck(
  bow: Pick<Bow, 'bowKind' | 'leastMassPerWeight'>,
  arrowSet: ArrowSet,
  weight: Band,
): Result<ArrowsMassCheck> {
  const whole = arrowMass(arrowSet);
  const lightest = lightestOf(arrowSet);
  if (!whole.ok && lightest === null) return whole;
  const ofSet: ArrowsMassCheck | null = whole.ok
    ? {
        mass: whole.value.mass,
        from: whole.value.from,
        number: null,
        check: massPerWeightCheck(bow, whole.value.mass, weight),
        lightest: Math.min(whole.value.mass, lightest?.mass ?? Infinity),
      }
    : null;
  if (ofSet !== null && lightest === null) return ok(ofSet);
  const known = given('the mass of the arrow', { arrowMass: lightest?.mass ?? null });
  if (!known.ok) return known;
  const check = massPerWeightCheck(bow, known.value.arrowMass, weight);
  return ok(
    ofSet !== null && !worseLevel(check.level, ofSet.check.level)
      ? ofSet
      : {
          mass: known.value.arrowMass,
          from: 'numbered',
          number: lightest?.number ?? null,
          check,
          lightest: known.value.arrowMass,
        },
  );
}

function lightestOf({ arrows }: Pick<ArrowSet, 'arrows'>): { readonly number: number; readonly mass: number } | null {
  const weighed = arrows.flatMap(({ number, mass, setAside }) => (setAside || mass === null ? [] : [{ number, mass }]));
  return weighed.reduce<(typeof weighed)[number] | null>(
    (least, one) => (least === null || one.mass < least.mass ? one : least),
    null,
  );
}
