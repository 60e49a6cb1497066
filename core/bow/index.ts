export { drawWeight, weightAtDraw, weightDoubt, weightPerInch, type DrawWeight } from './weight.ts';
export { braceHeightCheck, braceHeightRange, recurveRowsIn, type BraceCheck, type BraceRange } from './braceHeight.ts';
export { AMO_ADDS, powerStroke, strokeOf, type Stroke } from './stroke.ts';
export { forceDrawCurve, storedEnergy, type ForceDraw } from './energy.ts';
export { kindFigures, type KindFigures } from './kinds.ts';
export { looseFromCurve, looseFromLine, type Loose } from './timeOnString.ts';
export { estimatedSpeed, launchSpeed, type LaunchFigures } from './speed.ts';
export { setupSpeed, type ArrowSpeed, type SpeedInput } from './setupSpeed.ts';
