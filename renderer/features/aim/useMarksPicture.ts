import { useMemo } from 'react';
import { flightBasis, marksPicture, spreadPerMetre, type MarksPicture } from '../../../core/aim/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import { groupsOfBow, sightMarksOf, type Records } from '../../state/selectors.ts';
import { useBench } from '../../state/useBench.ts';
import { shootsWithoutSight } from './holds/holds.ts';

const known = new WeakMap<Bundle, { readonly records: Records; readonly picture: MarksPicture }>();

/** Page, headline and findings ask for the same: it is worked out for the first of them. */
export function marksPictureOf(records: Records, bundle: Bundle): MarksPicture {
  const last = known.get(bundle);
  if (last?.records === records) return last.picture;
  const { setup } = bundle;
  const spread = spreadPerMetre(groupsOfBow(records, setup.archerId, setup.bowId));
  const picture = marksPicture(bundle, sightMarksOf(records, setup.id), spread);
  known.set(bundle, { records, picture });
  return picture;
}

/** What the sight marks say; null where there is no mark, and no sight to be set or no flight yet that a mark could be added to. */
export function useMarksPicture(bundle: Bundle | null): MarksPicture | null {
  const records = useBench((state) => state.records);
  return useMemo(() => {
    if (bundle === null) return null;
    const marked = sightMarksOf(records, bundle.setup.id).length > 0;
    if (!marked && (shootsWithoutSight(bundle) || !flightBasis(bundle).ok)) return null;
    return marksPictureOf(records, bundle);
  }, [records, bundle]);
}
