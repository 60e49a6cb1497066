export { DimensionFigure } from './DimensionFigure.tsx';
export { DimensionLine } from './DimensionLine.tsx';
