export { type SimulatedFracture, type SimulatedHardening, type SimulatedMaterial } from './SimulatedMaterial.js';
export { type PushedRecord, type SimulatedPush } from './pushed.js';
export {
  simulateBrinell,
  type BrinellScenario,
  type BrinellTruth,
  type SimulatedBrinell,
  type SimulatedIndentation,
  type SimulatedReadings,
  type SimulatedHold,
} from './simulateBrinell.js';
export { simulateCupping, type CuppingScenario, type CuppingTruth, type SimulatedCupping } from './simulateCupping.js';
export { simulateShear, type ShearScenario, type ShearTruth, type SimulatedShear } from './simulateShear.js';
export {
  type Driven,
  type SimulatedFrame,
  type SimulatedHand,
  type SimulatedLogger,
  type SimulatedPause,
  type SimulatedUnloading,
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
export { type TrueUnloading } from './unloadings.js';
export { writeRecord, type WriteOptions, type WrittenColumn } from './writeRecord.js';
export { soundTest, type SimulatedCase } from './soundTest.js';
export { faultLibrary, type Fault, type FaultyTest } from './faultLibrary.js';
export { usualMaterials, type UsualMaterial } from './usualMaterials.js';
/** @internal */
export { usualScenario } from './usualScenario.js';
