// For everyone.
export { crossheadSpeed, type YieldingFrame } from './rates/crossheadSpeed.js';
export { beamDeflection, type ElasticBeam } from './beam/beamDeflection.js';
export { type BendingSetup } from './beam/beamSetup.js';
export { chordModulus, type ChordModulus, type ChordOptions, type ChordReason } from './modulus/chordModulus.js';
export { elasticExtension, type ElasticBar } from './elasticExtension.js';
export { energyDensity, type EnergyOptions } from './energyDensity.js';
export { fitModulus } from './modulus/fitModulus.js';
export { type NoiseFlattening } from './modulus/noiseFlattening.js';
export { type StrainSteps } from './modulus/strainSteps.js';
export { type LineResiduals } from './modulus/lineResiduals.js';
export { type LinearLimits } from './modulus/linearPart.js';
export {
  type AlternativeWindow,
  type ElasticLine,
  type LinearPart,
  type LineExplanation,
  type LineTrust,
  type ModulusFit,
  type ModulusReason,
  type SlopeFall,
  type AboveOthers,
  type RemainingToe,
  type BeginningYield,
} from './modulus/ModulusFit.js';
export { type ModulusOptions, type WindowChoice } from './window/windowChoice.js';
export { type WindowEnvelope } from './modulus/windowEnvelope.js';
export { fitCompliance } from './frame/fitCompliance.js';
export { type ComplianceOptions, type CompliancePull, type ComplianceReason, type FittedCompliance } from './frame/FittedCompliance.js';
export { eulerLoad, type ColumnInput } from './eulerLoad.js';
export { flexuralModulus, type BeamStiffness } from './beam/flexuralModulus.js';
export { flexuralStrain, type DeflectedBeam } from './beam/flexuralStrain.js';
export { flexuralStress, type LoadedBeam } from './beam/flexuralStress.js';
export { fracture, type Fracture, type FractureOptions, type FractureReason } from './fracture.js';
export { frameCompliance, type KnownModulusTest } from './frame/frameCompliance.js';
export {
  frameTravel,
  type Compliance,
  type ComplianceConditions,
  type CompliancePower,
  type ComplianceTable,
  type ConstantCompliance,
} from './frame/frameTravel.js';
export { leastSamplingRate, type SamplingInput } from './rates/leastSamplingRate.js';
export { loadingRates, type LoadingRates, type RateOptions } from './rates/loadingRates.js';
export { maximumStress, type Maximum, type MaximumOptions } from './maximumStress.js';
export { modulusUncertainty, type CorrectedModulus, type ModulusDoubts, type ModulusUncertainty } from './modulus/modulusUncertainty.js';
export { offsetLeverage, type LeverageInput } from './modulus/offsetLeverage.js';
export { poissonRatio, type ElasticSamples, type PoissonRatio, type PoissonReason, type TransverseCurve } from './poissonRatio.js';
export { proofStrength, type CurvePoint, type ProofLine, type ProofReason, type ProofStrength } from './yield/proofStrength.js';
export {
  proportionalLimit,
  type ProportionalDefinition,
  type ProportionalLimit,
  type ProportionalLine,
  type ProportionalReason,
} from './yield/proportionalLimit.js';
export { removeCompliance, type RecordWithoutFrame } from './frame/removeCompliance.js';
export { rateOfStress, type RateOfStress, type StressRateInput } from './rates/rateOfStress.js';
export { serrations, type Serration, type SerrationOptions, type Serrations } from './yield/serrations.js';
export { shearDeflectionShare, type ShearedBeam } from './beam/shearDeflectionShare.js';
export { slopeScatter, type Correlation } from './modulus/slopeScatter.js';
export { strainRateOfSpeed } from './rates/strainRateOfSpeed.js';
export { stressStrain, type RecordedCurve } from './stressStrain.js';
export { testingRates, type RateLimits, type StrainRateRange, type TestingRates } from './rates/testingRates.js';
export { totalExtensionStrength, type TotalExtension } from './yield/totalExtensionStrength.js';
export { type FallShares, type UnloadingWindow } from './modulus/unloadingLoop.js';
export {
  unloadingLoops,
  type UnloadingLoop,
  type UnloadingLoops,
  type UnloadingOptions,
  type UnloadingReason,
} from './modulus/unloadingLoops.js';
export { type LowerYieldRule } from './yield/LowerYieldRule.js';
export { type YieldPoint, type YieldPoints, type YieldReason } from './yield/YieldPoint.js';
export { yieldPoints, type YieldOptions } from './yield/yieldPoints.js';

// For the floors above alone.
/** @internal */
export { bendDoubt } from './modulus/beginningYield.js';
/** @internal */
export { modulusContributions } from './modulus/modulusUncertainty.js';
/** @internal */
export { requireBeam, type Beam } from './beam/beamSetup.js';
/** @internal */
export { chordModulusKernel, requireChord } from './modulus/chordModulus.js';
/** @internal */
export { areaUnder } from './energyDensity.js';
/** @internal */
export { explainLine } from './modulus/explainLine.js';
/** @internal */
export { isGiven, linearLimits } from './modulus/linearPart.js';
/** @internal */
export { countCrossings } from './countCrossings.js';
/** @internal */
export { slopeInDoubt, trustLimits } from './modulus/lineTrust.js';
/** @internal */
export { aboveOthers } from './modulus/aboveOthers.js';
/** @internal */
export { slopeDoubt } from './modulus/slopeDoubt.js';
/** @internal */
export { fitModulusKernel } from './modulus/fitModulus.js';
/** @internal */
export { LEAST_WINDOW_POINTS, requireModulusOptions, STANDARD_ERRORS_OFF, WINDOW_SHARE } from './window/windowChoice.js';
/** @internal */
export { BROKEN_SHARE, findBreak, fractureKernel, NECKED, type Break } from './fracture.js';
/** @internal */
export { stillRising } from './stillRising.js';
/** @internal */
export { maximumSpread, type MaximumSpread } from './maximumSpread.js';
/** @internal */
export { loadingRatesKernel } from './rates/loadingRates.js';
/** @internal */
export { stressRatesOf } from './rates/stressRatesOf.js';
/** @internal */
export { requireCurve } from './requireCurve.js';
/** @internal */
export { endOfPlateau, plateauOf } from './maximumStress.js';
/** @internal */
export { proofStrengthKernel } from './yield/proofStrength.js';
/** @internal */
export { proportionalDefinitions, proportionalLimitsKernel } from './yield/proportionalLimit.js';
/** @internal */
export { beyondCompliance, withoutFrame } from './frame/removeCompliance.js';
/** @internal */
export { complianceBetween, requireFrameCompliance, type FrameMotion } from './frame/frameTravel.js';
/** @internal */
export { requirePiece, requireMotion, requireRecord, type PieceLengths } from './requireTest.js';
/** @internal */
export { stressOfAll, stressStrainKernel } from './stressStrain.js';
/** @internal */
export { sustainedCrossing } from './sustainedCrossing.js';
/** @internal */
export { totalExtensionStrengthKernel } from './yield/totalExtensionStrength.js';
/** @internal */
export { lineBeforeUnloading, requireUnloadingOptions, unloadingLoopsKernel } from './modulus/unloadingLoops.js';
/** @internal */
export { lowerYieldRules } from './yield/LowerYieldRule.js';
/** @internal */
export { yieldPointsKernel } from './yield/yieldPoints.js';
/** @internal */
export { yieldRule } from './yield/yieldRule.js';
