export {
  compareLaws,
  type ComparedLaw,
  type CompareOptions,
  type FailedLaw,
  type FittedLaw,
  type LawComparison,
  type LawName,
} from './compareLaws.js';
export { compressiveTrueCurve } from './compressiveTrueCurve.js';
export { compressiveTrueStrain, type CompressedHeights } from './compressiveTrueStrain.js';
export { compressiveTrueStress, type CompressedPiece } from './compressiveTrueStress.js';
export { averageStrainRatio, type DirectionalRatios, type SheetAnisotropy } from './averageStrainRatio.js';
export { bridgmanCorrection, type NeckRadii, type NeckStrain } from './bridgmanCorrection.js';
export { considere, type ConsidereOptions, type NeckingOnset, type NeckingReason } from './considere.js';
/** @internal */
export { hollomonKernel } from './fitHollomon.js';
export { fitHollomon, type HollomonFit, type HollomonOptions, type HollomonReason } from './fitHollomon.js';
export { fitHockettSherby, type HockettSherbyFit } from './fitHockettSherby.js';
export { fitLaw, type CustomLaw, type LawFit, type LawReason } from './fitLaw.js';
export { fitLudwik, type LudwikFit } from './fitLudwik.js';
export { fitRambergOsgood, type RambergOsgoodFit, type RambergOsgoodOptions, type RambergOsgoodReason } from './fitRambergOsgood.js';
export { type FitOptions, type FitReason, type FitSummary } from './fitShape.js';
export { fitSwift, type SwiftFit } from './fitSwift.js';
export { fitSwiftVoce, type MixtureOptions, type SwiftVoceFit } from './fitSwiftVoce.js';
export { fitVoce, type VoceFit, type VoceOptions } from './fitVoce.js';
/** @internal */
export { flowKernel } from './flowCurve.js';
export { flowCurve, type FlowCurve, type FlowOptions } from './flowCurve.js';
/** @internal */
export { withinStrains } from './flowRange.js';
export { type FitRange } from './flowRange.js';
export {
  hardeningExponent,
  type ExponentOptions,
  type ExponentReason,
  type ExponentStrain,
  type HardeningExponent,
} from './hardeningExponent.js';
export { flowStress } from './flowStress.js';
export { type HardeningLaw } from './HardeningLaw.js';
export { hardeningPicture, type HardeningPicture, type PictureOptions } from './hardeningPicture.js';
export { hardeningRate } from './hardeningRate.js';
export { hockettSherby, type HockettSherbyParameters } from './hockettSherby.js';
export { hollomon, type HollomonParameters } from './hollomon.js';
export { ludwik, type LudwikParameters } from './ludwik.js';
export { mixedLaw } from './mixedLaw.js';
/** @internal */
export { neckingByCurve } from './neckingByCurve.js';
export { plasticStrainRatio, type SheetMeasures } from './plasticStrainRatio.js';
export { plasticStrainRatioFromCurve, type RatioOptions, type SheetCurve, type StrainRatio } from './plasticStrainRatioFromCurve.js';
export { rambergOsgood } from './rambergOsgood.js';
export { rambergOsgoodFromProofStresses, type TwoProofStresses } from './rambergOsgoodFromProofStresses.js';
export { rambergOsgoodFromSecants, type SecantForm, type TwoSecants } from './rambergOsgoodFromSecants.js';
export { rambergOsgoodStrain, type RambergOsgoodParameters } from './rambergOsgoodStrain.js';
export { rambergOsgoodStress } from './rambergOsgoodStress.js';
export { rateSensitivity, type TwoRates } from './rateSensitivity.js';
export { siebelCorrection, type FrictionInput } from './siebelCorrection.js';
export { swift, type SwiftParameters } from './swift.js';
export { trueCurve, type TrueCurveOptions } from './trueCurve.js';
/** @internal */
export { hasTrueCurve, trueKernel } from './trueCurve.js';
export { trueFractureStrain, type FractureAreas } from './trueFractureStrain.js';
export { trueFractureStress, type FractureForce } from './trueFractureStress.js';
export { trueStrain } from './trueStrain.js';
export { trueStress } from './trueStress.js';
export { voce, type VoceParameters } from './voce.js';
export { weightToPoint, type MeasuredPoint, type WeightedLaw } from './weightToPoint.js';
