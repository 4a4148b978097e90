export { analyseBending } from './bending/analyseBending.js';
export { bendingColumns } from './bending/bendingColumns.js';
export { type BendingOptions, type BendingThresholds } from './bending/bendingOptions.js';
export { type BendingColumns, type BendingPiece, type BendingResult } from './bending/BendingResult.js';
export { analyseCompression } from './compression/analyseCompression.js';
export { type CompressionOptions, type CompressionThresholds } from './compression/compressionOptions.js';
export {
  type AfterCompression,
  type BucklingCheck,
  type CompressionColumns,
  type CompressionPiece,
  type CompressionResult,
} from './compression/CompressionResult.js';
export { type LineThresholdName } from './common/thresholds.js';
export { analyseCurve, type CurveResult } from './tension/analyseCurve.js';
export { analyseReplicates, type ReplicatesOptions } from './replicates/analyseReplicates.js';
export { analyseTension } from './tension/analyseTension.js';
export { type Loading, type LoadingControl, type LoadingStage, type RateSpread } from './loading/loadingOf.js';
export { checkConsistency, type ConsistencyOptions, type ConsistencyWeb } from './results/checkConsistency.js';
export { type ConsistencyLink, type LinkSide } from './results/consistencyLink.js';
export { analyseBrinell, type BrinellOptions } from './brinell/analyseBrinell.js';
export { analyseCupping, type CuppingOptions } from './cupping/analyseCupping.js';
export { type SpikeRepair } from './common/spikeRepair.js';
export { analyseShear, type ShearFamily, type ShearOptions } from './shear/analyseShear.js';
export { analyseUnloading, type UnloadingAnalysisOptions } from './unloading/analyseUnloading.js';
export { brinellBudget, type BrinellBlock, type BrinellDoubt } from './brinell/brinellBudget.js';
export { brinellCombinations, type BrinellCapacity, type BrinellCombination, type BrinellUse } from './brinell/brinellCombinations.js';
export { brinellDwell, type BrinellDwell } from './brinell/brinellDwell.js';
export { brinellHardness, type BrinellHardness, type BrinellInput } from './brinell/brinellHardness.js';
/** @internal */
export { forceIndexOf, KGF_PER_NEWTON } from './brinell/brinellHardness.js';
export { brinellIndices, type BrinellMaterial } from './brinell/brinellIndices.js';
export {
  type BrinellIndentation,
  type BrinellIndentationResult,
  type BrinellPiece,
  type BrinellReadings,
  type BrinellResult,
} from './brinell/BrinellResult.js';
export { type ElongationMethod } from './common/brokenPiece.js';
/** @internal */
export { requireBrokenPiece } from './common/brokenPiece.js';
export { cautions, type Caution, type CautionTag } from './common/cautions.js';
export { cautionsFor, type FrameWork } from './common/cautionsFor.js';
/** @internal */
export { cautionsOf } from './common/cautionsFor.js';
export { type InputDifference } from './results/comparedInputs.js';
export { compareResults } from './results/compareResults.js';
export { type PropertyDifference, type ComparisonOptions, type ResultComparison } from './results/ResultComparison.js';
export { compareStandards, type StandardsRow, type StandardValue } from './variations/compareStandards.js';
/** @internal */
export { CUPPING_TOOLS, cuppingSetUpFindings } from './cupping/cuppingSetUp.js';
/** @internal */
export { heightRatios } from './compression/compressionOptions.js';
export { type CuppingBlank, type CuppingResult, type CuppingSheet } from './cupping/CuppingResult.js';
export { flowOf } from './tension/flowOf.js';
export { type ForceColumns, type ForceRecord } from './common/ForceColumns.js';
/** @internal */
export { departuresOf } from './loading/departures.js';
/** @internal */
export { MET } from './loading/loadingOf.js';
/** @internal */
export { loadingRanges } from './loading/loadingRanges.js';
export { fromJson } from './results/fromJson.js';
/** @internal */
export { fromParsed } from './results/fromJson.js';
export { type Interruption, type InterruptionKind } from './loading/Interruption.js';
export {
  monteCarloTension,
  type MonteCarloTension,
  type MonteCarloTensionOptions,
  type TensionDistribution,
} from './variations/monteCarloTension.js';
export { monteCarloTensionTrials, type TensionTrialOptions } from './variations/monteCarloTensionTrials.js';
export { type CurveAnalysisOptions, type TensionOptions, type TensionThresholds } from './evaluation/tensionOptions.js';
export { type FracturePoint } from './loading/FracturePoint.js';
export { type HardeningSummary } from './loading/HardeningSummary.js';
export { type ModulusWindow, type StrengthAtExtension, type WindowSummary } from './loading/LineResult.js';
export {
  type ExtensionBasis,
  type ProportionalLimitOfTest,
  type Rates,
  type TensionResult,
  type YieldStrength,
} from './evaluation/TensionResult.js';
export {
  type ChannelCalibration,
  type ForceCalibration,
  type MethodResult,
  type Provenance,
  type TestInfo,
} from './common/MethodResult.js';
export { type ShearPiece, type ShearResult } from './shear/ShearResult.js';
export { shearStress, type ShearInput } from './shear/shearStress.js';
export { type StandardRule } from './variations/standardRules.js';
export {
  strengthFromBrinell,
  type EstimatedStrength,
  type StrengthInput,
  type StrengthMaterial,
  type StrengthReason,
} from './brinell/strengthFromBrinell.js';
export { type TestResult } from './results/TestResult.js';
export {
  type PoolableDifference,
  type ReplicateDifference,
  type ReplicateProperty,
  type ReplicatesProvenance,
  type ReplicatesResult,
} from './results/ReplicatesResult.js';
export { type RecordNoise, type TensionUncertainty } from './evaluation/tensionUncertainty.js';
export { toJson } from './results/toJson.js';
export { type UnloadingLoopResult, type UnloadingResult } from './unloading/UnloadingResult.js';
export { version } from './common/version.js';
export { whatIf } from './variations/whatIf.js';
export { type WhatIfChange, type WhatIfOptions, type WhatIfRow, type WhatIfValue } from './variations/WhatIfRow.js';
/** @internal */
export { requireBendingPiece } from './bending/bendingOptions.js';
/** @internal */
export { requireCompressionPiece } from './compression/compressionOptions.js';
/** @internal */
export { dimensionFindings, lengthFindings } from './common/pieceFindings.js';
