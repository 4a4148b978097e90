export { areaAfterFracture, type NeckReadings } from './areaAfterFracture.js';
export { barba, type BarbaLaw, type MeasuredElongation } from './barba.js';
export { bendingFromEccentricity, type EccentricityInput } from './bendingFromEccentricity.js';
export { convertElongation, type ConvertElongationInput } from './convertElongation.js';
export { effectiveThickness, type EffectiveThicknessInput } from './effectiveThickness.js';
export { elongationAfterFracture, type ElongationInput } from './elongationAfterFracture.js';
export { elongationBySubdivision, type SubdivisionInput } from './elongationBySubdivision.js';
export { fracturePosition, type FracturePosition, type FracturePositionInput } from './fracturePosition.js';
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
export { totalExtensionFromMarks, type MarkedBar } from './totalExtensionFromMarks.js';
export { tube, type TubeDimensions } from './tube.js';
export { tubeStrip, type TubeStripDimensions } from './tubeStrip.js';
/** @internal */
export { neckArea } from './areaAfterFracture.js';
/** @internal */
export { subdividedElongation } from './elongationBySubdivision.js';
