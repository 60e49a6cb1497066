export type {
  PlotRow,
  Question,
  QuestionId,
  QuestionInput,
  QuestionPage,
  QuestionPlot,
  QuestionTable,
  Standing,
} from './question.ts';
export { groupQuestions, inOrder, questionSteps } from './questions.ts';
export { halfEllipse } from './size.ts';
export { arrowsOnAim, moreOnAim } from './arrowsOnAim.ts';
export { againstUsual, type AgainstUsual } from './againstUsual.ts';
export { asked, type Asked } from './asked.ts';
export { endPairs } from './ends.ts';
export { earlierAlike, pastSpread, shotAlike, usualSpread } from './history.ts';
export { readScores, scoreLines } from './scoreText.ts';
export { sheetReading, sheetTotal, type SheetReading, type SheetTotal } from './sheetReading.ts';
export { lengthText } from './texts.ts';
export { sheetTables, sheetWhy } from './sheetTables.ts';
