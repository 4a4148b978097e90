export { applyCalibration, type ApplyOptions, type UsableCalibration } from './applyCalibration.js';
export { calibrationUncertainty } from './calibrationUncertainty.js';
export { currentToPressure, type CurrentLoop } from './currentToPressure.js';
export {
  fitCalibration,
  type Calibration,
  type CalibrationOptions,
  type CalibrationPairs,
  type CalibrationReason,
} from './fitCalibration.js';
export { forceResolution, type ForceResolution, type SteppedForce } from './forceResolution.js';
export { forceToPressure, type PressureForForce } from './forceToPressure.js';
export { fullScaleError, type FullScaleAccuracy, type FullScaleError } from './fullScaleError.js';
export { pistonArea, type Cylinder } from './pistonArea.js';
export { pressureToForce, type HydraulicChain, type TareTable } from './pressureToForce.js';
export { type TransmitterPressure } from './transmitter.js';
export { voltageToPressure, type VoltageOutput } from './voltageToPressure.js';
