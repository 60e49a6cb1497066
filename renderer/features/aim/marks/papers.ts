import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { refuse, type Result } from '../../../../core/model/problem.ts';
import { factorOf } from '../../../../core/units/index.ts';
import type { StripPaper } from '../../../print/index.ts';
import type { Makers } from '../print/index.ts';
import type { MarksView } from './derive.ts';
import { noMarks } from './paperWords.ts';
import { rangeCard } from './rangeCard.ts';
import type { Span } from './store.ts';
import { stripPaper } from './stripPaper.ts';
import { stripOf, stripSpan } from './useStrip.ts';

/** The strip for some distances, whose rows come from the worker. */
async function stripFor(view: MarksView, span: Span, units: UnitChoice): Promise<Result<StripPaper>> {
  const { fit } = view.picture;
  if (fit?.ok !== true) return noMarks(view);
  const rows = await stripOf(view.picture, fit.value, span, 'paper');
  if (rows === null) return refuse('overtaken', 'Other distances were asked for meanwhile.');
  return rows.ok ? stripPaper(view, rows.value, units, span.to) : rows;
}

/** The papers that the marks give. */
export function marksMakers(view: MarksView, units: UnitChoice): Makers {
  const span = stripSpan(view, units);
  if (span === null) return {};
  const factor = factorOf('distance', units);
  const wide = span.to - span.from > 60 * factor ? 10 : 5;
  return {
    strip: { make: (asked) => stripFor(view, asked, units), usual: span },
    card: { make: (asked) => rangeCard(view, asked, units), usual: { ...span, step: wide * factor } },
  };
}
