export { areaAfterFracture, type NeckReadings } from './areaAfterFracture.js';
export { barba, type BarbaLaw, type MeasuredElongation } from './barba.js';
export { bendTestSpan, type BendTestInput, type SupportDistance } from './bendTestSpan.js';
export { bendTestStrain } from './bendTestStrain.js';
export { bulgeRatio, type BarrelDiameters } from './bulgeRatio.js';
export { effectiveLength, type FlatShoulders, type RoundShoulders } from './effectiveLength.js';
export { effectiveThickness, type EffectiveThicknessInput } from './effectiveThickness.js';
export { elongationBySubdivision, type SubdivisionInput } from './elongationBySubdivision.js';
export { elongationWithoutNecking, type ElongationWithoutNecking, type LongerPart } from './elongationWithoutNecking.js';
export { fracturePosition, type FracturePosition, type FracturePositionInput } from './fracturePosition.js';
export { percentBending, type BendingStrains, type PercentBending } from './percentBending.js';
export { plasticShapeFactor } from './plasticShapeFactor.js';
export { totalExtensionFromMarks, type MarkedBar } from './totalExtensionFromMarks.js';
export { uniformDiameter, type UpsetCylinder } from './uniformDiameter.js';
/** @internal */
export { neckArea } from './areaAfterFracture.js';
/** @internal */
export { subdividedElongation } from './elongationBySubdivision.js';
