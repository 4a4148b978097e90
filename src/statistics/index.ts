export { compareBatches, type BatchComparison, type BatchOptions, type BatchReason, type Equivalence } from './compareBatches.js';
export { decide } from './decide.js';
export { type Decision, type DecisionReason, type Measured, type Specification } from './Decision.js';
export { generalisedEsd, type EsdOptions, type EsdResult, type EsdStep } from './generalisedEsd.js';
export { grubbsCriticalValue, type GrubbsLimit, type OutlierSide } from './grubbsCriticalValue.js';
export { grubbsTest, type GrubbsOptions, type GrubbsResult, type OutlierReason } from './grubbsTest.js';
export {
  type CochranTest,
  type GroupConsistency,
  type GroupMeanTest,
  type InterlaboratoryStudy,
  type StudyGroup,
  type StudyOptions,
  type StudyReason,
  type StudyVerdict,
} from './GroupStudy.js';
export { interlaboratoryStudy } from './interlaboratoryStudy.js';
export { leastPiecesForTolerance, type RankToleranceArguments } from './leastPiecesForTolerance.js';
export { piecesForInterval, type WantedInterval } from './piecesForInterval.js';
export { roundResult, type RoundedValue, type RoundingKind, type RoundingOptions, type RoundingRule } from './roundResult.js';
export { type HalfRule } from '../numeric/index.js';
export { summariseReplicates, type ConfidenceInterval, type ReplicateOptions, type ReplicateSummary } from './summariseReplicates.js';
export { toleranceFactor, type ToleranceArguments } from './toleranceFactor.js';
export { toleranceLimit, type ToleranceLimit, type ToleranceOptions, type ToleranceReason } from './toleranceLimit.js';
export { usualVariation, type UsualVariation, type VariedProperty } from './usualVariation.js';
/** @internal */
export { restsOnTravel } from './restsOnTravel.js';
/** @internal */
export { roundingStep } from './roundResult.js';
