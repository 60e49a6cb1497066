import { type FittedMarks, fitMarks } from '../../../../core/aim/index.ts';
import { misfitOf, type MarksView } from './derive.ts';

/** Without marks that do not fit, which would draw the line to themselves: they are to be seen off it. */
const others = new WeakMap<FittedMarks, FittedMarks>();

/** The fit that the line is drawn from: of all marks that count, or of those that fit where one does not. */
export function lineFit({ picture: { fit } }: MarksView): FittedMarks | null {
  if (fit?.ok !== true) return null;
  const { value } = fit;
  if (misfitOf(value) === null) return value;
  const known = others.get(value);
  if (known !== undefined) return known;
  const without = fitMarks(
    value.judged.map((mark) => ({ ...mark, leftOut: mark.leftOut === true || mark.verdict === 'does not fit' })),
    value.scale,
    value.priors,
  );
  const made = without.ok ? without.value : value;
  others.set(value, made);
  return made;
}
