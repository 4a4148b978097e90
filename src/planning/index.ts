export { bendingForce, type BendingForceInput } from './bendingForce.js';
export { largestSection, type LargestSection, type LargestSectionInput } from './largestSection.js';
export { oilEnergy, type OilVolume } from './oilEnergy.js';
export { oilFlow, type OilFlowInput } from './oilFlow.js';
export { storedEnergy, type StoredEnergyInput } from './storedEnergy.js';
export { threadStressArea, type MetricThread } from './threadStressArea.js';
export { travelNeeded, type TravelInput, type TravelNeeded } from './travelNeeded.js';
export { wedgeGripMargin, type WedgeGrip, type WedgeGripMargin } from './wedgeGripMargin.js';
