export { exampleMarks, examplePriors, exampleScale } from './exampleMarks.ts';
export { changeSince } from './changeSince.ts';
export { markContext } from './markContext.ts';
export { type MarksPicture, marksPicture, type UnprovenMark } from './marksPicture.ts';
export { onFace } from './onFace.ts';
export { readingsNow, withMove } from './readingsNow.ts';
export { scaleOf, type ToldScale } from './scaleOf.ts';
export { scaleThatSuits } from './scaleThatSuits.ts';
export { seeded } from './seeded.ts';
export { massesSince, speedChange } from './speedChange.ts';
export { spreadPerMetre } from './spreadPerMetre.ts';
export { type ChangedSince, changesSince, markStanding, type MarkStanding } from './standing.ts';
export { thenAndNow } from './thenAndNow.ts';
export { isWeak } from './weakMark.ts';
export { readWords } from './words.ts';
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
