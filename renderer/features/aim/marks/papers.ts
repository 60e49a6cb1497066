import type { StripRow } from '../../../../core/aim/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { refuse, type Result } from '../../../../core/model/problem.ts';
import { factorOf } from '../../../../core/units/index.ts';
import type { Makers } from '../print/index.ts';
import type { MarksView } from './derive.ts';
import { noMarks } from './paperWords.ts';
import { rangeCard } from './rangeCard.ts';
import type { Span } from './store.ts';
import { stripPaper } from './stripPaper.ts';
import { stripOf, stripSpan } from './useStrip.ts';

/** A paper for some distances, whose intervals come from the worker as those on the screen do. */
async function withRows<P>(view: MarksView, span: Span, make: (rows: readonly StripRow[]) => Result<P>): Promise<Result<P>> {
  const { fit } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const rows = await stripOf(view.picture, fit.value, span, 'paper');
  if (rows === null) return refuse('overtaken', 'Other distances were asked for meanwhile.');
  return rows.ok ? make(rows.value) : rows;
}

/** The papers that the marks give. */
export function marksMakers(view: MarksView, units: UnitChoice): Makers {
  const span = stripSpan(view, units);
  if (span === null) return {};
  const factor = factorOf('distance', units);
  const wide = span.to - span.from > 60 * factor ? 10 : 5;
  return {
    strip: { make: (asked) => withRows(view, asked, (rows) => stripPaper(view, rows, units, asked.to)), usual: span },
    card: {
      make: (asked) => withRows(view, asked, (strip) => rangeCard({ ...view, strip }, asked, units)),
      usual: { ...span, step: wide * factor },
    },
  };
}
