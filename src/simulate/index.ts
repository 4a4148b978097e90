export { type SimulatedFracture, type SimulatedHardening, type SimulatedMaterial } from './material.js';
export { type PushedRecord, type SimulatedPush } from './pushed.js';
export { simulateBrinell, type BrinellScenario, type SimulatedBrinell, type SimulatedHold } from './simulateBrinell.js';
export { simulateCupping, type CuppingScenario, type SimulatedCupping } from './simulateCupping.js';
export { simulateShear, type ShearScenario, type SimulatedShear } from './simulateShear.js';
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
