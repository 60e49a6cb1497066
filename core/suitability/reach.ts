import { grain, inch } from '../units/exact.ts';
import { tradeSteps, type Move } from './move.ts';

/**
 * Whether a move asks for more than anybody would change on a bow and its arrows.
 *
 * @equation point outside 60 to 145 gr; shaft by more than 2 in; weight by more than a tenth of it
 * @param move - what is changed, from and to [SI] [record]
 * @returns true when it is beyond reach [choice]
 * @validity moves of whatWouldCentre; another shaft is never beyond reach
 * @source from memory
 * @example beyondReach({ what: 'length', from: 0.7112, to: 0.9017 }) // true
 */
export function beyondReach({ what, from, to }: Pick<Move, 'what' | 'from' | 'to'>): boolean {
  const { usualPointGr, lengthReachIn, weightShare } = tradeSteps;
  const slack = 1 + 1e-9;
  switch (what) {
    case 'point':
      return to < (usualPointGr.from * grain) / slack || to > usualPointGr.to * grain * slack;
    case 'length':
      return Math.abs(to - from) > lengthReachIn * inch * slack;
    case 'weight':
      return Math.abs(to / from - 1) > weightShare * slack;
    case 'shaft':
      return false;
  }
}
