export { considere, type ConsidereOptions, type NeckingOnset, type NeckingReason } from './considere.js';
export { fitHollomon, type HollomonFit, type HollomonOptions, type HollomonReason } from './fitHollomon.js';
export { fitLaw, type CustomLaw, type LawFit, type LawReason } from './fitLaw.js';
export { fitRambergOsgood, type RambergOsgoodFit, type RambergOsgoodOptions, type RambergOsgoodReason } from './fitRambergOsgood.js';
export { flowCurve, type FlowCurve, type FlowOptions } from './flowCurve.js';
export { type FitRange } from './flowRange.js';
export {
  hardeningExponent,
  type ExponentOptions,
  type ExponentReason,
  type ExponentStrain,
  type HardeningExponent,
} from './hardeningExponent.js';
export { hollomon, type HardeningLaw, type HollomonParameters } from './hollomon.js';
export { rambergOsgoodFromProofStresses, type TwoProofStresses } from './rambergOsgoodFromProofStresses.js';
export { rambergOsgoodFromSecants, type SecantForm, type TwoSecants } from './rambergOsgoodFromSecants.js';
export { rambergOsgoodStrain, type RambergOsgoodParameters } from './rambergOsgoodStrain.js';
export { rambergOsgoodStress } from './rambergOsgoodStress.js';
export { trueCurve, type TrueCurveOptions } from './trueCurve.js';
export { trueFractureStrain, type FractureAreas } from './trueFractureStrain.js';
export { trueFractureStress, type FractureForce } from './trueFractureStress.js';
export { trueStrain } from './trueStrain.js';
export { trueStress } from './trueStress.js';
