export { crossheadSpeed, type YieldingFrame } from './crossheadSpeed.js';
export { beamDeflection, type ElasticBeam } from './beamDeflection.js';
export { type BendingSetup } from './beamSetup.js';
export { chordModulus, type ChordModulus, type ChordOptions, type ChordReason } from './chordModulus.js';
export { elasticExtension, type ElasticBar } from './elasticExtension.js';
export { energyDensity, type EnergyOptions } from './energyDensity.js';
export { fitModulus } from './fitModulus.js';
/** @internal */
export { bendDoubt } from './beginningYield.js';
export { type BeginningYield } from './beginningYield.js';
export { type NoiseFlattening } from './noiseFlattening.js';
export { type StrainSteps } from './strainSteps.js';
export { type LineResiduals } from './lineResiduals.js';
export { type LinearLimits, type LinearPart } from './linearPart.js';
export { type LineTrust } from './lineTrust.js';
export {
  type AlternativeWindow,
  type ElasticLine,
  type LineExplanation,
  type ModulusFit,
  type ModulusReason,
  type SlopeFall,
} from './ModulusFit.js';
export { type ModulusOptions, type WindowChoice } from './windowChoice.js';
export { type WindowEnvelope } from './windowEnvelope.js';
export { fitCompliance } from './fitCompliance.js';
export { type ComplianceOptions, type CompliancePull, type ComplianceReason, type FittedCompliance } from './FittedCompliance.js';
export { eulerLoad, type ColumnInput } from './eulerLoad.js';
export { flexuralModulus, type BeamStiffness } from './flexuralModulus.js';
export { flexuralStrain, type DeflectedBeam } from './flexuralStrain.js';
export { flexuralStress, type LoadedBeam } from './flexuralStress.js';
export { fracture, type Fracture, type FractureOptions, type FractureReason } from './fracture.js';
export { frameCompliance, type KnownModulusTest } from './frameCompliance.js';
export {
  frameTravel,
  type Compliance,
  type ComplianceConditions,
  type CompliancePower,
  type ComplianceTable,
  type ConstantCompliance,
} from './frameTravel.js';
export { leastSamplingRate, type SamplingInput } from './leastSamplingRate.js';
export { loadingRates, type LoadingRates, type RateOptions } from './loadingRates.js';
export { maximumStress, type Maximum, type MaximumOptions } from './maximumStress.js';
export { modulusUncertainty, type CorrectedModulus, type ModulusDoubts, type ModulusUncertainty } from './modulusUncertainty.js';
export { offsetLeverage, type LeverageInput } from './offsetLeverage.js';
export { poissonRatio, type ElasticSamples, type PoissonRatio, type PoissonReason, type TransverseCurve } from './poissonRatio.js';
export { proofStrength, type CurvePoint, type ProofLine, type ProofReason, type ProofStrength } from './proofStrength.js';
export {
  proportionalLimit,
  type ProportionalDefinition,
  type ProportionalLimit,
  type ProportionalLine,
  type ProportionalReason,
} from './proportionalLimit.js';
export { removeCompliance, type RecordWithoutFrame } from './removeCompliance.js';
export { rateOfStress, type RateOfStress, type StressRateInput } from './rateOfStress.js';
export { serrations, type Serration, type SerrationOptions, type Serrations } from './serrations.js';
export { shearDeflectionShare, type ShearedBeam } from './shearDeflectionShare.js';
export { slopeScatter, type Correlation } from './slopeScatter.js';
export { strainRateOfSpeed } from './strainRateOfSpeed.js';
export { stressStrain, type RecordedCurve } from './stressStrain.js';
export { testingRates, type RateLimits, type StrainRateRange, type TestingRates } from './testingRates.js';
export { totalExtensionStrength, type TotalExtension } from './totalExtensionStrength.js';
export { type FallShares, type UnloadingWindow } from './unloadingLoop.js';
export { unloadingLoops, type UnloadingLoop, type UnloadingLoops, type UnloadingOptions, type UnloadingReason } from './unloadingLoops.js';
export { type LowerYieldRule } from './LowerYieldRule.js';
export { yieldPoints, type YieldOptions, type YieldPoint, type YieldPoints, type YieldReason } from './yieldPoints.js';
/** @internal */
export { modulusContributions } from './modulusUncertainty.js';
/** @internal */
export { requireBeam, type Beam } from './beamSetup.js';
/** @internal */
export { chordModulusKernel, requireChord } from './chordModulus.js';
/** @internal */
export { areaUnder } from './energyDensity.js';
/** @internal */
export { explainLine } from './explainLine.js';
/** @internal */
export { isGiven, linearLimits } from './linearPart.js';
/** @internal */
export { fitModulusKernel } from './fitModulus.js';
export { POINTS, SHARE } from './windowChoice.js';
/** @internal */
export { requireModulusOptions } from './windowChoice.js';
/** @internal */
export { BROKEN_SHARE, breakOf, fractureKernel, type Break } from './fracture.js';
/** @internal */
export { maximumSpread, type MaximumSpread } from './maximumSpread.js';
/** @internal */
export { loadingRatesKernel } from './loadingRates.js';
/** @internal */
export { requireCurve } from './requireCurve.js';
/** @internal */
export { plateauOf } from './maximumStress.js';
/** @internal */
export { proofStrengthKernel } from './proofStrength.js';
/** @internal */
export { proportionalLimitsKernel } from './proportionalLimit.js';
/** @internal */
export { beyondCompliance, travelWithoutFrame } from './removeCompliance.js';
/** @internal */
export { requireFrameCompliance, type FrameMotion } from './frameTravel.js';
/** @internal */
export { requirePiece, requireMotion, requireRecord, type PieceLengths } from './requireTest.js';
/** @internal */
export { stressStrainKernel } from './stressStrain.js';
/** @internal */
export { sustainedCrossing } from './sustainedCrossing.js';
/** @internal */
export { totalExtensionStrengthKernel } from './totalExtensionStrength.js';
/** @internal */
export { lineBeforeUnloading, requireUnloadingOptions, unloadingLoopsKernel } from './unloadingLoops.js';
/** @internal */
export { lowerYieldRules } from './LowerYieldRule.js';
/** @internal */
export { yieldPointsKernel, yieldRule } from './yieldPoints.js';
