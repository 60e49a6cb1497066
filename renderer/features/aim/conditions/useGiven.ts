import { groupsOfBow } from '../../../state/selectors.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import type { PartProps } from '../part.ts';
import { givenOf, type Given } from './given.ts';
import { useConditionsChoice } from './store.ts';

/** What is asked of the page as it stands: the same object for headline and body. */
export function useGiven({ bundle, picture }: PartProps): Given {
  const units = useUnits();
  const choice = useConditionsChoice(bundle.setup.id);
  const groups = useBench(({ records }) => groupsOfBow(records, bundle.archer.id, bundle.bow.id));
  return givenOf(bundle, picture, choice, groups, units);
}
