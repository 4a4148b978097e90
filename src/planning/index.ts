export { bendingForce, type BendingForceInput } from './bendingForce.js';
export { checkPiece } from './checkPiece.js';
export { type MeasuredShape, type PieceCheck, type PieceCheckInput, type PieceCheckRow } from './PieceCheck.js';
export { largestSection, type LargestSection, type LargestSectionInput } from './largestSection.js';
export { leastFilletRadius } from './leastFilletRadius.js';
export { oilEnergy, type OilVolume } from './oilEnergy.js';
export { oilFlow, type OilFlowInput } from './oilFlow.js';
export { planBending, type BendingPlan, type BendingPlanInput } from './planBending.js';
export { planBrinell, type BrinellPlan, type BrinellPlanInput } from './planBrinell.js';
export { planCompression, type CompressionPlan, type CompressionPlanInput } from './planCompression.js';
export { planCupping, type CuppingPlan, type CuppingPlanInput } from './planCupping.js';
export { planShear, type ShearPlan, type ShearPlanInput } from './planShear.js';
export { planTension } from './planTension.js';
export { shapeTolerance, type MachinedDimension, type ShapeTolerance } from './shapeTolerance.js';
export { storedEnergy, type StoredEnergyInput } from './storedEnergy.js';
export { threadStressArea, type MetricThread } from './threadStressArea.js';
export { travelNeeded, type TravelInput, type TravelNeeded } from './travelNeeded.js';
export { wedgeGripMargin, type WedgeGrip, type WedgeGripMargin } from './wedgeGripMargin.js';
export { type ExpectedProperties, type BendingPlanMaterial, type PlannedMaterial, type ShearPlanMaterial } from './expectedProperties.js';
export { type PlannedForce, type PlanThresholds } from './planForce.js';
export {
  type Answer,
  type ExpectedUncertainty,
  type PaceAction,
  type PaceRow,
  type PlannedEnergy,
  type PlannedLengths,
  type PlannedResolution,
  type SpeedStage,
  type TensionPlan,
  type Verdict,
} from './TensionPlan.js';
export {
  type GivenLengths,
  type PlannedErrors,
  type PlannedExtensometer,
  type RateControl,
  type TensionPlanInput,
  type UseOfValues,
} from './TensionPlanInput.js';
export { type HandDrive, type TestFrame } from './TestFrame.js';
export { type HandLoading } from './handLoading.js';
export { type PieceHead } from './PieceHead.js';
export { type TestPlan } from './TestPlan.js';
