import { groupsOf } from '../../../state/selectors.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { basis, headline } from '../words.ts';
import { WithoutSight } from './WithoutSight.tsx';

function useHead({ picture }: PartProps): Head {
  const units = useUnits();
  return { title: headline(picture, true, units), note: basis(picture, true, units) };
}

function Body({ bundle, picture }: PartProps) {
  const records = useBench((state) => state.records);
  const faceId = groupsOf(records, bundle.setup.id).at(-1)?.context.face ?? '80';
  return <WithoutSight bundle={bundle} picture={picture} said={picture.withoutSight.pointOn.ok} faceId={faceId} />;
}

/** Where to hold the tip of the arrow when there is no sight. */
export const holdsPart: Part = { name: 'Without a sight', useHead, Body };
