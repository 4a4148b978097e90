export { calibratedForces } from './calibratedForces.js';
export { applyCalibration, type ApplyOptions, type UsableCalibration } from './applyCalibration.js';
export { calibrationUncertainty, type CalibrationUncertaintyOptions } from './calibrationUncertainty.js';
export { checkPieceChart, type ChartOptions, type CheckPieceChart } from './checkPieceChart.js';
export { comparePointer, type PointerCause, type PointerComparison, type PointerReading } from './comparePointer.js';
export { currentToPressure, type CurrentLoop } from './currentToPressure.js';
export { cylinderFriction, type CylinderFriction, type EqualForceRuns, type EqualPressureRuns } from './cylinderFriction.js';
export {
  fitCalibration,
  type Calibration,
  type CalibrationOptions,
  type CalibrationPairs,
  type CalibrationReason,
} from './fitCalibration.js';
export { forceClasses, type ForceClass, type ForceClassLimits } from './forceClasses.js';
export { forceDrift, type DatedResult, type DriftInput, type ForceDrift, type ForceErrors, type TouchedResult } from './forceDrift.js';
export { forceResolution, type ForceResolution, type SteppedForce } from './forceResolution.js';
export { forceToPressure, type PressureForForce } from './forceToPressure.js';
export { fullScaleError, type FullScaleAccuracy, type FullScaleError } from './fullScaleError.js';
export { idleStroke, type IdleFriction, type IdleStroke } from './idleStroke.js';
export { leakDown, type Leak, type LeakOptions, type StandstillRecord } from './leakDown.js';
export { pistonArea, type Cylinder } from './pistonArea.js';
export { pressureToForce, type HydraulicChain, type TareTable } from './pressureToForce.js';
export { type TransmitterPressure } from './transmitter.js';
export { voltageToPressure, type VoltageOutput } from './voltageToPressure.js';
export {
  verifyDisplacement,
  type DisplacementClass,
  type DisplacementResult,
  type DisplacementStep,
  type DisplacementTerm,
  type DisplacementVerification,
  type ExtensometerBase,
  type VerifiedDisplacement,
} from './verifyDisplacement.js';
export {
  type ForceStep,
  type ForceTerm,
  type ForceVerification,
  type ForceVerificationResult,
  type VerifiedRange,
  type VerifiedStep,
} from './ForceVerification.js';
export { verifyForce } from './verifyForce.js';
/** @internal */
export { requireHydraulicChain } from './pressureToForce.js';
/** @internal */
export { displacementClasses } from './displacementClasses.js';
/** @internal */
export { LEAST_RUNS } from './forceClasses.js';
