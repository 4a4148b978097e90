export { materialFamilies, type MaterialFamily, type MaterialFamilyKey, type UsualRange } from './materialFamilies.js';
export { materialFamily } from './materialFamily.js';
/** @internal */
export { metalModuli } from './anyMetal.js';
/** @internal */
export { requireFamily } from './materialFamily.js';
export { type MeasuredProperties, type Measurement, type PropertyName } from './measuredProperties.js';
export { explainProperties, type ExplainPropertiesOptions } from './explainProperties.js';
export { type ComparedProperty, type PropertyCause, type PropertyCauseKey, type PropertyExplanation } from './PropertyExplanation.js';
/** @internal */
export { mistakesOf } from './mistakes.js';
export { type MistakeKey } from './mistakes.js';
export { type OpenCauseKey } from './openCauses.js';
export { matchingFamilies, type MatchingFamiliesOptions } from './matchingFamilies.js';
export { crossCheck, type CrossCheckInput, type ProofAtExtension } from './crossCheck.js';
