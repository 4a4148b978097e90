export {
  compareLaws,
  type ComparedLaw,
  type CompareOptions,
  type FailedLaw,
  type FittedLaw,
  type LawComparison,
  type LawName,
} from './fits/compareLaws.js';
export { compressiveTrueCurve } from './true/compressiveTrueCurve.js';
export { compressiveTrueStrain, type CompressedHeights } from './true/compressiveTrueStrain.js';
export { compressiveTrueStress, type CompressedPiece } from './true/compressiveTrueStress.js';
export { averageStrainRatio, type DirectionalRatios, type SheetAnisotropy } from './sheet/averageStrainRatio.js';
export { bridgmanCorrection, type NeckRadii, type NeckStrain } from './true/bridgmanCorrection.js';
export { considere, type ConsidereOptions } from './necking/considere.js';
export { type NeckingOnset, type NeckingReason } from './necking/NeckingOnset.js';
/** @internal */
export { hollomonKernel } from './fits/fitHollomon.js';
export { fitHollomon, type HollomonFit, type HollomonOptions, type HollomonReason } from './fits/fitHollomon.js';
export { fitHockettSherby, type HockettSherbyFit } from './fits/fitHockettSherby.js';
export { fitLaw, type CustomLaw, type LawFit, type LawReason } from './fits/fitLaw.js';
export { fitLudwik, type LudwikFit } from './fits/fitLudwik.js';
export { fitRambergOsgood, type RambergOsgoodFit, type RambergOsgoodOptions, type RambergOsgoodReason } from './fits/fitRambergOsgood.js';
export { type FitOptions, type FitReason, type FitSummary } from './fits/fitShape.js';
export { fitSwift, type SwiftFit } from './fits/fitSwift.js';
export { fitSwiftVoce, type MixtureOptions, type SwiftVoceFit } from './fits/fitSwiftVoce.js';
export { fitVoce, type VoceFit, type VoceOptions } from './fits/fitVoce.js';
/** @internal */
export { flowKernel } from './true/flowCurve.js';
export { flowCurve, type FlowCurve, type FlowOptions } from './true/flowCurve.js';
/** @internal */
export { withinStrains } from './fits/flowRange.js';
export { type FitRange } from './fits/flowRange.js';
export {
  hardeningExponent,
  type ExponentOptions,
  type ExponentReason,
  type ExponentStrain,
  type HardeningExponent,
} from './fits/hardeningExponent.js';
export { flowStress } from './laws/flowStress.js';
export { type HardeningLaw } from './laws/HardeningLaw.js';
export { hardeningPicture, type HardeningPicture, type PictureOptions } from './necking/hardeningPicture.js';
export { hardeningRate } from './laws/hardeningRate.js';
export { hockettSherby, type HockettSherbyParameters } from './laws/hockettSherby.js';
export { hollomon, type HollomonParameters } from './laws/hollomon.js';
export { ludwik, type LudwikParameters } from './laws/ludwik.js';
export { mixedLaw } from './laws/mixedLaw.js';
/** @internal */
export { neckingByCurve } from './necking/neckingByCurve.js';
/** @internal */
export { neckingKink } from './necking/neckingKink.js';
export { plasticStrainRatio, type SheetMeasures } from './sheet/plasticStrainRatio.js';
export { plasticStrainRatioFromCurve, type RatioOptions, type SheetCurve, type StrainRatio } from './sheet/plasticStrainRatioFromCurve.js';
export { rambergOsgood } from './laws/rambergOsgood.js';
export { rambergOsgoodFromProofStresses, type TwoProofStresses } from './laws/rambergOsgoodFromProofStresses.js';
export { rambergOsgoodFromSecants, type SecantForm, type TwoSecants } from './laws/rambergOsgoodFromSecants.js';
export { rambergOsgoodStrain, type RambergOsgoodParameters } from './laws/rambergOsgoodStrain.js';
export { rambergOsgoodStress } from './laws/rambergOsgoodStress.js';
export { rateSensitivity, type TwoRates } from './sheet/rateSensitivity.js';
export { siebelCorrection, type FrictionInput } from './true/siebelCorrection.js';
export { swift, type SwiftParameters } from './laws/swift.js';
export { trueCurve, type TrueCurveOptions } from './true/trueCurve.js';
/** @internal */
export { hasTrueCurve, trueKernel } from './true/trueCurve.js';
export { trueFractureStrain, type FractureAreas } from './true/trueFractureStrain.js';
export { trueFractureStress, type FractureForce } from './true/trueFractureStress.js';
export { trueStrain } from './true/trueStrain.js';
export { trueStress } from './true/trueStress.js';
export { voce, type VoceParameters } from './laws/voce.js';
export { weightToPoint, type MeasuredPoint, type WeightedLaw } from './laws/weightToPoint.js';
