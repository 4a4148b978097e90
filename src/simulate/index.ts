export { type SimulatedFracture, type SimulatedHardening, type SimulatedMaterial } from './material.js';
export {
  type Driven,
  type SimulatedFrame,
  type SimulatedHand,
  type SimulatedLogger,
  type SimulatedPause,
  type TakenOff,
} from './settings.js';
export {
  simulateBending,
  type BendingFrame,
  type BendingScenario,
  type BendingTruth,
  type BentMaterial,
  type SimulatedBending,
} from './simulateBending.js';
export {
  simulateCompression,
  type CompressionScenario,
  type CompressionTruth,
  type FinishedPiece,
  type PlainFrame,
  type SimulatedCompression,
  type SteadyHand,
} from './simulateCompression.js';
export { simulateTension, type SimulatedTension, type TensionScenario } from './simulateTension.js';
export { type SimulatedTruth, type TrueProofStrength } from './truth.js';
export { writeRecord, type WriteOptions, type WrittenColumn } from './writeRecord.js';
export { soundTest, type SimulatedCase } from './soundTest.js';
export { faultLibrary, type Fault, type FaultyTest } from './faultLibrary.js';
