import { heavierWeight, stringFigures } from '../bow/index.ts';
import type { Bundle } from '../model/bundle.ts';
import { arrowsCondition } from './arrowsCondition.ts';
import { arrowsMassCheck } from './arrowsMass.ts';
import { boltsCheck } from './bolts.ts';
import { bowCondition } from './bowCondition.ts';
import { compoundShaftCheck } from './compound.ts';
import { stringFibreCheck } from './fibre.ts';
import { handCheck } from './hand.ts';
import { pointAheadCheck } from './pointAhead.ts';

/** What can stop a set-up; the findings have the same ids. */
export type Stop =
  | 'lookOver.bow'
  | 'dryFired'
  | 'arrowFlaws'
  | 'pointAhead'
  | 'arrowMass'
  | 'hand'
  | 'compoundShaft'
  | 'stringFibre'
  | 'strands'
  | 'bolts';

/**
 * What stands against shooting a set-up at all, by the checks of this room.
 *
 * @equation every check of the room whose level is a stop
 * @param bundle - the set-up with its records [record]
 * @returns which checks stop, in the order of the findings [list]
 * @validity a brace height outside the maker's range is not among them: mending it is the next change itself
 * @source common practice
 * @example standingStops(exampleBundle) // []
 */
export function standingStops(bundle: Bundle): readonly Stop[] {
  const { archer, bow, arrowSet, setup } = bundle;
  const { settings } = setup;
  const condition = bowCondition(bow);
  const weight = heavierWeight(bow, archer, settings);
  const string = stringFigures(bundle, () => weight);
  const mass = weight.ok ? arrowsMassCheck(bow, arrowSet, weight.value) : null;
  const reach = { arrowLength: arrowSet.length, drawLength: archer.drawLength, measured: settings.pointAhead };
  const checks: readonly (readonly [Stop, boolean])[] = [
    ['lookOver.bow', condition.flaws.length > 0],
    ['dryFired', condition.dryFired === 'not looked over since'],
    ['arrowFlaws', arrowsCondition(arrowSet).flawed.length > 0],
    ['pointAhead', pointAheadCheck(archer, reach).level === 'stop'],
    ['arrowMass', mass?.ok === true && mass.value.check.level === 'stop'],
    ['hand', handCheck(archer, bow) === 'stop'],
    ['compoundShaft', compoundShaftCheck(bow, arrowSet) === 'stop'],
    ['stringFibre', stringFibreCheck(bow, settings) === 'stop'],
    ['strands', string.ok && string.value.holds === 'beyond its strength'],
    ['bolts', boltsCheck(bow, settings).level === 'stop'],
  ];
  return checks.filter(([, stops]) => stops).map(([stop]) => stop);
}
