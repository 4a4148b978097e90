export { analyseBending } from './analyseBending.js';
export { bendingColumns } from './bendingColumns.js';
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
export { analyseBrinell, type BrinellOptions } from './analyseBrinell.js';
export { analyseCupping, type CuppingOptions } from './analyseCupping.js';
export { type SpikeRepair } from './spikeRepair.js';
export { analyseShear, type ShearFamily, type ShearOptions } from './analyseShear.js';
export { analyseUnloading, type UnloadingAnalysisOptions } from './analyseUnloading.js';
export { brinellCombinations, type BrinellCapacity, type BrinellCombination, type BrinellUse } from './brinellCombinations.js';
export { brinellDwell, type BrinellDwell } from './brinellDwell.js';
export { brinellHardness, type BrinellHardness, type BrinellInput } from './brinellHardness.js';
/** @internal */
export { forceIndexOf, KGF_PER_NEWTON } from './brinellHardness.js';
export { brinellIndices, type BrinellMaterial } from './brinellIndices.js';
export {
  type BrinellIndentation,
  type BrinellIndentationResult,
  type BrinellPiece,
  type BrinellReadings,
  type BrinellResult,
} from './BrinellResult.js';
export { type ElongationMethod } from './brokenPiece.js';
/** @internal */
export { requireBrokenPiece } from './brokenPiece.js';
export { cautions, type Caution, type CautionTag } from './cautions.js';
export { cautionsFor, type FrameWork } from './cautionsFor.js';
/** @internal */
export { cautionsOf } from './cautionsFor.js';
export { type InputDifference } from './comparedInputs.js';
export { compareResults } from './compareResults.js';
export { type PropertyDifference, type ComparisonOptions, type ResultComparison } from './ResultComparison.js';
export { compareStandards, type StandardsRow, type StandardValue } from './compareStandards.js';
export { type CuppingBlank, type CuppingResult, type CuppingSheet } from './CuppingResult.js';
export { type ForceColumns, type ForceRecord } from './ForceColumns.js';
/** @internal */
export { departuresOf } from './departures.js';
/** @internal */
export { loadingRanges } from './loadingRanges.js';
export { fromJson } from './fromJson.js';
export { type Interruption, type InterruptionKind } from './Interruption.js';
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
export { type ForceCalibration, type MethodResult, type Provenance, type TestInfo } from './MethodResult.js';
export { type ShearPiece, type ShearResult } from './ShearResult.js';
export { shearStress, type ShearInput } from './shearStress.js';
export { type StandardRule } from './standardRules.js';
export {
  strengthFromBrinell,
  type EstimatedStrength,
  type StrengthInput,
  type StrengthMaterial,
  type StrengthReason,
} from './strengthFromBrinell.js';
export { type TestResult } from './TestResult.js';
export {
  type PoolableDifference,
  type ReplicateDifference,
  type ReplicateProperty,
  type ReplicatesProvenance,
  type ReplicatesResult,
} from './ReplicatesResult.js';
export { type RecordNoise, type TensionUncertainty } from './tensionUncertainty.js';
export { toJson } from './toJson.js';
export { type UnloadingLoopResult, type UnloadingResult } from './UnloadingResult.js';
export { version } from './version.js';
export { whatIf } from './whatIf.js';
export { type WhatIfChange, type WhatIfOptions, type WhatIfRow, type WhatIfValue } from './WhatIfRow.js';
/** @internal */
export { requireBendingPiece } from './bendingOptions.js';
/** @internal */
export { requireCompressionPiece } from './compressionOptions.js';
/** @internal */
export { dimensionFindings, lengthFindings } from './pieceFindings.js';
