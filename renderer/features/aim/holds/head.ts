import type { UnitChoice } from '../../../../core/model/preferences.ts';
import type { AimPicture } from '../derive.ts';
import { basis, headline } from '../words.ts';

/** The headline of this part with what it rests on: the point-on distance, or why there is none. */
export function holdsHead(picture: AimPicture, units: UnitChoice): { readonly title: string; readonly note: string } {
  const { pointOn } = picture.withoutSight;
  if (pointOn.ok) return { title: headline(picture, true, units), note: basis(picture, true, units) };
  const { code, field, sentence } = pointOn.problem;
  if (code !== 'missing') return { title: 'No point-on distance', note: sentence };
  return {
    title: `No points of aim yet: ${field === 'eyeHeight' ? 'the eye height' : 'the arrow’s length'} is missing`,
    note: sentence,
  };
}
