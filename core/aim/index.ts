export { type AimInput, checkAim, pointBeyondShaft, standingEye } from './aimInput.ts';
export { type AimPlan, aimPlan, type CurvePoint, type PlannedHold } from './aimPlan.ts';
export { atCorners, bandOver, type Corners } from './bands.ts';
export { type DropRow, dropTable } from './dropTable.ts';
export { type Launch, launchBand } from './launch.ts';
export { setSight, type SetSight, sightDrop } from './lineOfSight.ts';
export { groundMark, pointOfAim, type WidestGap, widestGap } from './pointOfAim.ts';
export { missWithTipOn, pointOnDistance, tipHeldElevation } from './pointOn.ts';
