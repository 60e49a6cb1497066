import type { Bundle } from '../../model/bundle.ts';
import type { Stamp } from '../../model/common.ts';
import type { FlownArrow, SightMark } from '../../model/sightMark.ts';

/**
 * What a sight mark holds for: copies of archer, settings, form and arrow as they stand.
 *
 * @equation a copy of each figure that decides where the sight must stand
 * @param bundle - the set-up with its records [record]
 * @param shotAt - when the mark was shot in [record]
 * @returns the context of a new mark [record]
 * @validity any set-up that the records accept
 * @source own derivation
 * @example markContext(exampleBundle, exampleNow).form.eyeHeight // 0.11
 */
export function markContext({ archer, arrowSet, setup }: Bundle, shotAt: Stamp): SightMark['context'] {
  return {
    shotAt,
    weather: '',
    drawLength: archer.drawLength,
    form: setup.form,
    settings: setup.settings,
    arrowSetId: arrowSet.id,
    arrow: flownArrow(arrowSet),
  };
}

function flownArrow(arrowSet: Bundle['arrowSet']): FlownArrow {
  const { material, length, diameter, linearDensity, pointMass, insertMass, nockMass, fletchingMass } = arrowSet;
  const { pinMass, wrapMass, weighed, vaneCount, vaneLength } = arrowSet;
  const parts = { linearDensity, pointMass, insertMass, nockMass, fletchingMass, pinMass, wrapMass, weighed };
  return { material, length, diameter, ...parts, vaneCount, vaneLength };
}
