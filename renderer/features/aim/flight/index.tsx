import { useUnits } from '../../../state/useBench.ts';
import { shootsWithoutSight } from '../holds/holds.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { basis, headline } from '../words.ts';
import { BareAndFletched } from './BareAndFletched.tsx';
import { Drag } from './Drag.tsx';
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
      <Given bundle={bundle} setFor={picture.setFor} basis={picture.basis} />
      <DropTable picture={picture} />
      <div className="flight-lower">
        <Drag bundle={bundle} basis={picture.basis} />
        <BareAndFletched bundle={bundle} basis={picture.basis} />
      </div>
    </>
  );
}

/** What the flight rests on, its figures by distance, and what a nose that is off its path does to it. */
export const flightPart: Part = { name: 'The flight', useHead, Body };
