export { analyseCurve, type CurveResult } from './analyseCurve.js';
export { analyseTension } from './analyseTension.js';
export { cautions, type Caution, type CautionTag } from './cautions.js';
export { cautionsFor, type FrameWork } from './cautionsFor.js';
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
export { type TestResult } from './TestResult.js';
export { toJson } from './toJson.js';
export { version } from './version.js';
/** @internal */
export { dimensionFindings, lengthFindings } from './pieceFindings.js';
