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
export { spineOf, type ShaftSpine, type SpineParts } from './spineOf.ts';
export { aluminium, tubeDensity, tubeShaft, tubeStiffness, type TubeParts, type TubeShaft } from './tube.ts';
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
export { partPlaces, pointBeyondShaft, type PartName, type Place } from './places.ts';
export { buildArrow, frontOfCentre, type ArrowBuild, type ArrowPart } from './build.ts';
export { bendingFrequency, betaL, firstBendingFrequency, type BendingMode, type LoadedShaft } from './bending.ts';
export { beamModes, type BeamMode, type Lump, type LumpedBeam } from './beam.ts';
export { bendingFrequencies, bendingModes, lumpsOf, type ModeShape } from './modes.ts';
export { readSpine } from './readSpine.ts';
