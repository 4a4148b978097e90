export { bendingFromEccentricity, type EccentricityInput } from './bendingFromEccentricity.js';
export { convertElongation, type ConvertedCondition, type ConvertElongationInput } from './convertElongation.js';
export { elongationAfterFracture, type ElongationInput } from './elongationAfterFracture.js';
export { hexagon, type HexagonDimensions } from './hexagon.js';
export { leastParallelLength, type ParallelLengthInput } from './leastParallelLength.js';
export { proportionalGaugeLength, type GaugeLengthInput } from './proportionalGaugeLength.js';
export { proportionalityCoefficient, type CoefficientInput } from './proportionalityCoefficient.js';
export { type Readings } from './readings.js';
export { rectangular, type RectangularDimensions } from './rectangular.js';
export { reductionOfArea, type ReductionInput } from './reductionOfArea.js';
export { round, type RoundDimensions } from './round.js';
export { roundedGaugeLength, type RoundedLengthInput } from './roundedGaugeLength.js';
export { sectionFromArea, type SectionFromAreaDimensions } from './sectionFromArea.js';
export { sectionFromMass, type SectionFromMassDimensions } from './sectionFromMass.js';
export { square, type SquareDimensions } from './square.js';
export { tube, type TubeDimensions } from './tube.js';
export { tubeStrip, type TubeStripDimensions } from './tubeStrip.js';
/** @internal */
export { LONG_COEFFICIENT, SAME_LENGTH, USUAL_COEFFICIENT } from './gaugeLengthRule.js';
