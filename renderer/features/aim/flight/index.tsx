import { useUnits } from '../../../state/useBench.ts';
import { shootsWithoutSight } from '../holds/holds.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { basis, headline } from '../words.ts';
import { DropTable } from './DropTable.tsx';
import { Given } from './Given.tsx';

function useHead({ bundle, picture }: PartProps): Head {
  const units = useUnits();
  const without = shootsWithoutSight(bundle) && bundle.bow.bowKind !== 'compound';
  return { title: headline(picture, without, units), note: basis(picture, without, units) };
}

function Body({ bundle, picture }: PartProps) {
  return (
    <>
      <Given
        bundle={bundle}
        setFor={picture.setFor}
        estimated={picture.basis.speed.from === 'estimated' ? picture.basis.speed.value : undefined}
      />
      <DropTable picture={picture} />
    </>
  );
}

/** What the flight rests on, and its figures by distance. */
export const flightPart: Part = { name: 'The flight', useHead, Body };
