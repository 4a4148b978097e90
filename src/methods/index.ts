export { analyseCurve, type CurveResult } from './analyseCurve.js';
export { analyseReplicates, type ReplicatesOptions } from './analyseReplicates.js';
export { analyseTension } from './analyseTension.js';
export { checkConsistency, type ConsistencyLink, type ConsistencyOptions, type ConsistencyWeb, type LinkSide } from './checkConsistency.js';
export { fromJson } from './fromJson.js';
export { type CurveAnalysisOptions, type TensionOptions, type TensionThresholds } from './tensionOptions.js';
export {
  type ExtensionBasis,
  type FracturePoint,
  type HardeningSummary,
  type ModulusWindow,
  type Provenance,
  type Rates,
  type StrengthAtExtension,
  type TensionResult,
  type TestInfo,
  type TrailStep,
  type WindowSummary,
  type YieldStrength,
} from './TensionResult.js';
export { type ReplicateDifference, type ReplicateProperty, type ReplicatesProvenance, type ReplicatesResult } from './ReplicatesResult.js';
export { toJson } from './toJson.js';
export { version } from './version.js';
