export { analyseBending } from './analyseBending.js';
export { type BendingOptions, type BendingThresholds } from './bendingOptions.js';
export { type BendingColumns, type BendingPiece, type BendingResult } from './BendingResult.js';
export { analyseCompression } from './analyseCompression.js';
export { type CompressionOptions, type CompressionThresholds } from './compressionOptions.js';
export {
  type AfterCompression,
  type BucklingCheck,
  type CompressionColumns,
  type CompressionPiece,
  type CompressionResult,
} from './CompressionResult.js';
export { type LineThresholdName } from './thresholds.js';
export { analyseCurve, type CurveResult } from './analyseCurve.js';
export { analyseReplicates, type ReplicatesOptions } from './analyseReplicates.js';
export { analyseTension } from './analyseTension.js';
export { type Loading, type LoadingControl, type LoadingStage, type RateSpread } from './loadingOf.js';
export { checkConsistency, type ConsistencyLink, type ConsistencyOptions, type ConsistencyWeb, type LinkSide } from './checkConsistency.js';
export { fromJson } from './fromJson.js';
export { monteCarloTension, type MonteCarloTension, type MonteCarloTensionOptions, type TensionDistribution } from './monteCarloTension.js';
export { monteCarloTensionTrials, type TensionTrialOptions } from './monteCarloTensionTrials.js';
export { type CurveAnalysisOptions, type TensionOptions, type TensionThresholds } from './tensionOptions.js';
export {
  type ExtensionBasis,
  type FracturePoint,
  type HardeningSummary,
  type ModulusWindow,
  type Rates,
  type StrengthAtExtension,
  type TensionResult,
  type WindowSummary,
  type YieldStrength,
} from './TensionResult.js';
export { type MethodResult, type Provenance, type TestInfo } from './MethodResult.js';
export { type TestResult } from './TestResult.js';
export { type ReplicateDifference, type ReplicateProperty, type ReplicatesProvenance, type ReplicatesResult } from './ReplicatesResult.js';
export { type RecordNoise, type TensionUncertainty } from './tensionUncertainty.js';
export { toJson } from './toJson.js';
export { version } from './version.js';
/** @internal */
export { requireBendingPiece } from './bendingOptions.js';
/** @internal */
export { requireCompressionPiece } from './compressionOptions.js';
