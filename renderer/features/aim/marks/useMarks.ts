import { useMemo } from 'react';
import { spreadPerMetre } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { groupsOfBow, type Records } from '../../../state/selectors.ts';
import { useBench, useUnits } from '../../../state/useBench.ts';
import { marksPictureOf } from '../useMarksPicture.ts';
import { marksView, type MarksView, withStrip } from './derive.ts';
import { type Span, useDesk } from './store.ts';
import { stripSpan, useStrip } from './useStrip.ts';

interface Known {
  readonly records: Records;
  readonly units: UnitChoice;
  readonly span: Span | null;
  readonly view: MarksView;
}

/** Head and body of the part ask for the same: a bundle is made anew with every write, so that it stands for what the notebook holds. */
const views = new WeakMap<Bundle, Known>();

function viewOf(bundle: Bundle, records: Records, units: UnitChoice, span: Span | null): MarksView {
  const known = views.get(bundle);
  if (known !== undefined && known.records === records && known.units === units && known.span === span) return known.view;
  const { setup } = bundle;
  const spread = spreadPerMetre(groupsOfBow(records, setup.archerId, setup.bowId));
  const view = marksView(bundle, marksPictureOf(records, bundle), spread, units, span);
  views.set(bundle, { records, units, span, view });
  return view;
}

/** What the marks say: at once to first order, and with the intervals of the worker as soon as it has them. */
export function useMarks(bundle: Bundle): MarksView {
  const records = useBench((state) => state.records);
  const units = useUnits();
  const { span } = useDesk(bundle.setup.id);
  const view = viewOf(bundle, records, units, span);
  const strip = useStrip(
    view.picture,
    useMemo(() => stripSpan(view, units), [view, units]),
  );
  return useMemo(() => (strip === null ? view : withStrip(view, strip)), [view, strip]);
}
