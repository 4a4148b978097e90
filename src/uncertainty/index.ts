export { areaBudget } from './areaBudget.js';
export { type BudgetLine, type UncertaintyBudget } from './Budget.js';
export { type InputCorrelation } from './correlations.js';
export { type CoverageOptions } from './coverageFactor.js';
export { elongationBudget, type ElongationInputs } from './elongationBudget.js';
export { forceBudget, type ForceDoubt } from './forceBudget.js';
export { hardeningExponentBudget, type ExponentInputs } from './hardeningExponentBudget.js';
export { mergeTrials } from './mergeTrials.js';
export { modulusBudget, type ModulusInputs } from './modulusBudget.js';
export { monteCarlo, type MonteCarloOptions, type MonteCarloResult } from './monteCarlo.js';
export { monteCarloAsync, type AsyncMonteCarloOptions } from './monteCarloAsync.js';
export { monteCarloTrials, type TrialModel, type TrialOptions } from './monteCarloTrials.js';
export { numericalTolerance } from './numericalTolerance.js';
export { proofStrengthBudget, type ProofInputs } from './proofStrengthBudget.js';
export { reductionBudget, type ReductionInputs } from './reductionBudget.js';
export { strengthCoefficientBudget, type CoefficientInputs } from './strengthCoefficientBudget.js';
export { tensileStrengthBudget, type StrengthInputs } from './tensileStrengthBudget.js';
export { trialDistribution, type DistributionOptions, type TrialDistribution } from './trialDistribution.js';
export { type StopSignal, type TrialRange, type TrialSet, type TrialValues } from './TrialSet.js';
export { uncertaintyBudget, type BudgetOptions } from './uncertaintyBudget.js';
export {
  type DeviationSource,
  type ExpandedSource,
  type LimitsSource,
  type ReadingsSource,
  type StandardSource,
  type StatedValue,
  type UncertainInput,
  type UncertainInputs,
  type UncertainQuantity,
  type UncertaintyDistribution,
  type UncertaintySource,
  type UncertaintySources,
} from './UncertaintySource.js';
export { validateBudget, type BudgetValidation } from './validateBudget.js';
/** @internal */
export { areaOf } from './areaBudget.js';
/** @internal */
export { positiveInput, requireInput, type CheckedInput } from './components.js';
/** @internal */
export { requireCorrelations } from './correlations.js';
/** @internal */
export { requireCoverage } from './coverageFactor.js';
/** @internal */
export { drawInputs } from './drawInputs.js';
/** @internal */
export { classSources, requireForceClass } from './forceBudget.js';
/** @internal */
export { SURE_ERRORS, verdictOf } from './validateBudget.js';
/** @internal */
export { budgetOf, LARGE_DOUBT } from './uncertaintyBudget.js';
/** @internal */
export { existingMoments, withoutVariance } from './withoutVariance.js';
/** @internal */
export { collectTrials, requireRange, requireSignal, requireTrialSet } from './TrialSet.js';
