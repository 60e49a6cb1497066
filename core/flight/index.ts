export { standardGravity } from '../units/exact.ts';
export { type AirState, airDensity, airViscosity, standardAtmosphere } from './air.ts';
export { type Air, type AirGiven, airOf, airUnsaid } from './airOf.ts';
export { flatFireTime, speedAfter, vacuumRange, verticalHeight } from './closedForms.ts';
export { type DenseSolution, readDense } from './denseSolution.ts';
export { type OdeSettings, integrate } from './dormandPrince.ts';
export type { OdeSystem } from './dormandPrinceStep.ts';
export {
  type BoundaryLayer,
  boundaryLayer,
  coefficientBand,
  type DragCorrelation,
  dragBand,
  dragCorrelations,
  dragFromSpeeds,
  dragParameter,
  type FlownAt,
  reynoldsNumber,
} from './drag.ts';
export { type DragAlong, dragAlong, type JudgedSpeed } from './dragAlong.ts';
export { alongNotes } from './dragWords.ts';
export { fairSlope, fairWind } from './fair.ts';
export type { Flight, FlightPoint } from './flightReading.ts';
export { greatestReach } from './greatestReach.ts';
export { type Aim, launchElevation } from './launchElevation.ts';
export { levelReach } from './levelReach.ts';
export { peak } from './peak.ts';
export { crossing } from './root.ts';
export { type OpenShot, solveShot, type SolvedShot } from './solveShot.ts';
export { type Shot, trajectory } from './trajectory.ts';
export { vaneCentre, vaneLift, type Vanes } from './vaneLift.ts';
export type { Wind } from './wind.ts';
export { type Lifting, noseAt, type NoseAt, type NoseStart, settledPath, yawRates, type YawRates } from './yaw.ts';
