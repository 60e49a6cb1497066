export type { Cause, NextStep, Reading, TwoGroups } from './reading.ts';
export { outwardOf, outwardSide, type Side } from './outward.ts';
export { contextDifferences, type ContextDifference } from './context.ts';
export { readBareShaft } from './bareShaft.ts';
export { readTwoGroups } from './twoGroups.ts';
export { nextChange, type NextChange } from './nextChange.ts';
export type { Evidence } from './evidence.ts';
export { acrossText, chanceSentence, countText, plusMinusText, whereWords } from './words.ts';
export * from './guided/index.ts';
