import { buildArrow, deflectionOf, spineOf } from '../../../core/arrow/index.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import { assumedBalance, assumedDensity } from '../../drawing/arrow/layout.ts';
import type { ArrowPicture } from '../../drawing/arrow/picture.ts';
import type { ArrowField } from './useArrowFields.ts';

/** What blank figures are taken to be, where that follows from the others: shown in pencil. A blank pin or wrap counts as none. */
export function assumedFigures(arrowSet: ArrowSet, picture: ArrowPicture): Partial<Record<ArrowField, number | null>> {
  const spine = arrowSet.deflection === null ? spineOf(arrowSet) : null;
  const build = arrowSet.weighed === null ? buildArrow(arrowSet) : null;
  return {
    balance: assumedBalance(picture),
    linearDensity: assumedDensity(arrowSet, picture),
    deflection: spine?.ok === true ? deflectionOf(spine.value.stiffness.value, arrowSet.convention) : null,
    weighed: build?.ok === true ? build.value.mass : null,
    pinMass: 0,
    wrapMass: 0,
  };
}
