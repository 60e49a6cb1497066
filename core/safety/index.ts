export { worseLevel, type SafetyLevel } from './level.ts';
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
export { arrowsMassCheck, type ArrowsMassCheck } from './arrowsMass.ts';
export { handCheck } from './hand.ts';
export { compoundPassCheck, compoundShaftCheck } from './compound.ts';
export { bowCondition, bowPartsOf, type BowCondition, type BowPart } from './bowCondition.ts';
export { arrowsCondition, type ArrowsCondition } from './arrowsCondition.ts';
export { stringFibreCheck } from './fibre.ts';
export { BOLTS_APART, boltsCheck, type BoltsCheck } from './bolts.ts';
export { judgedAsLearner } from './learner.ts';
export { abilityCheck, holdTimes, whyNotHeavier, type AbilityCheck, type AbilityRule } from './ability.ts';
export { standingStops, type Stop } from './standing.ts';
