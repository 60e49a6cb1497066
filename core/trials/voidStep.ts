import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Problem } from '../model/problem.ts';
import { goTo } from '../findings/parts.ts';
import { textQuantity } from '../units/index.ts';
import type { NextStep } from './reading.ts';
import { howMany, stepOf } from './step.ts';

/**
 * What to do when two groups give no reading.
 *
 * @equation by the problem: shoot both at one distance, in one form, with one set-up, more arrows, or place the shots; a compound is left
 * @param problem - why there is no reading [record]
 * @param fletched - the fletched group [record]
 * @param bare - the bare group [record]
 * @param units - the person's choice of units [record]
 * @returns the step [record]
 * @validity the problems of readBareShaft
 * @source common practice
 * @example voidStep({ code: 'distance', sentence: 'One distance was expected.' }, exampleFletched, exampleBare, defaultPreferences.units).title // "Shoot both at 18 m"
 */
export function voidStep(problem: Problem, fletched: ShotGroup, bare: ShotGroup, units: UnitChoice): NextStep {
  const near = Math.min(fletched.context.distance, bare.context.distance);
  const at = textQuantity(near, 'distance', units);
  const then = `Shoot ${howMany(fletched, bare)} at ${at}, in turn.`;
  const again = (title: string) => stepOf('again', title, problem.sentence, { then });
  switch (problem.code) {
    case 'compound':
      return stepOf('leave', 'No next change for a compound', problem.sentence, {});
    case 'hand':
      return stepOf('measure', 'Check whose hand is on record', problem.sentence, {
        go: goTo('Go to the hand', 'bow', 'archer.hand'),
      });
    case 'fletching':
      return stepOf('again', 'Choose one fletched and one bare group', problem.sentence, {});
    case 'distance':
      return again(`Shoot both at ${at}`);
    case 'form':
      return again('Shoot both in one form');
    case 'setup':
      return again('Shoot both with one set-up');
    case 'one-hole':
      return again('Place each shot where it struck, or shoot more');
    case 'bad-position':
      return again('Put each shot where it struck');
    default:
      return again(`Shoot ${howMany(fletched, bare)}`);
  }
}
