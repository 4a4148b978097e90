export { analyseCurve, type CurveResult } from './analyseCurve.js';
export { analyseTension } from './analyseTension.js';
export { fromJson } from './fromJson.js';
export { monteCarloTension, type MonteCarloTension, type MonteCarloTensionOptions, type TensionDistribution } from './monteCarloTension.js';
export { monteCarloTensionTrials, type TensionTrialOptions } from './monteCarloTensionTrials.js';
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
export { type RecordNoise, type TensionUncertainty } from './tensionUncertainty.js';
export { toJson } from './toJson.js';
export { version } from './version.js';
