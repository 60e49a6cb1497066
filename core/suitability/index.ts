export { columnBands, columnFactor, columnFigure, neededDeflection, type FigureBand } from './column.ts';
export { cyclesOnString, type Cycles } from './cycles.ts';
export { inBothUnits } from './inBothUnits.ts';
export { ruleOfThumb, thumbPounds, type DoesNotApply, type ThumbInput, type ThumbView } from './ruleOfThumb.ts';
export { agreed, opposed, type View } from './views.ts';
export { fitOf, settled, type Fit, type Needed, type Verdict } from './verdict.ts';
export { suitability, type ColumnView, type Margin, type Suitability, type SuitabilityInput } from './suitability.ts';
