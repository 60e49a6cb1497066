export type { SafetyLevel } from './level.ts';
export {
  pointAheadCheck,
  pointAheadLimits,
  pointAheadOfRest,
  type PointAhead,
  type PointAheadCheck,
  type ReachInput,
  type ReachRule,
} from './pointAhead.ts';
export {
  leastMassPerWeight,
  massFloors,
  massPerWeight,
  massPerWeightCheck,
  type Floor,
  type LeastMassPerWeight,
  type MassCheck,
} from './massPerWeight.ts';
export { handCheck } from './hand.ts';
export { compoundPassCheck, compoundShaftCheck } from './compound.ts';
