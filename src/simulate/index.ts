export { type SimulatedHardening, type SimulatedMaterial } from './material.js';
export {
  simulateTension,
  type SimulatedFrame,
  type SimulatedHand,
  type SimulatedLogger,
  type SimulatedPause,
  type SimulatedTension,
  type TensionScenario,
} from './simulateTension.js';
export { type SimulatedTruth } from './truth.js';
export { writeRecord, type WriteOptions } from './writeRecord.js';
