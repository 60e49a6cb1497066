import type { FittedMarks } from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { countWord } from '../../../../core/model/sentence.ts';
import { refuse } from '../../../../core/model/problem.ts';
import { showQuantity, textQuantity } from '../../../../core/units/index.ts';
import type { MarksView } from './derive.ts';
import { isSame } from './isSame.ts';

/** Whether a mark that counts was shot in at a distance. */
export const knownAt = ({ picture: { proven, from } }: MarksView, distance: number): boolean =>
  from === 'proven' && proven.some((mark) => mark.leftOut === null && isSame(mark.distance, distance));

export const labelOf = (distance: number, units: UnitChoice): string => showQuantity(distance, 'distance', units).figure;

/** What the marks rest on, as it is printed beside them. */
export function restsOn({ picture, next }: MarksView, fit: FittedMarks, units: UnitChoice): string {
  if (picture.from === 'moved') return 'From marks that are no longer proven, moved by what changed since: shoot them in again.';
  const count = fit.marks.length;
  const more = next === null ? '' : ` One mark more, at ${textQuantity(next.distance, 'distance', units)}, is advised.`;
  return `From ${countWord(count)} mark${count === 1 ? '' : 's'} shot in; proven until archer, bow, arrows or form change.${more} Intervals: 95 %.`;
}

/** Why there is nothing to print. */
export const noMarks = ({ picture: { fit } }: MarksView): { ok: false; problem: { code: string; sentence: string } } =>
  fit !== null && !fit.ok
    ? { ok: false, problem: fit.problem }
    : refuse('no-marks', 'A sight mark or two are needed first: a distance, and what the sight reads there.');
