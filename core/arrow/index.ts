export {
  bendingStiffness,
  deflectionOf,
  STANDARD,
  standardDeflection,
  stiffnessOf,
  testers,
  woodPounds,
  type Tester,
} from './spine.ts';
export {
  arrowMass,
  endMasses,
  shaftMass,
  type ArrowMass,
  type ArrowParts,
  type EndMasses,
  type ShaftMass,
  type SmallPart,
} from './mass.ts';
export { bendingFrequency, betaL, firstBendingFrequency, type BendingMode, type LoadedShaft } from './bending.ts';
export { readSpine } from './readSpine.ts';
