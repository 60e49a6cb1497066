import { useUnits } from '../../../state/useBench.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { basis, headline } from '../words.ts';

function useHead({ picture }: PartProps): Head {
  const units = useUnits();
  return { title: headline(picture, false, units), note: basis(picture, false, units) };
}

function Body({ bundle }: PartProps) {
  return <p>{bundle.setup.name}</p>;
}

export const conditionsPart: Part = { name: 'Hill, wind, wrong distance', useHead, Body };
