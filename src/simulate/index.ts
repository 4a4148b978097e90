export { type SimulatedFracture, type SimulatedHardening, type SimulatedMaterial } from './material.js';
export {
  simulateTension,
  type SimulatedFrame,
  type SimulatedHand,
  type SimulatedLogger,
  type SimulatedPause,
  type SimulatedTension,
  type TakenOff,
  type TensionScenario,
} from './simulateTension.js';
export { type SimulatedTruth, type TrueProofStrength } from './truth.js';
export { writeRecord, type WriteOptions, type WrittenColumn } from './writeRecord.js';
export { soundTest, type SimulatedCase } from './soundTest.js';
export { faultLibrary, type Fault, type FaultyTest } from './faultLibrary.js';
