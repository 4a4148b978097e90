export { analyseBrinell, type BrinellOptions } from './analyseBrinell.js';
export { analyseCupping, type CuppingOptions } from './analyseCupping.js';
export { analyseCurve, type CurveResult } from './analyseCurve.js';
export { analyseShear, type ShearFamily, type ShearOptions } from './analyseShear.js';
export { analyseTension } from './analyseTension.js';
export { brinellCombinations, type BrinellCapacity, type BrinellCombination, type BrinellUse } from './brinellCombinations.js';
export { brinellDwell, type BrinellDwell } from './brinellDwell.js';
export { brinellHardness, type BrinellHardness, type BrinellInput } from './brinellHardness.js';
export { brinellIndices, type BrinellMaterial } from './brinellIndices.js';
export {
  type BrinellIndentation,
  type BrinellIndentationResult,
  type BrinellPiece,
  type BrinellReadings,
  type BrinellResult,
} from './BrinellResult.js';
export { cautions, type Caution, type CautionTag } from './cautions.js';
export { cautionsFor, type FrameWork } from './cautionsFor.js';
export { type CuppingBlank, type CuppingResult, type CuppingSheet } from './CuppingResult.js';
export { type ForceColumns, type ForceRecord } from './ForceColumns.js';
export { fromJson } from './fromJson.js';
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
export { type MethodResult, type Provenance, type TestInfo, type TrailStep } from './MethodResult.js';
export { type ShearPiece, type ShearResult } from './ShearResult.js';
export { shearStress, type ShearInput } from './shearStress.js';
export {
  strengthFromBrinell,
  type EstimatedStrength,
  type StrengthInput,
  type StrengthMaterial,
  type StrengthReason,
} from './strengthFromBrinell.js';
export { type TestResult } from './TestResult.js';
export { toJson } from './toJson.js';
export { version } from './version.js';
/** @internal */
export { dimensionFindings, lengthFindings } from './pieceFindings.js';
