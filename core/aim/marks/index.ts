export { exampleMarks, examplePriors, exampleScale } from './exampleMarks.ts';
export { markContext } from './markContext.ts';
export { fitMarks } from './fitMarks.ts';
export { fallBelowLine, launchSlope } from './launchSlope.ts';
export { leastSquares, type SquaresFit, type SquaresProblem } from './leastSquares.ts';
export { markError, usualShots } from './markModel.ts';
export { type MarksChange, type MovedMark, movedMarks } from './movedMarks.ts';
export { type NextMark, nextMark } from './nextMark.ts';
export { type OnBar, onBar, readingAt } from './readingAt.ts';
export { priorsOf, type SightTold } from './priorsOf.ts';
export { strip, type StripRow } from './strip.ts';
export { turningDistance } from './turningDistance.ts';
export type {
  FittedMarks,
  JudgedMark,
  KnownMark,
  MarkParameters,
  MarkPriors,
  SightScale,
  FittedFigure,
  MarkVerdict,
} from './types.ts';
