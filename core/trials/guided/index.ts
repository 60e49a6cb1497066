export type {
  PredictedEffect,
  RowKind,
  SpreadAt,
  TrialBrief,
  TrialFigure,
  TrialInput,
  TrialReading,
  TrialRow,
  TrialSheet,
  TrialVerdict,
} from './types.ts';
export type { SettingPoint, ShiftPoint, Spanned, TrialPlot } from './plot.ts';
export { newTrialPlan } from './plan.ts';
export { archerSpread } from './archerSpread.ts';
export { braceOutside } from './braceLimits.ts';
export { brief } from './brief.ts';
export { sheet } from './sheet.ts';
export { readTrial } from './readTrial.ts';
export { exampleTrial, exampleTrialInput } from './exampleInput.ts';
