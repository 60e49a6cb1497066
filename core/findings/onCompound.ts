import type { Bundle } from '../model/bundle.ts';
import { compoundPassCheck, compoundShaftCheck } from '../safety/index.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';

/**
 * Wooden arrows on a compound.
 *
 * @equation as compoundShaftCheck of the safety room: a stop
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null for every other bow and shaft [record]
 * @validity every bow
 * @source common practice
 * @example compoundShaftFinding({ ...exampleBundle, bow: { ...exampleBundle.bow, bowKind: 'compound' }, arrowSet: { ...exampleBundle.arrowSet, material: 'wood' } }).level // "stop"
 */
export function compoundShaftFinding(bundle: Bundle): Finding | null {
  const level = compoundShaftCheck(bundle.bow, bundle.arrowSet);
  if (level === 'in range') return null;
  return {
    id: 'compoundShaft',
    level,
    title: 'Wooden arrows on a compound',
    detail: 'Do not shoot them from it: a wooden shaft can break as it is loosed and go into the hand. Check both records.',
    rule: null,
    short: { figure: 'wood', word: 'arrows' },
    why: whyRule(
      'Wood and a compound',
      'A compound loads its arrow harder than wooden shafts are graded for. They are made for recurves, longbows and other bows without cams. The makers of bow and shafts say what may be shot.',
      [
        ['', 'bow', 'compound'],
        ['', 'shaft', 'wood'],
      ],
      'common practice',
    ),
    action: goTo('Fix', 'arrow', 'arrowSet.material'),
  };
}

/**
 * A compound whose arrow lies on the hand or the shelf.
 *
 * @equation as compoundPassCheck of the safety room: a caution
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null for every other bow, and for a compound with a rest [record]
 * @validity every bow
 * @source common practice
 * @example compoundPassFinding({ ...exampleBundle, bow: { ...exampleBundle.bow, bowKind: 'compound', arrowPass: 'hand' } }).title // "Compound shot off the hand"
 */
export function compoundPassFinding(bundle: Bundle): Finding | null {
  const level = compoundPassCheck(bundle.bow);
  if (level === 'in range') return null;
  return {
    id: 'compoundPass',
    level,
    title: `Compound shot off the ${bundle.bow.arrowPass}`,
    detail: 'Fit an arrow rest: an arrow this fast can cut the hand, or strike the riser and fly wide. Check the record.',
    rule: null,
    short: { figure: bundle.bow.arrowPass, word: 'no rest' },
    why: whyRule(
      'A compound and its rest',
      'A compound is made to be shot from a rest that carries the arrow clear of riser and hand. Off the hand or a bare shelf the fletching passes skin or riser at full speed. The bow maker says what rest it takes.',
      [['', 'arrow passes over', bundle.bow.arrowPass]],
      'common practice',
    ),
    action: goTo('Fix', 'bow', 'bow.arrowPass'),
  };
}
